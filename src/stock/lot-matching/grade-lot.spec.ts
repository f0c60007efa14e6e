import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writtenForm } from './code-forms.js';
import { gradeLot, LotGrader } from './grade-lot.js';
import type { LotFacts, RecordedCode } from './lot-facts.js';
import type { DaySpan, LotScope, LotTerm, MatchGrade, ScopeItem } from './lot-scope.js';

const item: ScopeItem = {
  makerName: 'Nordlys Pigment',
  productName: 'Brow Colour',
  shade: null,
  gtins: [],
  productIds: [],
  lots: [],
  openEnded: false,
};
const lot: LotFacts = {
  lotId: 'l1',
  productId: 'p1',
  makerName: 'Nordlys Pigment',
  productName: 'Brow Colour',
  shade: 'Umber',
  gtins: [],
  codes: [{ kind: 'lot', code: '07110005', superseded: false }],
  codeState: 'printed',
  useBy: '2027-10-31',
  useByPrecision: 'month',
  manufacturedOn: '2025-10-02',
};

const coded = (...codes: string[]): Partial<LotFacts> => ({
  codes: codes.map((code) => ({ kind: 'lot', code, superseded: false })),
});
const corrected = (now: string | null, before: string): Partial<LotFacts> => ({
  codes: [
    { kind: 'lot', code: before, superseded: true },
    ...(now === null ? [] : [{ kind: 'lot' as const, code: now, superseded: false }]),
  ],
});
const code = (text: string, useBy: DaySpan | null = null): LotTerm => ({ kind: 'code', code: text, useBy });
const range = (from: string, through: string, useBy: DaySpan | null = null): LotTerm => ({
  kind: 'code range',
  from,
  through,
  useBy,
});
const october = { from: '2027-10-01', through: '2027-10-31' };
const november = { from: '2027-11-01', through: '2027-11-30' };

function judged(
  lots: readonly LotTerm[],
  facts: Partial<LotFacts> = {},
  of: Partial<ScopeItem> = {},
): string {
  const scope = { items: [{ ...item, lots: [...lots], ...of }] };
  const { grade, reasons } = gradeLot(scope, { ...lot, ...facts });
  return `${grade}: ${reasons
    .slice(1)
    .map((reason) => reason.code)
    .join(', ')}`;
}

