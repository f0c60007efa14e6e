import { readFileSync } from 'node:fs';
import bwipjs from 'bwip-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ContentCheckName } from '../../src/catalogue/gs1/application-identifier-format.js';
import {
  type ApplicationIdentifier,
  applicationIdentifiers,
} from '../../src/catalogue/gs1/application-identifiers.js';
import { parseDigitalLink } from '../../src/catalogue/gs1/digital-link.js';
import type { Element } from '../../src/catalogue/gs1/element.js';
import { validateElements } from '../../src/catalogue/gs1/element-validation.js';
import { arbitraryElements, elementsFor } from '../support/arbitrary-elements.js';
import { digitalLink } from '../support/digital-link.js';

// The barcode encoder bwip-js checks GS1 data before it draws a symbol, with code written apart from ours. It
// must take what we take and refuse what we refuse. Where the two differ is stated here, and nowhere else:
//
// 1. AI 03 (made-to-order GTIN). Our edition of the GS1 Barcode Syntax Dictionary lets it stand where others
//    want a GTIN, and keeps it apart from 235, 7240, 8006 and 8026; bwip-js 4.11.4 holds an earlier edition,
//    which also asks of AI 7022 only 7021: that one asks for the GTIN in turn.
// 2. The company prefix. The shortest is four digits (the dictionary's reference check [P]); bwip-js asks for two.
// 3. Bank account numbers of up to ten characters. The reference check refuses them [P], bwip-js from four down.
// 4. Currencies 924 and 926, which the list in bwip-js lacks.
// 5. Bracketed text: bwip-js writes an opening bracket in a value ^040, we write it \(.

const today = '2026-03-01';
/** How many lists of elements are judged by both; drawing each takes its time. */
const judged = process.env.SOAK ? 4_000 : 1_500;

/** Why bwip-js will not draw the symbol, or undefined when it will. */
function theirRefusal(bcid: string, text: string): string | undefined {
  try {
    bwipjs.raw({ bcid, text, parse: true });
    return undefined;
  } catch (error) {
    return String(error);
  }
}

function theirRefusalOf(elements: readonly Element[]): string | undefined {
  const text = elements
    .map(({ applicationIdentifier, value }) => `(${applicationIdentifier})${value.replaceAll('(', '^040')}`)
    .join('');
  return theirRefusal('gs1datamatrix', text);
}

function ourRefusalsOf(elements: readonly Element[]): string[] {
  const placed = elements.map((element) => ({ ...element, position: 1, positionInValue: () => 1 }));
  return validateElements(placed, 2026).map((error) => error.code);
}

const holdsMadeToOrder = (elements: readonly Element[]): boolean =>
  elements.some((element) => element.applicationIdentifier === '03');

const anyIdentifier = fc.constantFrom(...applicationIdentifiers.map(({ identifier }) => identifier));

describe('the table of application identifiers', () => {
  const theirs = readTheirTable();

  it('names the same identifiers', () => {
    expect([...theirs.keys()].sort()).toEqual(applicationIdentifiers.map((entry) => entry.identifier).sort());
  });

  it('gives each the same components, checks, qualifiers and place in a Digital Link', () => {
    for (const entry of applicationIdentifiers) {
      const their = theirs.get(entry.identifier);
      expect(their?.components, entry.identifier).toEqual(describeComponents(entry));
      expect(their?.qualifiers, entry.identifier).toEqual(entry.digitalLinkQualifiers);
      expect(their?.attribute, entry.identifier).toBe(entry.digitalLinkAttribute);
    }
  });

  it('gives each the same requisites and exclusions, apart from AI 03 (difference 1)', () => {
    for (const entry of applicationIdentifiers) {
      const their = theirs.get(entry.identifier);
      if (['03', '7022'].includes(entry.identifier)) continue;
      const older = (list: readonly string[]): boolean => !list.includes('03');
      const requires = entry.requires.filter(older).map((together) => together.join('+'));
      const theirRequires = their?.requires.filter((pattern) => !pattern.startsWith('03'));
      expect(theirRequires?.sort(), entry.identifier).toEqual(requires.sort());
      const withoutMadeToOrder = (list: readonly string[]): string[] =>
        list.filter((other) => other !== '03').sort();
      expect(withoutMadeToOrder(their?.excludes ?? []), entry.identifier).toEqual(
        withoutMadeToOrder(entry.excludes),
      );
    }
  });
});

