import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propertySettings } from '../../../tests/support/property-settings.js';
import { foldedSlice } from './folded-text.js';
import { maximumNoticeCharacters, maximumTerms, type NoticeReading, readNotice } from './notice-reading.js';

const today = '2026-11-26';
/** Milliseconds. */
const timeout = process.env.SOAK ? 600_000 : 60_000;
const knownProducts = [
  {
    productId: 'walnut',
    makerName: 'Northlight',
    productName: 'Brow Ink',
    shade: 'Walnut',
    gtins: ['09501101530003'],
  },
];
const read = (text: string): NoticeReading => readNotice(text, { today, knownProducts });

/** Words and signs that mean something, in no order: more of the rules are met than by any characters. */
const soup = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        'Lot',
        'lots',
        'Batch',
        'Charge',
        'Ch.-B.',
        'Exp',
        'expiry',
        'MHD',
        'manufactured',
        'between',
        'and',
        'to',
        'thru',
        '\u2013',
        '-',
        ',',
        ';',
        ':',
        '.',
        '(',
        ')',
        '\n',
        '\n\n',
        '\t',
        '  ',
        '1)',
        'a)',
        '2.',
        'all lots',
        'not limited to',
        'except',
        'Product:',
        'Shade:',
        'Maker:',
        'GTIN',
        'Reason:',
        'Date:',
        'Recall #',
        'Class II',
        'Northlight',
        'Brow Ink',
        'Walnut',
        '10/15',
        '03/04/15',
        '12.03.15',
        'Oct 2027',
        '9501101530003',
        '(01)09501101530003(10)AB1',
        'A12',
        '07110002',
        'AB 12-34',
        '00112-10412',
        '\u0410\u041212',
        '\uff11\uff12',
        '\u200f',
        '\u0000',
        '\u00a0',
        '|',
        'Product\tLot\tExpiry\n',
        'units',
        '#',
        "'s",
        'etc.',
      ),
      fc.string({ maxLength: 6 }),
      fc.string({ unit: 'binary', maxLength: 4 }),
    ),
    { maxLength: 40 },
  )
  .chain((words) => fc.constantFrom('', ' ').map((gap) => words.join(gap)));

describe('a reading', () => {
  it(
    'never throws, keeps its spans inside the text, and says nothing that does not stand there',
    () => {
      fc.assert(
        fc.property(soup, (text) => {
          const { scope, parts, remarks } = read(text);
          expect(scope.items.length).toBeGreaterThan(0);
          for (const { kind, span, value, targets } of parts) {
            expect(span.start).toBeGreaterThanOrEqual(0);
            expect(span.start).toBeLessThan(span.end);
            expect(span.end).toBeLessThanOrEqual(text.length);
            const seen = foldedSlice(text.slice(span.start, span.end));
            if (kind === 'code') expect(seen).toBe(value);
            if (kind === 'gtin') expect(value.endsWith(seen.replace(/[^0-9]/g, ''))).toBe(true);
            if (kind === 'product' || kind === 'maker' || kind === 'shade') {
              expect(seen.replace(/\s+/g, ' ')).toBe(value);
            }
            for (const { item, lot } of targets) {
              expect(scope.items[item]).toBeDefined();
              if (lot !== null) expect(scope.items[item]?.lots[lot]).toBeDefined();
            }
          }
          for (const { span } of remarks) {
            if (span !== null)
              expect(0 <= span.start && span.start <= span.end && span.end <= text.length).toBe(true);
          }
        }),
        propertySettings('readings of any text', 2_000),
      );
    },
    timeout,
  );

  it(
    'marks the place of each code of the scope',
    () => {
      fc.assert(
        fc.property(soup, (text) => {
          const { scope, parts } = read(text);
          const marked = new Set(
            parts.flatMap(({ targets }) => targets.map(({ item, lot }) => `${item}/${lot}`)),
          );
          scope.items.forEach(({ lots }, item) => {
            lots.forEach((_, lot) => {
              expect(marked.has(`${item}/${lot}`)).toBe(true);
            });
          });
        }),
        propertySettings('places of the scope', 1_000),
      );
    },
    timeout,
  );

  it(
    'does not depend on the space around the text',
    () => {
      fc.assert(
        fc.property(soup, fc.constantFrom(' ', '\n', '\n\n ', '\t'), (text, space) => {
          const plain = text.trim();
          expect(read(`${space}${plain}${space}`).scope).toEqual(read(plain).scope);
        }),
        propertySettings('space around a notice', 500),
      );
    },
    timeout,
  );

  it(
    'is open-ended wherever a phrase says so',
    () => {
      const phrases = [
        'including but not limited to',
        'among others',
        'unter anderem',
        'entre autres',
        'entre otros',
        'and other lots',
      ];
      fc.assert(
        fc.property(soup, soup, fc.constantFrom(...phrases), (before, after, phrase) => {
          const { scope } = read(`${before}\n${phrase} ${after}`);
          expect(scope.items.some(({ openEnded }) => openEnded)).toBe(true);
        }),
        propertySettings('open-ended phrases anywhere', 1_000),
      );
    },
    timeout,
  );

  it('keeps what look-alike letters and invisible marks were folded from', () => {
    const text = 'L\u039FT\u200f: \u0410\u041212\u200b34';
    const { scope, parts, remarks } = read(text);
    expect(scope.items[0]?.lots).toEqual([{ kind: 'code', code: 'AB1234', useBy: null }]);
    expect(text.slice(parts[0]?.span.start, parts[0]?.span.end)).toBe('\u0410\u041212\u200b34');
    expect(remarks.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['look-alike letters', 'invisible marks']),
    );
  });

  it('of an empty text leaves everything open to a person', () => {
    for (const text of ['', ' \n', '\u200f', '\u0000']) {
      const { scope, remarks } = read(text);
      expect(scope.items).toMatchObject([{ productName: null, lots: [], openEnded: false }]);
      expect(remarks.map(({ code }) => code)).toContain('nothing read');
    }
  });

  it('is cut at named limits, and then open-ended', () => {
    const lots = Array.from({ length: maximumTerms + 10 }, (_, index) => `A${100_000 + index}`);
    const many = read(`Lots ${lots.join(', ')}`);
    expect(many.scope.items[0]?.lots).toHaveLength(maximumTerms);
    expect(many.scope.items[0]?.openEnded).toBe(true);
    expect(many.remarks.find(({ code }) => code === 'too many terms')?.facts).toMatchObject({
      count: 10,
      allowed: maximumTerms,
    });
    const long = read(`Lot A12\n${'x'.repeat(maximumNoticeCharacters)}`);
    expect(long.scope.items[0]).toMatchObject({ openEnded: true, lots: [{ code: 'A12' }] });
    expect(long.remarks.map(({ code }) => code)).toContain('text cut');
  });
});