describe('a lot of the product that is named', () => {
  it.each([
    ['all lots', [{ kind: 'all lots' }], {}, 'certain: all lots named'],
    ['the code', [code('07110005')], {}, 'certain: code equal'],
    [
      'the code in other case and with spaces around it',
      [code(' ab-12 ')],
      coded('AB-12'),
      'certain: code equal',
    ],
    ['the code among others', [code('1'), code('07110005'), code('2')], {}, 'certain: code equal'],
    ['one of its several codes', [code('B77')], coded('07110005', 'B77'), 'certain: code equal'],
    ['another code', [code('99887766')], {}, 'not: lot not named'],
    ['the code and its date', [code('07110005', october)], {}, 'certain: code equal'],
    ['the code and another date', [code('07110005', november)], {}, 'possible: code equal, other use-by'],
    [
      'the code twice, once with its date',
      [code('07110005', november), code('07110005', october)],
      {},
      'certain: code equal',
    ],
    [
      'the code and a date, none on record',
      [code('07110005', october)],
      { useBy: null, useByPrecision: 'none printed' },
      'certain: code equal',
    ],

    ['spaces', [code('0711 0005')], {}, 'possible: other spacing'],
    ['hyphens', [code('07-11-0005')], {}, 'possible: other spacing'],
    ['spaces, and another date', [code('0711 0005', november)], {}, 'possible: other spacing'],
    ['a word before the code', [code('07110005')], coded('LOT 07110005'), 'possible: other spacing'],
    ['letters for digits', [code('O7IIOOO5')], {}, 'possible: look-alikes'],
    ['digits for letters', [code('SBO-1')], coded('580-I'), 'possible: look-alikes'],
    ['letters of another script', [code('\u0410\u041212')], coded('AB12'), 'possible: look-alikes'],
    ['zeros lost', [code('0007')], coded('7'), 'possible: leading zeros'],
    ['one changed', [code('07110006')], {}, 'possible: slip'],
    ['one missing', [code('0711005')], {}, 'possible: slip'],
    ['one added', [code('071100055')], {}, 'possible: slip'],
    ['two swapped', [code('07101005')], {}, 'possible: slip'],
    ['one changed, and another date', [code('07110006', november)], {}, 'not: lot not named'],
    ['one changed, and its date', [code('07110006', october)], {}, 'possible: slip'],
    ['two changed', [code('07110066')], {}, 'not: lot not named'],
    ['one changed in a short code', [code('A12')], coded('A13'), 'not: lot not named'],
    ['one changed in four characters', [code('A124')], coded('A123'), 'possible: slip'],

    [
      'the code before it was corrected',
      [code('07110005')],
      corrected('99', '07110005'),
      'possible: code equal, corrected code',
    ],
    ['the code since it was corrected', [code('99')], corrected('99', '07110005'), 'certain: code equal'],
    ['both', [code('07110005'), code('99')], corrected('99', '07110005'), 'certain: code equal'],
    [
      'a slip of the code before',
      [code('07110006')],
      corrected('99', '07110005'),
      'possible: slip, corrected code',
    ],
    [
      'the code before, now unreadable',
      [code('07110005')],
      { ...corrected(null, '07110005'), codeState: 'unreadable' },
      'possible: code equal, corrected code',
    ],
    [
      'a code that cannot be read',
      [code('07110005')],
      { codes: [], codeState: 'unreadable' },
      'possible: code unreadable',
    ],
    ['no code', [code('07110005')], { codes: [], codeState: 'none printed' }, 'possible: no code printed'],
    [
      'another code, none read since it was corrected',
      [code('99887766')],
      { ...corrected(null, '07110005'), codeState: 'unreadable' },
      'possible: code unreadable',
    ],
    [
      'no code, and its date',
      [code('07110005', october)],
      { codes: [], codeState: 'none printed' },
      'possible: no code printed',
    ],
    [
      'no code, and another date',
      [code('07110005', november)],
      { codes: [], codeState: 'none printed' },
      'not: lot not named',
    ],
    [
      'no code, and another date of one of two',
      [code('07110005', november), code('7')],
      { codes: [], codeState: 'none printed' },
      'possible: no code printed',
    ],
    [
      'no code, and a range',
      [range('1', '9')],
      { codes: [], codeState: 'unreadable' },
      'possible: code unreadable',
    ],

    ['in the range', [range('07110002', '07110009')], {}, 'certain: code in range'],
    ['at its end', [range('07110002', '07110005')], {}, 'certain: code in range'],
    ['beyond it', [range('07110010', '07110099')], {}, 'possible: slip from range'],
    ['far beyond it', [range('07220000', '07220099')], {}, 'not: lot not named'],
    ['in the range, with its date', [range('07110002', '07110009', october)], {}, 'certain: code in range'],
    [
      'in the range, with another date',
      [range('07110002', '07110009', november)],
      {},
      'possible: code in range, other use-by',
    ],
    [
      'in the range, with fewer digits',
      [range('07110002', '07110009')],
      coded('7110005'),
      'possible: range shows other length',
    ],
    [
      'fewer digits and another date',
      [range('07110002', '07110009', november)],
      coded('7110005'),
      'not: lot not named',
    ],
    [
      'in the range but for hyphens',
      [range('07110002', '07110009')],
      coded('0711-0005'),
      'possible: look-alike of range',
    ],
    [
      'in the range but for look-alikes',
      [range('07110002', '07110009')],
      coded('O7110005'),
      'possible: look-alike of range',
    ],
    [
      'in the range, before it was corrected',
      [range('07110002', '07110009')],
      corrected('99', '07110005'),
      'possible: code in range, corrected code',
    ],
    ['in a range that goes backwards', [range('07110009', '07110002')], {}, 'possible: range perhaps'],
    ['a range that is not understood', [range('AB1', 'XYZ22')], {}, 'possible: range not understood'],
    ['the end of one that is not understood', [range('07110005', 'XYZ22')], {}, 'certain: code in range'],
    ['an absurd range', [range('00001', '99999999')], coded('123456'), 'certain: code in range'],

    ['the use-by date', [{ kind: 'use-by', useBy: october }], {}, 'certain: use-by in span'],
    ['another use-by date', [{ kind: 'use-by', useBy: november }], {}, 'not: lot not named'],
    [
      'part of a month',
      [{ kind: 'use-by', useBy: { from: '2027-10-03', through: '2027-10-05' } }],
      {},
      'possible: use-by overlaps span',
    ],
    [
      'a use-by date, none on record',
      [{ kind: 'use-by', useBy: october }],
      { useBy: null, useByPrecision: 'none printed' },
      'possible: no use-by on record',
    ],
    [
      'no code, but the use-by date',
      [{ kind: 'use-by', useBy: october }],
      { codes: [] },
      'certain: use-by in span',
    ],
    [
      'the manufacture date',
      [{ kind: 'manufactured', manufactured: { from: '2025-10-01', through: '2025-10-02' } }],
      {},
      'certain: manufactured in span',
    ],
    [
      'another manufacture date',
      [{ kind: 'manufactured', manufactured: { from: '2025-10-03', through: null } }],
      {},
      'not: lot not named',
    ],
    [
      'a manufacture date, none on record',
      [{ kind: 'manufactured', manufactured: { from: '2025-10-03', through: null } }],
      { manufacturedOn: null },
      'possible: no manufacture date on record',
    ],
    ['no lots named', [], {}, 'possible: no lots named'],
  ] as const)('%s', (_, lots, facts, expected) => {
    expect(judged(lots as readonly LotTerm[], facts as Partial<LotFacts>)).toBe(expected);
  });

  it('an open-ended notice leaves every other lot possible, and those named certain', () => {
    const openEnded = { openEnded: true };
    expect(judged([code('99')], {}, openEnded)).toBe('possible: open-ended');
    expect(judged([code('07110005')], {}, openEnded)).toBe('certain: code equal');
    expect(judged([code('07110006')], {}, openEnded)).toBe('possible: slip');
    expect(judged([], {}, openEnded)).toBe('possible: open-ended');
  });
});