describe('valid elements', () => {
  it('of every identifier are taken by both', () => {
    for (const { identifier } of applicationIdentifiers) {
      for (const elements of fc.sample(elementsFor(identifier), 3)) {
        if (holdsMadeToOrder(elements) && identifier !== '03') continue;
        expect(ourRefusalsOf(elements)).toEqual([]);
        expect(theirRefusalOf(elements), JSON.stringify(elements)).toBeUndefined();
      }
    }
  });

  it('in any company are taken by both', () => {
    fc.assert(
      fc.property(
        arbitraryElements.filter((elements) => !holdsMadeToOrder(elements)),
        (elements) => {
          expect(ourRefusalsOf(elements)).toEqual([]);
          expect(theirRefusalOf(elements)).toBeUndefined();
        },
      ),
      { numRuns: judged / 5 },
    );
  });
});

describe('spoilt elements', () => {
  it('get the same verdict from both', () => {
    const verdicts = { refused: 0, taken: 0 };
    fc.assert(
      fc.property(arbitrarySpoiltElements(), (elements) => {
        const ours = ourRefusalsOf(elements);
        const theirs = theirRefusalOf(elements);
        if (holdsMadeToOrder(elements)) return;
        if (ours.length > 0 && ours.every((code) => code === 'company-prefix')) return;
        expect(ours.length > 0, `${ours.join()} | ${theirs ?? 'taken'}`).toBe(theirs !== undefined);
        verdicts[theirs === undefined ? 'taken' : 'refused'] += 1;
      }),
      { numRuns: judged },
    );
    expect(verdicts.refused).toBeGreaterThan(judged / 4);
    expect(verdicts.taken).toBeGreaterThan(judged / 8);
  });

  const gtin = '09506000134352';

  // One of each rule, so that a rule lost on either side is seen.
  it.each([
    ['a wrong check digit', [['01', '09506000134353']]],
    [
      'a month 13',
      [
        ['01', gtin],
        ['17', '261301'],
      ],
    ],
    [
      'a 29 February of no leap year',
      [
        ['01', gtin],
        ['17', '260229'],
      ],
    ],
    [
      'a day 00 with a time',
      [
        ['01', gtin],
        ['7003', '2602001200'],
      ],
    ],
    [
      'a lot of 21 characters',
      [
        ['01', gtin],
        ['10', '123456789012345678901'],
      ],
    ],
    [
      'a space in a lot',
      [
        ['01', gtin],
        ['10', 'A B'],
      ],
    ],
    ['a lot without a GTIN', [['10', 'AB']]],
    ['contents without a count', [['02', gtin]]],
    [
      'a serial beside a third-party serial',
      [
        ['01', gtin],
        ['21', 'S'],
        ['235', 'T'],
      ],
    ],
    [
      'one measure in two precisions',
      [
        ['01', gtin],
        ['3100', '000100'],
        ['3101', '000010'],
      ],
    ],
    [
      'a repeat with another value',
      [
        ['01', gtin],
        ['10', 'A'],
        ['10', 'B'],
      ],
    ],
    [
      'a country that does not exist',
      [
        ['01', gtin],
        ['422', '999'],
      ],
    ],
    ['an identifier that is not assigned', [['05', '1']]],
  ] as [string, [string, string][]][])('%s is refused by both', (_, pairs) => {
    const elements = pairs.map(([applicationIdentifier, value]) => ({ applicationIdentifier, value }));
    expect(ourRefusalsOf(elements)).not.toEqual([]);
    expect(theirRefusalOf(elements)).toBeDefined();
  });

  it('show the stated differences', () => {
    const judge = (...pairs: [string, string][]): [boolean, boolean] => {
      const elements = pairs.map(([applicationIdentifier, value]) => ({ applicationIdentifier, value }));
      return [ourRefusalsOf(elements).length === 0, theirRefusalOf(elements) === undefined];
    };
    // [we take it, they take it]
    expect(judge(['03', gtin], ['20', '07'])).toEqual([true, false]);
    expect(judge(['401', '325'])).toEqual([false, true]);
    expect(judge(['415', '9506000134352'], ['8020', 'R'], ['8007', 'BE65096123'])).toEqual([false, true]);
    expect(judge(['415', '9506000134352'], ['8020', 'R'], ['3910', '9241'])).toEqual([true, false]);
    expect(judge(['415', '9506000134352'], ['8020', 'R'], ['3910', '9261'])).toEqual([true, false]);
    expect(judge(['415', '9506000134352'], ['8020', 'R'], ['3910', '9781'])).toEqual([true, true]);
  });
});

