import fc from 'fast-check';
import type { Component, ContentCheckName } from '../../src/catalogue/gs1/application-identifier-format.js';
import {
  type ApplicationIdentifier,
  applicationIdentifiers,
  findApplicationIdentifier,
  matchesPattern,
} from '../../src/catalogue/gs1/application-identifiers.js';
import { characterSet39, characterSet64, characterSet82 } from '../../src/catalogue/gs1/character-sets.js';
import { checkCharacterPair, checkDigit } from '../../src/catalogue/gs1/check-digit.js';
import type { Element } from '../../src/catalogue/gs1/element.js';

/** Generators of valid GS1 elements: every identifier, in the company its requisites ask for. */

const charactersOf = { N: '0123456789', X: characterSet82, Y: characterSet39, Z: characterSet64 };

const text = (characters: string, minLength: number, maxLength: number): fc.Arbitrary<string> =>
  fc.string({ unit: fc.constantFrom(...characters), minLength, maxLength });

const digits = (length: number): fc.Arbitrary<string> => text('0123456789', length, length);

const number = (min: number, max: number, length: number): fc.Arbitrary<string> =>
  fc.integer({ min, max }).map((value) => String(value).padStart(length, '0'));

const joined = (...parts: fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc.tuple(...parts).map((pieces) => pieces.join(''));

const dayOfMonth = joined(number(1, 12, 2), number(1, 28, 2));

const plainFor = (component: Component): fc.Arbitrary<string> =>
  text(charactersOf[component.characters], component.minimumLength, component.maximumLength);

/** Valid content for the leading check of a component; the company prefix rides along. */
const contentFor: Readonly<Record<ContentCheckName, (component: Component) => fc.Arbitrary<string>>> = {
  'bank-account': () =>
    joined(fc.constantFrom('GB', 'DE', 'MU'), text('0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ', 9, 30)).map(
      (account) => {
        const moved = `${account.slice(2)}${account.slice(0, 2)}00`;
        const value = BigInt([...moved].map((character) => Number.parseInt(character, 36)).join(''));
        return `${account.slice(0, 2)}${String(98n - (value % 97n)).padStart(2, '0')}${account.slice(2)}`;
      },
    ),
  'check-character-pair': ({ maximumLength }) =>
    joined(digits(4), fc.constant('A'), text(characterSet82, 0, Math.min(20, maximumLength) - 7)).map(
      (body) => body + (checkCharacterPair(body) ?? ''),
    ),
  'check-digit': ({ maximumLength }) => digits(maximumLength - 1).map((body) => body + checkDigit(body)),
  'company-prefix': ({ characters, maximumLength }) =>
    joined(digits(4), text(charactersOf[characters], 0, maximumLength - 4)),
  'company-prefix-from-second': plainFor,
  'country-letters': () => fc.constantFrom('AD', 'DK', 'ZW'),
  'country-number': () => fc.constantFrom('004', '208', '894'),
  'country-number-or-999': () => fc.constantFrom('004', '999'),
  // Company prefix and offer, save value, purchase requirement with its code and family, then an expiry date.
  'coupon-code': () =>
    joined(
      fc.constant('0'),
      digits(12),
      joined(fc.constant('1'), digits(1)),
      fc.constant('1'),
      digits(1),
    ).chain((start) =>
      joined(fc.constant(`${start}2`), digits(3), fc.constant('3'), number(0, 99, 2), dayOfMonth),
    ),
  'coupon-offer': () =>
    joined(fc.constantFrom('0', '1'), fc.constant('0'), digits(12), fc.constant('0'), digits(6)),
  'currency-number': () => fc.constantFrom('208', '978', '999'),
  date: () => joined(number(0, 99, 2), dayOfMonth),
  'date-or-month': () => joined(number(0, 99, 2), number(1, 12, 2), number(0, 28, 2)),
  'date-with-century': () => joined(number(1900, 2099, 4), dayOfMonth),
  'has-non-digit': plainFor,
  hour: () => number(0, 23, 2),
  'hour-and-minute': () => joined(number(0, 23, 2), number(0, 59, 2)),
  hyphen: () => fc.constant('-'),
  'importer-index': () => fc.constantFrom('-', '0', 'A', '_', 'z'),
  latitude: () => number(0, 1_800_000_000, 10),
  longitude: () => number(0, 3_600_000_000, 10),
  'media-type': () => fc.constantFrom('01', '10', '80', '99'),
  minute: () => number(0, 59, 2),
  'no-leading-zero': () => number(1, 999_999, 1),
  'not-all-zeros': ({ maximumLength }) => number(1, 9, maximumLength),
  'package-type': () => fc.constantFrom('1A', '200', '9', 'ZZ'),
  'percent-encoding': ({ maximumLength }) =>
    joined(text(characterSet82.replace('%', ''), 0, maximumLength - 3), fc.constant('%2B')),
  'piece-of-total': () =>
    fc.tuple(number(1, 49, 2), number(50, 99, 2)).map(([piece, total]) => piece + total),
  'position-in-sequence': () => fc.constantFrom('1/1', '2/9'),
  second: () => number(0, 59, 2),
  sex: () => fc.constantFrom('0', '1', '2', '9'),
  winding: () => fc.constantFrom('0', '1', '9'),
  'yes-or-no': () => fc.constantFrom('0', '1'),
  zero: () => fc.constant('0'),
};

function componentValue(component: Component): fc.Arbitrary<string> {
  const [check] = component.checks;
  return check === undefined ? plainFor(component) : contentFor[check](component);
}

/** A valid value; optional components are taken from the left, any number of them. */
function valueFor(entry: ApplicationIdentifier): fc.Arbitrary<string> {
  const mandatory = entry.components.filter((component) => !component.optional);
  const optionals = entry.components.filter((component) => component.optional);
  return fc
    .tuple(
      fc.tuple(...mandatory.map(componentValue)),
      fc.tuple(...optionals.map(componentValue)),
      fc.nat(optionals.length),
    )
    .map(([first, last, taken]) => [...first, ...last.slice(0, taken)].join(''));
}

/** Adds what is required, taking the alternative that `choice` points at, until nothing is missing. */
function withRequisites(identifiers: readonly string[], choice: number): string[] {
  const all = [...new Set(identifiers)];
  for (let index = 0; index < all.length; index++) {
    const identifier = all[index] ?? '';
    const { requires = [] } = findApplicationIdentifier(identifier) ?? {};
    const present = (pattern: string): boolean =>
      all.some((other) => other !== identifier && matchesPattern(other, pattern));
    if (requires.length === 0 || requires.some((together) => together.every(present))) continue;
    for (const pattern of requires[choice % requires.length] ?? []) {
      if (!present(pattern)) all.push(pattern.replaceAll('n', '0'));
    }
  }
  return all;
}

function excludeNobody(identifiers: readonly string[]): boolean {
  return identifiers.every((identifier) =>
    (findApplicationIdentifier(identifier)?.excludes ?? []).every((pattern) =>
      identifiers.every((other) => other === identifier || !matchesPattern(other, pattern)),
    ),
  );
}

/** Sets of identifiers that may stand together, in any order. */
const arbitraryIdentifiers: fc.Arbitrary<string[]> = fc
  .tuple(
    fc.array(fc.constantFrom(...applicationIdentifiers.map(({ identifier }) => identifier)), {
      minLength: 1,
      maxLength: 4,
    }),
    fc.nat(7),
  )
  .map(([identifiers, choice]) => withRequisites(identifiers, choice))
  .filter(excludeNobody)
  .chain((identifiers) =>
    fc.shuffledSubarray(identifiers, { minLength: identifiers.length, maxLength: identifiers.length }),
  );

/** Valid elements: every identifier may come, with all it requires and nothing it excludes. */
export const arbitraryElements: fc.Arbitrary<Element[]> = arbitraryIdentifiers.chain((identifiers) =>
  fc.tuple(...identifiers.map(elementOf)),
);

/** A valid element of one identifier. Throws when GS1 has not assigned it. */
export function elementOf(applicationIdentifier: string): fc.Arbitrary<Element> {
  const entry = findApplicationIdentifier(applicationIdentifier);
  if (!entry) throw new Error(`No application identifier ${applicationIdentifier}`);
  return valueFor(entry).map((value) => ({ applicationIdentifier, value }));
}

/** For one identifier: it and everything it requires, with valid values. */
export function elementsFor(identifier: string): fc.Arbitrary<Element[]> {
  return fc
    .nat(7)
    .map((choice) => withRequisites([identifier], choice))
    .filter(excludeNobody)
    .chain((identifiers) => fc.tuple(...identifiers.map(elementOf)));
}
