/**
 * Makes notices from known lots: every pattern of the trade notes, in many layouts, languages and spacings, so that
 * what a reading must give is known.
 */
import fc from 'fast-check';
import type { DaySpan } from '../../src/stock/lot-matching/lot-scope.js';

export interface WrittenLot {
  from: string;
  /** Null: one lot. */
  through: string | null;
}
export interface WrittenGroup {
  lots: WrittenLot[];
  useBy: { text: string; span: DaySpan } | null;
}
export interface WrittenItem {
  name: string;
  groups: WrittenGroup[];
  openEnded: boolean;
}

const digits = (length: number) => fc.stringMatching(new RegExp(`^[0-9]{${length}}$`));
const capitals = (length: number) => fc.stringMatching(new RegExp(`^[A-HJ-NP-Z]{${length}}$`));
const two = (value: number) => String(value).padStart(2, '0');

/** One shape of codes for one notice, since a maker writes all lots alike. */
const codeShapes: Record<string, fc.Arbitrary<string>> = {
  digits: digits(7),
  'leading zeros': digits(5).map((text) => `00${text}`),
  'letters first': fc.tuple(capitals(2), digits(5)).map((parts) => parts.join('')),
  'letter last': fc.tuple(digits(5), capitals(1)).map((parts) => parts.join('')),
  hyphen: fc.tuple(digits(6), digits(2)).map(([one, other]) => `${one}-0${other}`),
  // "Lot NR 12-34" says number, and nothing else.
  'inner space': fc
    .tuple(
      capitals(2).map((text) => (text === 'NR' ? 'NS' : text)),
      digits(2),
      digits(2),
    )
    .map(([one, mid, other]) => `${one} ${mid}-${other}`),
  slash: fc.tuple(capitals(1), digits(4)).map(([one, other]) => `${one}/${other}`),
  'like a date': fc
    .tuple(fc.integer({ min: 1, max: 28 }), fc.integer({ min: 1, max: 12 }))
    .map(([day, month]) => `${two(day)}.${two(month)}.15`),
  mixed: fc.tuple(digits(3), capitals(2), digits(4)).map((parts) => parts.join('')),
};
/** A range needs one number that runs. */
const rangeShapes = new Set(['digits', 'leading zeros', 'letters first']);

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const lastDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const useBy = fc
  .record({
    year: fc.integer({ min: 2025, max: 2031 }),
    month: fc.integer({ min: 1, max: 12 }),
    day: fc.integer({ min: 13, max: 28 }),
    style: fc.integer({ min: 0, max: 7 }),
  })
  .map(({ year, month, day, style }) => {
    const whole = {
      from: `${year}-${two(month)}-01`,
      through: `${year}-${two(month)}-${year === 2028 && month === 2 ? 29 : lastDays[month - 1]}`,
    };
    const exact = { from: `${year}-${two(month)}-${day}`, through: `${year}-${two(month)}-${day}` };
    const name = months[month - 1] ?? '';
    const styles: [string, DaySpan][] = [
      [`${two(month)}/${year % 100}`, whole],
      [`${month}/${year}`, whole],
      [`${year}-${two(month)}`, whole],
      [`${name} ${year}`, whole],
      [`${year}-${two(month)}-${day}`, exact],
      [`${month}/${day}/${year}`, exact],
      [`${day}-${name}-${year}`, exact],
      [`${name} ${day}, ${year}`, exact],
    ];
    const [text = '', span = whole] = styles[style] ?? [];
    return { text, span };
  });

const names = ['Brow Ink Walnut', 'Lip Ink Rose', 'Liner Ink Coal', 'Needle Module Fine'];
const lotWords = [
  'Lot',
  'Lots',
  'Lot No.',
  'Lot #',
  'LOT',
  'Batch',
  'Batch No',
  'Batch numbers',
  'Lot numbers',
  'Charge',
  'Ch.-B.',
  'Chargen-Nr.',
  'Lote',
  'N° de lot',
  'Número de lote',
  'Lot Code',
  'Lot(s)',
];
const useByWords = [
  'Exp',
  'Exp.',
  'EXP',
  'exp. date',
  'Expiry',
  'use by',
  'Best before',
  'MHD',
  'Verfall',
  'Caducidad',
  'Expiration date:',
];
const openWords = [
  ', including but not limited to these',
  ', among others',
  ' and other lots',
  ', etc.',
  ' u. a.',
  ', entre otros',
];