describe('Digital Link URIs', () => {
  it('of elements that are valid are taken by both', () => {
    let made = 0;
    fc.assert(
      fc.property(
        arbitraryElements.filter((elements) => !holdsMadeToOrder(elements)),
        (elements) => {
          const uri = digitalLink(elements);
          if (uri === undefined) return;
          made += 1;
          expect(parseDigitalLink(uri, { today }).errors, uri).toEqual([]);
          expect(theirRefusal('gs1dldatamatrix', uri), uri).toBeUndefined();
        },
      ),
      { numRuns: 300 },
    );
    expect(made).toBeGreaterThan(100);
  });

  const gtin = '09506000134352';
  it.each([
    [`https://example.org/01/${gtin}/10/AB/21/S?17=260131`, true],
    [`https://example.org/stem/01/${gtin}/22/V/21/S`, true],
    [`https://example.org/01/${gtin}/235/T`, true],
    ['https://example.org/01/9506000134352', true],
    [`https://example.org/01/${gtin}/10/A+B`, true],
    [`https://example.org/01/${gtin}/10/AB/22/V`, false],
    [`https://example.org/01/${gtin}/22/V/235/T`, false],
    [`https://example.org/01/${gtin}/17/260131`, false],
    [`https://example.org/01/${gtin}?10=AB`, false],
    [`https://example.org/01/${gtin}?17=261301`, false],
    [`https://example.org/01/${gtin}?240=A+B`, false],
    [`https://example.org/01/${gtin}?254=AB`, false],
    ['https://example.org/01/09506000134353', false],
    ['https://example.org/about', false],
    [`ftp://example.org/01/${gtin}`, false],
  ])('%s: taken by both is %s', (uri, taken) => {
    expect(parseDigitalLink(uri, { today }).errors.length === 0).toBe(taken);
    expect(theirRefusal('gs1dldatamatrix', uri.replaceAll('%', '^037')) === undefined).toBe(taken);
  });
});

/** Valid elements with one thing done to them that may or may not break a rule. */
function arbitrarySpoiltElements(): fc.Arbitrary<Element[]> {
  // No caret: bwip-js gives it a meaning of its own.
  const character = fc.constantFrom(...'0123456789 #~@AZaz!"%&\'()*+,-./:;<=>?_');
  return fc
    .tuple(
      fc.oneof(arbitraryElements, anyIdentifier.chain(elementsFor)),
      anyIdentifier.chain(elementsFor),
      fc.constantFrom('leave one out', 'join others', 'insert', 'delete', 'replace', 'change the last'),
      fc.nat(),
      fc.nat(),
      character,
    )
    .map(([elements, others, deed, which, where, put]) => {
      const index = which % elements.length;
      if (deed === 'join others') return [...elements, ...others];
      if (deed === 'leave one out')
        return elements.filter((_, place) => place !== index || elements.length === 1);
      return elements.map((element, place) => {
        if (place !== index) return element;
        const { value } = element;
        const at = where % (value.length + 1);
        if (deed === 'insert') return { ...element, value: value.slice(0, at) + put + value.slice(at) };
        if (deed === 'delete') return { ...element, value: value.slice(0, at) + value.slice(at + 1) };
        if (deed === 'replace') return { ...element, value: value.slice(0, at) + put + value.slice(at + 1) };
        return { ...element, value: value.slice(0, -1) + String(where % 10) };
      });
    });
}