describe('product and lot together', () => {
  it('a product that is only possibly meant leaves its lots possible', () => {
    const byName = { makerName: null };
    expect(judged([code('07110005')], {}, byName)).toBe('possible: code equal');
    expect(judged([{ kind: 'all lots' }], {}, byName)).toBe('possible: all lots named');
    expect(judged([code('99')], {}, byName)).toBe('not: lot not named');
  });

  it('a code that serves two shades means only the shade named', () => {
    expect(judged([code('07110005')], {}, { shade: 'Umber' })).toBe('certain: code equal');
    expect(judged([code('07110005')], { shade: 'Sand' }, { shade: 'Umber' })).toBe('not: ');
    expect(judged([code('07110005')], { shade: 'Sand' }, { shade: null })).toBe('certain: code equal');
  });

  it('another product of the maker is possible only by an equal code', () => {
    const tint = { productName: 'Lip Tint' };
    expect(judged([code('07110005')], {}, tint)).toBe('possible: code equal');
    expect(judged([range('07110002', '07110009')], {}, tint)).toBe('possible: code in range');
    expect(judged([code('0711-0005')], {}, tint)).toBe('not: other spacing');
    expect(judged([code('07110005')], corrected('99', '07110005'), tint)).toBe(
      'not: code equal, corrected code',
    );
    expect(judged([{ kind: 'all lots' }], {}, tint)).toBe('not: all lots named');
    expect(judged([], {}, { ...tint, openEnded: true })).toBe('not: open-ended');
  });

  it('another product of another maker is not meant, also by an equal code', () => {
    const elsewhere = { makerName: 'Fjordfarve', productName: 'Lip Tint' };
    expect(judged([code('07110005')], {}, elsewhere)).toBe('not: ');
  });

  it('a notice that names no product is possible by its codes', () => {
    const unnamed = { makerName: null, productName: null };
    expect(judged([code('07110005')], {}, unnamed)).toBe('possible: code equal');
    expect(judged([code('99')], {}, unnamed)).toBe('not: lot not named');
  });

  it('the best item counts, the first of equals', () => {
    const slip = { ...item, lots: [code('07110006')] };
    const equal = { ...item, lots: [code('07110005')] };
    const far = { ...item, makerName: 'Fjordfarve', productName: 'Lip Tint' };
    expect(gradeLot({ items: [far, slip, equal, equal] }, lot)).toMatchObject({
      grade: 'certain',
      itemIndex: 2,
    });
    expect(gradeLot({ items: [far, slip, slip] }, lot)).toMatchObject({ grade: 'possible', itemIndex: 1 });
    expect(gradeLot({ items: [far, { ...slip, lots: [code('1')] }] }, lot)).toMatchObject({
      grade: 'not',
      itemIndex: null,
      reasons: [{ code: 'names equal' }, { code: 'lot not named' }],
    });
    expect(gradeLot({ items: [] }, lot)).toEqual({ grade: 'not', itemIndex: null, reasons: [] });
  });

  it('says in words why, with the facts a screen makes its own of', () => {
    const { reasons } = gradeLot({ items: [{ ...item, lots: [range('07110002', '07110009')] }] }, lot);
    expect(reasons).toEqual([
      {
        code: 'names equal',
        message: 'The notice names “Nordlys Pigment Brow Colour Umber”.',
        facts: { recorded: 'Nordlys Pigment Brow Colour Umber' },
      },
      {
        code: 'code in range',
        message: 'The code 07110005 lies in the range 07110002 through 07110009.',
        facts: { recorded: '07110005', from: '07110002', through: '07110009' },
      },
    ]);
  });
});

