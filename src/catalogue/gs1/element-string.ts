/**
 * GS1 element strings, read and written in two styles:
 *
 * - raw, as a reader sends a symbol: `01095060001343521726013110ABC<GS>21X`, where GS (0x1D) stands for FNC1.
 *   After an element of predefined length no separator is needed; one there, at the end or at the very
 *   beginning is dropped. Only GS separates: the caret some manuals print for FNC1 is not accepted.
 * - bracketed, as people read it: `(01)09506000134352(17)260131(10)ABC`. Spaces around values are dropped. An
 *   opening bracket inside a value is written `\(`, since the backslash can be in no value.
 *
 * GS1 General Specifications, processing of data from GS1 symbols, and the GS1 Barcode Syntax Dictionary [P].
 */
import { Temporal } from 'temporal-polyfill';
import { findApplicationIdentifier, identifierLength, valueLengths } from './application-identifiers.js';
import { type Element, type ElementError, elementError, type PlacedElement } from './element.js';
import { unknownIdentifier, validateElements } from './element-validation.js';

export const separator = '\u001d';

/** More than this many errors tell a person nothing more. */
export const maximumErrors = 20;

export type ElementStringStyle = 'raw' | 'bracketed';

/** Valid exactly when `errors` is empty; otherwise `elements` holds what could be taken apart. */
export type ElementStringReading = {
  readonly elements: readonly Element[];
  readonly errors: readonly ElementError[];
};

export type ReadingContext = {
  /** The day of reading, YYYY-MM-DD: its year decides the century of dates. */
  readonly today: string;
  /** Characters that stood before the text and were taken off; positions count them. */
  readonly charactersBefore?: number;
};

/** Reads and validates an element string; without a style, an opening bracket at the start decides. */
export function parseElementString(
  text: string,
  context: ReadingContext,
  style: ElementStringStyle = text.startsWith('(') ? 'bracketed' : 'raw',
): ElementStringReading {
  const taken = style === 'raw' ? takeApartRaw(text) : takeApartBracketed(text);
  return finishReading(taken.elements, taken.errors, text, context);
}

/** Validates elements that were taken apart, and moves positions by what stood before the text. */
export function finishReading(
  elements: readonly PlacedElement[],
  earlierErrors: readonly ElementError[],
  text: string,
  context: ReadingContext,
): ElementStringReading {
  const thisYear = Temporal.PlainDate.from(context.today).year;
  const errors = [...earlierErrors, ...validateElements(elements, thisYear)];
  if (elements.length === 0 && errors.length === 0) {
    errors.push(
      elementError('empty', undefined, 1, text, 'at least one application identifier and its value'),
    );
  }
  const before = context.charactersBefore ?? 0;
  return {
    elements: elements.map(({ applicationIdentifier, value }) => ({ applicationIdentifier, value })),
    errors: errors
      .slice(0, maximumErrors)
      .map((error) =>
        before === 0
          ? error
          : elementError(
              error.code,
              error.applicationIdentifier,
              error.position + before,
              error.seen,
              error.allowed,
            ),
      ),
  };
}

/**
 * Writes elements in the order given. The raw style begins without FNC1: the encoder of a symbol adds it.
 * Valid elements read back as they were.
 */
export function printElementString(elements: readonly Element[], style: ElementStringStyle): string {
  if (style === 'bracketed') {
    return elements
      .map(({ applicationIdentifier, value }) => `(${applicationIdentifier})${value.replaceAll('(', '\\(')}`)
      .join('');
  }
  return elements
    .map(({ applicationIdentifier, value }, index) => {
      const closed = findApplicationIdentifier(applicationIdentifier)?.predefinedLength === true;
      const last = index === elements.length - 1;
      return applicationIdentifier + value + (closed || last ? '' : separator);
    })
    .join('');
}

type Taken = { elements: PlacedElement[]; errors: ElementError[] };

function takeApartRaw(text: string): Taken {
  const elements: PlacedElement[] = [];
  const errors: ElementError[] = [];
  let place = text.startsWith(separator) ? separator.length : 0;
  while (place < text.length) {
    const nextSeparator = text.indexOf(separator, place);
    const runEnd = nextSeparator < 0 ? text.length : nextSeparator;
    if (runEnd === place) {
      const allowed = 'one separator, and only between elements or at the end';
      errors.push(elementError('misplaced-separator', undefined, place + 1, separator, allowed));
      place += 1;
      continue;
    }
    const length = identifierLength(text.slice(place, place + 2)) ?? 2;
    const entry = findApplicationIdentifier(text.slice(place, place + length));
    if (!entry) {
      // Nobody can tell how long its value is: the next separator is the first certain place.
      errors.push(unknownIdentifier(text.slice(place, Math.min(runEnd, place + 4)), place + 1));
      place = runEnd + 1;
      continue;
    }
    const valueStart = place + length;
    const longest = entry.predefinedLength ? valueLengths(entry).maximum : Number.POSITIVE_INFINITY;
    const valueEnd = Math.min(runEnd, valueStart + longest);
    elements.push({
      applicationIdentifier: entry.identifier,
      value: text.slice(valueStart, valueEnd),
      position: place + 1,
      positionInValue: (offset) => valueStart + offset + 1,
    });
    place = valueEnd === nextSeparator ? valueEnd + 1 : valueEnd;
  }
  return { elements, errors };
}

function takeApartBracketed(text: string): Taken {
  const elements: PlacedElement[] = [];
  const errors: ElementError[] = [];
  const opening = /\((\d{2,4})\) */y;
  let place = 0;
  while (place < text.length) {
    opening.lastIndex = place;
    const found = opening.exec(text);
    if (!found) {
      const allowed =
        'an application identifier in brackets, such as (01); write \\( for a bracket in a value';
      errors.push(
        elementError('misplaced-bracket', undefined, place + 1, text.slice(place, place + 6), allowed),
      );
      // What follows up to the next bracket belongs to nothing.
      const next = text.indexOf('(', place + 1);
      place = next < 0 ? text.length : next;
      continue;
    }
    const valueStart = place + found[0].length;
    const { value, places, end } = takeBracketedValue(text, valueStart);
    elements.push({
      applicationIdentifier: found[1] ?? '',
      value,
      position: place + 1,
      positionInValue: (offset) => (places[offset] ?? end) + 1,
    });
    place = end;
  }
  return { elements, errors };
}

/** The value up to the next bare opening bracket, and the place in the text of each of its characters. */
function takeBracketedValue(text: string, start: number): { value: string; places: number[]; end: number } {
  const characters: string[] = [];
  const places: number[] = [];
  let place = start;
  while (place < text.length && text.charAt(place) !== '(') {
    const escaped = text.startsWith('\\(', place);
    characters.push(escaped ? '(' : text.charAt(place));
    places.push(place);
    place += escaped ? 2 : 1;
  }
  return { value: characters.join('').replace(/ +$/, ''), places, end: place };
}