/** Their names, which are the dictionary's, for our checks. */
const theirNames: Readonly<Record<ContentCheckName, string>> = {
  'bank-account': 'iban',
  'check-character-pair': 'csumalpha',
  'check-digit': 'csum',
  'company-prefix': 'gcppos1',
  'company-prefix-from-second': 'gcppos2',
  'country-letters': 'iso3166alpha2',
  'country-number': 'iso3166',
  'country-number-or-999': 'iso3166999',
  'coupon-code': 'couponcode',
  'coupon-offer': 'couponposoffer',
  'currency-number': 'iso4217',
  date: 'yymmdd',
  'date-or-month': 'yymmd0',
  'date-with-century': 'yyyymmdd',
  'has-non-digit': 'hasnondigit',
  hour: 'hh',
  'hour-and-minute': 'hhmi',
  hyphen: 'hyphen',
  'importer-index': 'importeridx',
  latitude: 'latitude',
  longitude: 'longitude',
  'media-type': 'mediatype',
  minute: 'mi',
  'no-leading-zero': 'nozeroprefix',
  'not-all-zeros': 'nonzero',
  'package-type': 'packagetype',
  'percent-encoding': 'pcenc',
  'piece-of-total': 'pieceoftotal',
  'position-in-sequence': 'posinseqslash',
  second: 'ss',
  sex: 'iso5218',
  winding: 'winding',
  'yes-or-no': 'yesno',
  zero: 'zero',
};

function describeComponents(entry: ApplicationIdentifier): string[] {
  return entry.components.map(({ characters, minimumLength, maximumLength, optional, checks }) =>
    [characters, minimumLength, maximumLength, optional, ...checks.map((check) => theirNames[check])].join(
      ' ',
    ),
  );
}

type TheirEntry = {
  components: string[];
  attribute: boolean;
  qualifiers: string[][] | undefined;
  requires: string[];
  excludes: string[];
};

/** The table in the PostScript source that bwip-js is made from: a dictionary, then the identifiers it is for. */
function readTheirTable(): Map<string, TheirEntry> {
  const source = readFileSync(new URL('../../node_modules/bwip-js/barcode.ps', import.meta.url), 'latin1');
  const start = source.indexOf('/gs1syntax <<');
  const table = source.slice(start, source.indexOf('/aifixed <<', start));
  const entries = new Map<string, TheirEntry>();
  for (const [, body = '', identifiers = ''] of table.matchAll(
    /<<\s+(\/parts[\s\S]*?)\n\s+>>\n((?:\s+\(\d+\) exch dup)+)\s+pop/g,
  )) {
    const components = [
      ...body.matchAll(/\/cset \/(\w) +\/min +(\d+) +\/max +(\d+) +\/opt (\w+) +\/linters \[([^\]]*)\]/g),
    ].map(([, characters, minimum, maximum, optional, checks = '']) =>
      [
        characters,
        minimum,
        maximum,
        optional,
        ...[...checks.matchAll(/\/lint(\w+)/g)].map((check) => check[1]),
      ].join(' '),
    );
    const line = (key: string): string | undefined => new RegExp(`/${key} +(.*)`).exec(body)?.[1];
    const groups = (text: string): string[][] =>
      [...text.matchAll(/\[ ((?:\(\w+\) )+)\]/g)].map((group) =>
        [...(group[1] ?? '').matchAll(/\((\w+)\)/g)].map((found) => found[1] ?? ''),
      );
    const key = line('dlpkey');
    for (const [, identifier = ''] of identifiers.matchAll(/\((\d+)\)/g)) {
      entries.set(identifier, {
        components,
        attribute: line('dlattr') !== 'false',
        qualifiers: key === undefined ? undefined : key === '[ ]' ? [[]] : groups(key),
        requires: readRequisites(line('req')),
        excludes: groups(line('ex') ?? '').flat(),
      });
    }
  }
  return entries;
}

/**
 * Their requisites are a list of demands, all to be met, each a list of alternatives, each a list of patterns.
 * Multiplied out they are alternatives, as in our table.
 */
function readRequisites(postScript: string | undefined): string[] {
  if (postScript === undefined) return [];
  const json = postScript
    .trim()
    .replace(/\((\w+)\)/g, '"$1"')
    .replace(/(?<=["\]]) +(?=["[])/g, ', ');
  const demands: string[][][] = JSON.parse(json);
  const [first = [], ...others] = demands;
  return others
    .reduce((sofar, demand) => sofar.flatMap((one) => demand.map((other) => [...one, ...other])), first)
    .map((together) => together.join('+'));
}