const rank: Record<MatchGrade, number> = { not: 0, possible: 1, certain: 2 };
const someCode = fc.constantFrom('0711', '0712', '711', 'O711', '07-11', 'A711', '9999', '0720', '');
const day = fc.constantFrom('2027-09-30', '2027-10-01', '2027-10-15', '2027-10-31', '2027-12-31');
const span = fc.record({ from: fc.option(day), through: fc.option(day) });
const term: fc.Arbitrary<LotTerm> = fc.oneof(
  fc.record({ kind: fc.constant('code' as const), code: someCode, useBy: fc.option(span) }),
  fc.record({
    kind: fc.constant('code range' as const),
    from: someCode,
    through: someCode,
    useBy: fc.option(span),
  }),
  fc.record({ kind: fc.constant('use-by' as const), useBy: span }),
  fc.record({ kind: fc.constant('manufactured' as const), manufactured: span }),
  fc.constant({ kind: 'all lots' as const }),
);
const someName = fc.option(fc.constantFrom('Nordlys', 'Nordlis', 'Fjordfarve', 'Brow Colour', 'Umber'));
const someItem: fc.Arbitrary<ScopeItem> = fc.record({
  makerName: someName,
  productName: someName,
  shade: someName,
  gtins: fc.subarray(['09501101530003', '09501101530010']),
  productIds: fc.subarray(['p1', 'p2'], { maxLength: 1 }),
  lots: fc.array(term, { minLength: 1, maxLength: 3 }),
  openEnded: fc.boolean(),
});
const recordedCode: fc.Arbitrary<RecordedCode> = fc.record({
  kind: fc.constant('lot' as const),
  code: someCode,
  superseded: fc.boolean(),
});
const someLot: fc.Arbitrary<LotFacts> = fc.record({
  lotId: fc.constant('l1'),
  productId: fc.constant('p1'),
  makerName: fc.constantFrom('Nordlys', 'Fjordfarve'),
  productName: fc.constantFrom('Brow Colour', 'Lip Tint'),
  shade: fc.constantFrom('Umber', 'Sand', null),
  gtins: fc.subarray(['09501101530003', '19501101530000']),
  codes: fc.array(recordedCode, { maxLength: 2 }),
  codeState: fc.constantFrom('printed', 'none printed', 'unreadable'),
  useBy: fc.option(day),
  useByPrecision: fc.constantFrom('day', 'month', 'year'),
  manufacturedOn: fc.option(day),
});
const gradeOf = (scope: LotScope, facts: LotFacts) => rank[gradeLot(scope, facts).grade];

