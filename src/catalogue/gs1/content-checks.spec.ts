import { describe, expect, it } from 'vitest';
import type { ContentCheckName } from './application-identifier-format.js';
import { applicationIdentifiers } from './application-identifiers.js';
import { checkContent } from './content-checks.js';
import { countryLetters, countryNumbers } from './country-codes.js';
import { currencyNumbers } from './currency-codes.js';
import { packageTypes } from './package-types.js';

/**
 * For every check: contents it lets pass, and contents it refuses, with the 0-based offset it names.
 * From the rules of the GS1 Barcode Syntax Dictionary's reference checks, some examples with them [P].
 */
const examples: Readonly<Record<ContentCheckName, { passes: string[]; refuses: [string, number][] }>> = {
  'bank-account': {
    passes: ['BE71096123456769', 'GB98MIDL07009312345678', 'LC14BOSL123456789012345678901234'],
    refuses: [
      ['BE71096123456760', 2],
      ['XX361234567890', 0],
      ['BE71096123', 0],
      ['LC14BOSLxx3456789012345678901230', 8],
    ],
  },
  'check-character-pair': {
    passes: ['1987654Ad4X4bL5ttr2310c2K', '22', '12345_0123456789:;<=>?62'],
    refuses: [
      ['1987654Ad4X4bL5ttr2310cXK', 23],
      ['33', 0],
      ['2', 0],
    ],
  },
  'check-digit': { passes: ['6291041500213', '12345678901231'], refuses: [['6291041500214', 12]] },
  'company-prefix': {
    passes: ['9506', '9506A'],
    refuses: [
      ['950', 0],
      ['95A6', 2],
    ],
  },
  'company-prefix-from-second': {
    passes: ['09506', 'A9506B'],
    refuses: [
      ['0950', 1],
      ['0950A', 4],
      ['0', 1],
    ],
  },
  'country-letters': {
    passes: ['DK'],
    refuses: [
      ['XX', 0],
      ['dk', 0],
    ],
  },
  'country-number': {
    passes: ['208', '004'],
    refuses: [
      ['999', 0],
      ['000', 0],
    ],
  },
  'country-number-or-999': { passes: ['208', '999'], refuses: [['998', 0]] },
  'coupon-code': {
    passes: [
      '012345612345611110123',
      '6123456789012123456512345512345' + '9123',
      // Every optional field, 1 to 6 and 9.
      '0123456123456' +
        '11' +
        '110123' +
        '10110123' +
        '9' +
        '2110123' +
        '9' +
        '3261231' +
        '4260101' +
        '50123456' +
        '611234567' +
        '90000',
    ],
    refuses: [
      ['a12345612345611110123', 0],
      ['712345678901231234561111012', 0],
      ['01234561234560', 13],
      ['0123456', 7],
      ['0123456123456111150123', 17],
      ['0123456123456111101233261301', 24],
      ['01234561234561111012332601014260102', 29],
      ['0123456123456111101238', 21],
    ],
  },
  'coupon-offer': {
    passes: ['001234561234560123456', '101234561234560123456', '061234567890121234569123456789012345'],
    refuses: [
      ['201234561234560123456', 0],
      ['07', 1],
      ['001', 2],
      ['0012345612345601234567', 21],
      ['00123456123456012345a', 20],
    ],
  },
  'currency-number': { passes: ['208', '978'], refuses: [['000', 0]] },
  date: {
    passes: ['260228'],
    refuses: [
      ['260200', 4],
      ['261301', 2],
    ],
  },
  'date-or-month': { passes: ['260228', '260200'], refuses: [['260229', 4]] },
  'date-with-century': {
    passes: ['20260228'],
    refuses: [
      ['20260229', 6],
      ['20261301', 4],
    ],
  },
  'has-non-digit': { passes: ['12A', '_'], refuses: [['123', 0]] },
  hour: { passes: ['00', '23'], refuses: [['24', 0]] },
  'hour-and-minute': {
    passes: ['0000', '2359'],
    refuses: [
      ['2400', 0],
      ['2360', 2],
    ],
  },
  hyphen: { passes: ['-'], refuses: [['+', 0]] },
  'importer-index': { passes: ['-', '0', 'A', '_', 'z'], refuses: [['!', 0]] },
  latitude: { passes: ['0000000000', '1800000000'], refuses: [['1800000001', 0]] },
  longitude: { passes: ['3600000000'], refuses: [['3600000001', 0]] },
  'media-type': {
    passes: ['01', '10', '80', '99'],
    refuses: [
      ['00', 0],
      ['11', 0],
      ['79', 0],
    ],
  },
  minute: { passes: ['59'], refuses: [['60', 0]] },
  'no-leading-zero': { passes: ['0', '10'], refuses: [['01', 0]] },
  'not-all-zeros': { passes: ['0010'], refuses: [['0000', 0]] },
  'package-type': {
    passes: ['1A', '9', '200', 'ZZ'],
    refuses: [
      ['00', 0],
      ['1a', 0],
    ],
  },
  'percent-encoding': {
    passes: ['A%2bB', '', '100%25'],
    refuses: [
      ['A%2', 1],
      ['%2G', 0],
      ['%', 0],
    ],
  },
  'piece-of-total': {
    passes: ['0102', '0202'],
    refuses: [
      ['0302', 0],
      ['0001', 0],
      ['0100', 0],
    ],
  },
  'position-in-sequence': {
    passes: ['1/1', '2/9', '10/11'],
    refuses: [
      ['3/2', 0],
      ['01/2', 0],
      ['1-2', 0],
      ['/12', 0],
    ],
  },
  second: { passes: ['59'], refuses: [['60', 0]] },
  sex: { passes: ['0', '1', '2', '9'], refuses: [['3', 0]] },
  winding: { passes: ['0', '1', '9'], refuses: [['2', 0]] },
  'yes-or-no': { passes: ['0', '1'], refuses: [['2', 0]] },
  zero: { passes: ['0'], refuses: [['1', 0]] },
};

describe('the content checks', () => {
  const rows = Object.entries(examples) as [ContentCheckName, (typeof examples)[ContentCheckName]][];

  it.each(rows)(
    '%s lets right content pass and names the place of wrong content',
    (name, { passes, refuses }) => {
      for (const data of passes) expect(checkContent(name, data, 2026), data).toBeUndefined();
      for (const [data, offset] of refuses) {
        const fault = checkContent(name, data, 2026);
        expect(fault, data).toMatchObject({ offset });
        expect(fault?.allowed).not.toBe('');
      }
    },
  );

  it('are the 34 the dictionary names, and each is used by an identifier [P]', () => {
    const used = new Set(
      applicationIdentifiers.flatMap((entry) => entry.components.flatMap((component) => component.checks)),
    );
    expect(used.size).toBe(34);
    expect([...used].sort()).toEqual(Object.keys(examples).sort());
  });

  it('know as many codes as the lists they are taken from', () => {
    expect(countryNumbers.size).toBe(249);
    expect(countryLetters.size).toBe(249);
    expect(currencyNumbers.size).toBe(183);
    expect(packageTypes.size).toBe(431);
  });
});
