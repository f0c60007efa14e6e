/**
 * Whether elements obey the GS1 Barcode Syntax Dictionary (Apache-2.0, GS1 AISBL) [P]: known identifiers,
 * lengths, character sets, content, repeats, requisites and exclusions.
 */
import {
  type ApplicationIdentifier,
  findApplicationIdentifier,
  matchesPattern,
  valueLengths,
} from './application-identifiers.js';
import { allowedCharacters, findForeignCharacter } from './character-sets.js';
import { checkContent } from './content-checks.js';
import { type ElementError, elementError, type PlacedElement } from './element.js';

/**
 * The faults of a set of elements, in reading order: first those inside a value (one for each element), then
 * those between elements. `thisYear` decides the century of dates.
 *
 * Requisites and exclusions hold for everything on one item. When a maker splits the data over two symbols,
 * join the elements of both and validate them together.
 */
export function validateElements(elements: readonly PlacedElement[], thisYear: number): ElementError[] {
  const inside = elements.flatMap((element) => validateElement(element, thisYear) ?? []);
  return [...inside, ...findRepeats(elements), ...findWrongCompany(elements)];
}

function validateElement(element: PlacedElement, thisYear: number): ElementError | undefined {
  const { applicationIdentifier, value } = element;
  const entry = findApplicationIdentifier(applicationIdentifier);
  if (!entry) return unknownIdentifier(applicationIdentifier, element.position);
  return validateLength(element, entry) ?? validateComponents(element, value, entry, thisYear);
}

/** The error for digits that are no identifier GS1 has assigned. */
export function unknownIdentifier(seen: string, position: number): ElementError {
  return elementError(
    'unknown-identifier',
    undefined,
    position,
    seen,
    'an application identifier of GS1, two to four digits',
  );
}

function validateLength(element: PlacedElement, entry: ApplicationIdentifier): ElementError | undefined {
  const { minimum, maximum } = valueLengths(entry);
  const { length } = element.value;
  if (length >= minimum && length <= maximum) return undefined;
  const characters = minimum === maximum ? `${minimum}` : `${minimum} to ${maximum}`;
  return elementError(
    length < minimum ? 'value-too-short' : 'value-too-long',
    element.applicationIdentifier,
    element.positionInValue(0),
    element.value,
    `a value of ${characters} characters (here ${length})`,
  );
}

/** Components take the characters from left to right; only the last ones may be short or missing. */
function validateComponents(
  element: PlacedElement,
  value: string,
  entry: ApplicationIdentifier,
  thisYear: number,
): ElementError | undefined {
  let start = 0;
  for (const component of entry.components) {
    const data = value.slice(start, start + component.maximumLength);
    const refuse = (
      code: ElementError['code'],
      offset: number,
      length: number,
      allowed: string,
    ): ElementError =>
      elementError(
        code,
        element.applicationIdentifier,
        element.positionInValue(start + offset),
        data.slice(offset, offset + length),
        allowed,
      );
    if (data === '' && component.optional) return undefined;
    if (data.length < component.minimumLength) {
      return refuse('value-too-short', 0, data.length, `${component.minimumLength} characters in this part`);
    }
    const foreign = findForeignCharacter(data, component.characters);
    if (foreign >= 0) return refuse('foreign-character', foreign, 1, allowedCharacters(component.characters));
    for (const check of component.checks) {
      const fault = checkContent(check, data, thisYear);
      if (fault) return refuse(check, fault.offset, fault.length, fault.allowed);
    }
    start += data.length;
  }
  return undefined;
}

function findRepeats(elements: readonly PlacedElement[]): ElementError[] {
  const firstValues = new Map<string, string>();
  const errors: ElementError[] = [];
  for (const { applicationIdentifier, position, value } of elements) {
    const first = firstValues.get(applicationIdentifier);
    if (first === undefined) firstValues.set(applicationIdentifier, value);
    else if (first !== value) {
      errors.push(
        elementError(
          'repeated',
          applicationIdentifier,
          position,
          value,
          `only the value "${first}" it had before`,
        ),
      );
    }
  }
  return errors;
}

/** Requisites that are missing, and pairs that may not stand together (each pair is named once). */
function findWrongCompany(elements: readonly PlacedElement[]): ElementError[] {
  const present = new Set(elements.map((element) => element.applicationIdentifier));
  const errors: ElementError[] = [];
  const namedPairs = new Set<string>();
  const seen = new Set<string>();
  for (const element of elements) {
    const { applicationIdentifier: identifier, position } = element;
    const entry = findApplicationIdentifier(identifier);
    if (!entry || seen.has(identifier)) continue;
    seen.add(identifier);
    const fits = (pattern: string): string | undefined =>
      [...present].find((other) => other !== identifier && matchesPattern(other, pattern));
    for (const pattern of entry.excludes) {
      const other = fits(pattern);
      const pair = other === undefined ? '' : [identifier, other].sort().join();
      if (other === undefined || namedPairs.has(pair)) continue;
      namedPairs.add(pair);
      errors.push(
        elementError(
          'excluded-pair',
          identifier,
          position,
          `(${other})`,
          `(${identifier}) without (${other})`,
        ),
      );
    }
    const satisfied =
      entry.requires.length === 0 ||
      entry.requires.some((together) => together.every((pattern) => fits(pattern) !== undefined));
    if (!satisfied) {
      errors.push(
        elementError(
          'missing-requisite',
          identifier,
          position,
          `(${identifier}) without it`,
          `(${identifier}) together with ${describeRequisites(entry)}`,
        ),
      );
    }
  }
  return errors;
}

function describeRequisites(entry: ApplicationIdentifier): string {
  return entry.requires
    .map((together) => together.map((pattern) => `(${pattern})`).join(' and '))
    .join(', or ');
}