describe('widening what a notice is about', () => {
  it('never lowers a grade', { timeout: 30_000 }, () => {
    const widened = (all: ScopeItem[], more: ScopeItem, added: LotTerm): LotScope[] => [
      { items: [...all, more] },
      { items: [more, ...all] },
      { items: all.map((each) => ({ ...each, openEnded: true })) },
      { items: all.map((each) => ({ ...each, lots: [...each.lots, added] })) },
      { items: all.map((each) => ({ ...each, lots: [added, ...each.lots] })) },
      { items: all.map((each) => ({ ...each, lots: each.lots.map(withoutDate) })) },
      { items: all.map((each) => ({ ...each, lots: [...each.lots, { kind: 'all lots' }] })) },
    ];
    fc.assert(
      fc.property(
        fc.array(someItem, { minLength: 1, maxLength: 2 }),
        someItem,
        term,
        someLot,
        (all, more, added, facts) => {
          const before = gradeOf({ items: all }, facts);
          for (const scope of widened(all, more, added))
            expect(gradeOf(scope, facts)).toBeGreaterThanOrEqual(before);
        },
      ),
      { numRuns: 1_000 },
    );
  });

  it('never lowers a grade by a wider range of equally many digits', () => {
    const number = fc.nat(9_999);
    fc.assert(
      fc.property(number, number, number, number, someCode, (...[one, two, three, four, recorded]) => {
        const ends = [one, two, three, four]
          .sort((a, b) => a - b)
          .map((value) => String(value).padStart(4, '0'));
        const [outerLow = '', low = '', high = '', outerHigh = ''] = ends;
        const grade = (from: string, through: string) =>
          gradeOf({ items: [{ ...item, lots: [range(from, through)] }] }, { ...lot, ...coded(recorded) });
        expect(grade(outerLow, outerHigh)).toBeGreaterThanOrEqual(grade(low, high));
      }),
      { numRuns: 1_000 },
    );
  });
});

function withoutDate(each: LotTerm): LotTerm {
  return each.kind === 'code' || each.kind === 'code range' ? { ...each, useBy: null } : each;
}

describe('grading', () => {
  it('gives reasons that name the grade, and an item unless it is not', () => {
    fc.assert(
      fc.property(fc.array(someItem, { minLength: 1, maxLength: 3 }), someLot, (items, facts) => {
        const { grade, itemIndex, reasons } = gradeLot({ items }, facts);
        expect(itemIndex === null).toBe(grade === 'not');
        expect(reasons.length).toBeGreaterThan(0);
        for (const { message } of reasons) expect(message).toMatch(/^[A-Z].*[.]$/);
        for (const { message } of reasons) expect(message).not.toMatch(/undefined|null|NaN/);
      }),
      { numRuns: 1_000 },
    );
  });

  it('by one grader is the grade of each lot by itself', () => {
    fc.assert(
      fc.property(someItem, fc.array(someLot, { maxLength: 4 }), (one, lots) => {
        const named = lots.map((each, index) => ({ ...each, productId: `p${index + 1}` }));
        const grader = new LotGrader({ items: [one] });
        for (const each of named) {
          const alone = gradeLot({ items: [one] }, each);
          expect(grader.grade(each)).toEqual(alone);
          if (alone.grade !== 'not') expect(grader.mayMean(each)).toBe(true);
          // Whoever asks for lots of the needed codes only misses none.
          const needed = grader.codesNeeded(each)?.map(writtenForm);
          const bears = each.codes.some(({ code }) => needed?.includes(writtenForm(code)));
          if (alone.grade !== 'not' && needed !== undefined) expect(bears).toBe(true);
        }
      }),
    );
  });
});
