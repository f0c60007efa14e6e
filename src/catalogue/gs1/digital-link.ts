/**
 * GS1 Digital Link URIs, uncompressed: `https://host[/stem]/01/{GTIN}[/22/..][/10/..][/21/..]?17=..`
 *
 * - The primary key is the rightmost identifier in the path that can be one; anything before it is stem.
 * - Its qualifiers follow in their fixed order, each with its value; other identifiers stand in the query.
 * - In the path "+" is a plus sign, in the query it is a space; %XX is decoded in both.
 * - An identifier may be given once only. Query parameters that are not all digits are not ours and are ignored.
 * - A GTIN of 8, 12 or 13 digits in the path is filled to 14 with leading zeros.
 *
 * GS1 Digital Link standard, URI syntax; keys, qualifiers and attributes by the GS1 Barcode Syntax Dictionary
 * (Apache-2.0, GS1 AISBL) [P].
 */
import { findApplicationIdentifier } from './application-identifiers.js';
import { type ElementError, elementError, type PlacedElement } from './element.js';
import { type ElementStringReading, finishReading, type ReadingContext } from './element-string.js';
import { unknownIdentifier } from './element-validation.js';

/** Whether text is a web address whose path holds a GS1 primary key. */
export function isDigitalLink(text: string): boolean {
  const parts = splitUri(text);
  return parts !== undefined && findPrimaryKey(parts.path) >= 0;
}

/** Reads and validates a Digital Link URI; positions count characters of the whole URI. */
export function parseDigitalLink(text: string, context: ReadingContext): ElementStringReading {
  const parts = splitUri(text);
  const keyIndex = parts ? findPrimaryKey(parts.path) : -1;
  if (!parts || keyIndex < 0) {
    const allowed = 'http:// or https://, a host and a path with a GS1 primary key, such as /01/ and a GTIN';
    return finishReading([], [elementError('no-primary-key', undefined, 1, text, allowed)], text, context);
  }
  const errors: ElementError[] = [];
  const path = takeApartPath(parts.path.slice(keyIndex), errors);
  const query = takeApartQuery(parts.query, errors);
  errors.push(...findMisplacedQualifiers(path), ...findWrongAttributes(path, query));
  const elements = [...path, ...query];
  errors.push(...findRepeats(elements));
  return finishReading(elements, errors, text, context);
}

/** A piece of the URI and the place (0-based) where it begins. */
type Piece = { readonly text: string; readonly place: number };