/** What a notice says, and how it says it. */
export const noticeStructures = fc.constantFrom(...Object.keys(codeShapes)).chain((shape) => {
  const code = codeShapes[shape] ?? digits(7);
  const lot: fc.Arbitrary<WrittenLot> = rangeShapes.has(shape)
    ? fc.tuple(code, fc.integer({ min: 1, max: 400 }), fc.boolean()).map(([from, length, isRange]) => {
        const through = from.replace(/\d{4}$/, (number) =>
          String(Math.min(9999, Number(number) + length)).padStart(4, '0'),
        );
        return { from, through: isRange && through > from ? through : null };
      })
    : code.map((from) => ({ from, through: null }));
  const group: fc.Arbitrary<WrittenGroup> = fc.record({
    lots: fc.array(lot, { minLength: 1, maxLength: 4 }),
    useBy: fc.option(useBy, { nil: null, freq: 2 }),
  });
  return fc.record({
    shape: fc.constant(shape),
    items: fc.array(
      fc.record({
        groups: fc.array(group, { minLength: 1, maxLength: 3 }),
        openEnded: fc.nat(5).map((value) => value === 0),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    layout: fc.constantFrom('fields', 'numbered', 'lines', 'table', 'prose'),
    lotWord: fc.constantFrom(...lotWords),
    useByWord: fc.constantFrom(...useByWords),
    openWord: fc.constantFrom(...openWords),
    comma: fc.constantFrom(', ', ' , ', ',', ', and ', ' and ', ' / ', ' & '),
    range: fc.constantFrom(' thru ', ' through ', ' to ', ' \u2013 ', '\u2013', ' - ', ' until ', ' bis '),
    colon: fc.constantFrom(': ', ' ', ':', ' : '),
  });
});
type Structure = typeof noticeStructures extends fc.Arbitrary<infer Value> ? Value : never;

export function writeNotice(value: Structure): { text: string; items: WrittenItem[] } {
  const { layout, lotWord, useByWord, openWord, comma, range, colon } = value;
  const items = value.items.map((item, index) => ({ ...item, name: names[index] ?? '' }));
  const lots = (group: WrittenGroup, separator: string): string =>
    group.lots
      .map(({ from, through }) => (through === null ? from : `${from}${range}${through}`))
      .join(separator);
  const groups = (item: WrittenItem, separator: string): string =>
    item.groups
      .map(
        (group) =>
          lots(group, separator) + (group.useBy === null ? '' : `, ${useByWord} ${group.useBy.text}`),
      )
      .join('; ') + (item.openEnded ? openWord : '');
  const label = `${lotWord}${/[#.]$/.test(lotWord) && colon === ':' ? ': ' : colon}`;
  switch (layout) {
    case 'fields':
      return {
        items,
        text: items
          .map((item) => `Product: ${item.name}\n${label}${groups(item, comma)}\nHazard: unsterile`)
          .join('\n\n'),
      };
    case 'numbered':
      return {
        items,
        text: `Products: ${items.map((item, index) => `${index + 1}) ${item.name}`).join('; ')}\n${items.map((item, index) => `${index + 1}) ${label}${groups(item, comma)}`).join(';\n')}`,
      };
    case 'lines':
      return {
        items: items.length === 1 ? items.map((item) => ({ ...item, name: '' })) : items,
        text: items.map((item) => `${item.name} \u2013 ${label}${groups(item, comma)}`).join('\n'),
      };
    case 'table': {
      const rows = items.flatMap((item) =>
        item.groups.map((group) => `${item.name}\t${lots(group, ', ')}\t${group.useBy?.text ?? ''}`),
      );
      return {
        items: items.map((item) => ({ ...item, openEnded: false })),
        text: `Affected goods:\nProduct\tLot\tExpiry\n${rows.join('\n')}\n\nStop using them.`,
      };
    }
    case 'prose':
      return {
        items: items.map((item) => ({ ...item, name: '' })),
        text: `Dear customers,\n\nwe recall goods after 3 complaints. Affected are:\n${items.map((item) => `${label}${groups(item, comma)}.`).join('\n')}\n\nStop using them and return them by 31 December. Call 0555 0100.`,
      };
  }
}