function splitUri(text: string): { path: Piece[]; query: Piece[] } | undefined {
  const scheme = /^https?:\/\/[^/?#]+(?=\/)/i.exec(text);
  if (!scheme) return undefined;
  const fragment = text.indexOf('#');
  const end = fragment < 0 ? text.length : fragment;
  const mark = text.indexOf('?');
  const pathEnd = mark < 0 || mark > end ? end : mark;
  const pathStart = scheme[0].length + 1;
  const path = splitPieces(text.slice(pathStart, pathEnd), '/', pathStart);
  // A slash at the very end adds nothing: no value is empty.
  if (path.at(-1)?.text === '') path.pop();
  const query = pathEnd === end ? [] : splitPieces(text.slice(pathEnd + 1, end), '&', pathEnd + 1);
  return { path, query };
}

function splitPieces(text: string, mark: string, start: number): Piece[] {
  let place = start;
  return text.split(mark).map((piece) => {
    const here = { text: piece, place };
    place += piece.length + mark.length;
    return here;
  });
}

/** From the end of the path backwards, pair by pair: the index of the first primary key, or -1. */
function findPrimaryKey(path: readonly Piece[]): number {
  for (let index = path.length - 2; index >= 0; index -= 2) {
    const identifier = path[index]?.text ?? '';
    if (findApplicationIdentifier(identifier)?.digitalLinkQualifiers) return index;
  }
  return -1;
}

function takeApartPath(pieces: readonly Piece[], errors: ElementError[]): PlacedElement[] {
  const elements: PlacedElement[] = [];
  for (let index = 0; index + 1 < pieces.length; index += 2) {
    const identifier = pieces[index];
    const value = pieces[index + 1];
    if (identifier && value) elements.push(decode(identifier, value, 'path', errors));
  }
  return elements;
}

function takeApartQuery(pieces: readonly Piece[], errors: ElementError[]): PlacedElement[] {
  const elements: PlacedElement[] = [];
  for (const { text, place } of pieces) {
    const found = /^(\d+)=(.*)$/su.exec(text);
    if (!found) continue;
    const [identifier = '', value = ''] = found.slice(1);
    if (!findApplicationIdentifier(identifier)) errors.push(unknownIdentifier(identifier, place + 1));
    else {
      const valuePiece = { text: value, place: place + identifier.length + 1 };
      elements.push(decode({ text: identifier, place }, valuePiece, 'query', errors));
    }
  }
  return elements;
}

function decode(
  identifier: Piece,
  raw: Piece,
  part: 'path' | 'query',
  errors: ElementError[],
): PlacedElement {
  const characters: string[] = [];
  const places: number[] = [];
  for (let index = 0; index < raw.text.length; index++) {
    const character = raw.text.charAt(index);
    places.push(raw.place + index + 1);
    if (character !== '%') {
      characters.push(character === '+' && part === 'query' ? ' ' : character);
      continue;
    }
    const digits = raw.text.slice(index + 1, index + 3);
    if (/^[0-9A-Fa-f]{2}$/.test(digits)) {
      characters.push(String.fromCharCode(Number.parseInt(digits, 16)));
      index += 2;
    } else {
      const allowed = 'after % two hexadecimal digits (write %25 for a percent sign)';
      errors.push(
        elementError('not-an-escape', identifier.text, raw.place + index + 1, `%${digits}`, allowed),
      );
      characters.push(character);
    }
  }
  const value = characters.join('');
  const filled =
    identifier.text === '01' && /^(\d{8}|\d{12,13})$/.test(value) ? value.padStart(14, '0') : value;
  return {
    applicationIdentifier: identifier.text,
    value: filled,
    position: identifier.place + 1,
    positionInValue: (offset) =>
      places[offset - (filled.length - value.length)] ?? raw.place + (offset > 0 ? raw.text.length : 0) + 1,
  };
}

/** A qualifier must be one the key takes, after those that come before it in one and the same sequence. */
function findMisplacedQualifiers(path: readonly PlacedElement[]): ElementError[] {
  const identifiers = path.map((element) => element.applicationIdentifier);
  for (let count = 2; count <= path.length; count++) {
    const element = path[count - 1];
    if (!element || isPathSequence(identifiers.slice(0, count))) continue;
    const [key = ''] = identifiers;
    const allowed = `after (${key}) ${describeQualifiers(key)}`;
    return [
      elementError(
        'misplaced-qualifier',
        element.applicationIdentifier,
        element.position,
        identifiers.slice(0, count).join('/'),
        allowed,
      ),
    ];
  }
  return [];
}

/** Attributes must be allowed in the query, and must not be qualifiers that belong in this path. */
function findWrongAttributes(
  path: readonly PlacedElement[],
  attributes: readonly PlacedElement[],
): ElementError[] {
  const identifiers = path.map((element) => element.applicationIdentifier);
  const [key = ''] = identifiers;
  return attributes.flatMap(({ applicationIdentifier, position }) => {
    const belongsInPath = identifiers.some((_, index) =>
      isPathSequence([
        ...identifiers.slice(0, index + 1),
        applicationIdentifier,
        ...identifiers.slice(index + 1),
      ]),
    );
    if (belongsInPath) {
      const allowed = `(${applicationIdentifier}) in the path, as a qualifier of (${key})`;
      return elementError(
        'misplaced-qualifier',
        applicationIdentifier,
        position,
        applicationIdentifier,
        allowed,
      );
    }
    if (findApplicationIdentifier(applicationIdentifier)?.digitalLinkAttribute) return [];
    const allowed = 'an identifier that GS1 permits in the query of a Digital Link';
    return elementError(
      'not-a-data-attribute',
      applicationIdentifier,
      position,
      applicationIdentifier,
      allowed,
    );
  });
}

/** In an element string an equal repeat is harmless; in a Digital Link any repeat is an error. */
function findRepeats(elements: readonly PlacedElement[]): ElementError[] {
  const values = new Map<string, string>();
  return elements.flatMap(({ applicationIdentifier, position, value }) => {
    const first = values.get(applicationIdentifier);
    values.set(applicationIdentifier, first ?? value);
    // Unequal repeats are found again, and named, when the elements are validated.
    if (first === undefined || first !== value) return [];
    return elementError('repeated', applicationIdentifier, position, value, 'each identifier once in a URI');
  });
}

/** Whether identifiers are a primary key and some of the qualifiers of one sequence, in order. */
function isPathSequence(identifiers: readonly string[]): boolean {
  const [key = '', ...qualifiers] = identifiers;
  const sequences = findApplicationIdentifier(key)?.digitalLinkQualifiers ?? [];
  return sequences.some((sequence) => {
    const places = qualifiers.map((qualifier) => sequence.indexOf(qualifier));
    return places.every((place, index) => place > (places[index - 1] ?? -1));
  });
}

function describeQualifiers(key: string): string {
  const sequences = findApplicationIdentifier(key)?.digitalLinkQualifiers ?? [];
  const described = sequences
    .filter((sequence) => sequence.length > 0)
    .map((sequence) => sequence.map((identifier) => `(${identifier})`).join(', '));
  return described.length === 0
    ? 'no qualifiers'
    : `the qualifiers ${described.join(' or else ')}, in this order`;
}
