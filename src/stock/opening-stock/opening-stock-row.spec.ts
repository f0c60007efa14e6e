import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openingStockColumns } from './opening-stock-columns.js';
import { readStockRow, type StockCells } from './opening-stock-row.js';

const day = '2026-11-25';
const bottle: StockCells = {
  maker: 'Halden Colour Works',
  product: 'Brow pigment',
  lot: 'HU-118',
  'use by': '2027-06',
  quantity: '2',
};
const faultsOf = (cells: StockCells) => readStockRow(cells, day).faults;
const columnsOf = (cells: StockCells) => faultsOf(cells).map(({ column }) => column);

describe('a row of opening stock', () => {
  it('is read cell by cell', () => {
    const { row, faults } = readStockRow(
      {
        ...bottle,
        shade: 'Warm umber',
        kind: 'Pigment',
        role: 'colour',
        'bottle ml': '7,5',
        gtin: '9506000134352',
        batch: 'B7',
        'manufactured on': '2025-06-30',
        'opened on': '2026-03-12',
        remaining: '60 %',
        'same code': 'separate lot',
      },
      day,
    );
    expect(faults).toEqual([]);
    expect(row).toMatchObject({
      said: { kind: 'pigment', volumeMicrolitres: 7_500 },
      gtin: '09506000134352',
      printed: {
        code: 'HU-118',
        codes: [
          { kind: 'lot', code: 'HU-118' },
          { kind: 'batch', code: 'B7' },
        ],
        useBy: '2027-06-30',
        useByPrecision: 'month',
        manufacturedOn: '2025-06-30',
      },
      quantity: 2,
      openedOn: '2026-03-12',
      remaining: { percent: 60 },
      sameCodeDecision: 'separate lot',
    });
  });

  it('says by words that no code or date can be read', () => {
    const { row, faults } = readStockRow({ ...bottle, lot: 'Unreadable', 'use by': 'none printed' }, day);
    expect(faults).toEqual([]);
    expect(row.printed).toMatchObject({ code: null, codeState: 'unreadable', useBy: null });
  });

  it('is told every fault at once, not only the first', () => {
    expect(
      columnsOf({
        kind: 'ink',
        'bottle ml': 'ten',
        gtin: '9506000134353',
        'use by': '03/04/2027',
        'manufactured on': '31.12.2025',
        quantity: '1.000',
        'pieces per box': '0',
        'opened on': '2026-12-24',
        remaining: '60',
        'same code': 'maybe',
      }).sort(),
    ).toEqual([
      'bottle ml',
      'gtin',
      'kind',
      'lot',
      'manufactured on',
      'opened on',
      'pieces per box',
      'quantity',
      'remaining',
      'same code',
      'use by',
    ]);
    expect(columnsOf({})).toEqual(['lot', 'use by', 'quantity', 'maker', 'product']);
  });

  it('does not guess a date that may be read in two ways, and tells a month what to write', () => {
    expect(faultsOf({ ...bottle, 'use by': '03/04/2027' })[0]?.message).toContain('2027-04-03 or 2027-03-04');
    expect(faultsOf({ ...bottle, 'use by': '06/2027' })[0]?.message).toContain('2027-06');
    expect(faultsOf({ ...bottle, 'use by': 'soon' })[0]?.message).toContain('not a use-by date');
  });

  it('knows numbers that a spreadsheet spoilt', () => {
    expect(faultsOf({ ...bottle, gtin: '9.50600E+12' })[0]?.message).toContain('show the column as text');
    expect(faultsOf({ ...bottle, lot: '2.04E+11' })[0]?.message).toContain('show the column as text');
    expect(faultsOf({ ...bottle, gtin: '506000134352' })[0]?.message).toContain('zero in front');
  });

  it('takes what is left of opened bottles only, with its unit', () => {
    const opened = { ...bottle, 'opened on': '2026-03-12' };
    expect(readStockRow({ ...opened, remaining: '6 ml' }, day).row.remaining).toEqual({ microlitres: 6_000 });
    expect(faultsOf({ ...opened, remaining: '6' })[0]?.message).toContain('6 ml or as 60 %');
    expect(columnsOf({ ...bottle, remaining: '6 ml' })).toEqual(['remaining']);
  });

  it('needs no names beside a GTIN, for it may be registered', () => {
    const { maker: _, product: __, ...rest } = bottle;
    expect(faultsOf({ ...rest, gtin: '9506000134352' })).toEqual([]);
  });

  it('is judged whatever stands in it', () => {
    const cells = fc.dictionary(
      fc.constantFrom(...openingStockColumns.map(({ name }) => name)),
      fc.oneof(fc.string({ minLength: 1, maxLength: 130 }), fc.constantFrom('2027', '=1+1', '-1', '1e3')),
    );
    fc.assert(
      fc.property(cells, (row) => {
        const { faults, row: read } = readStockRow(row, day);
        if (faults.length > 0) return;
        expect(read.printed).not.toBeNull();
        expect(read.quantity).toBeGreaterThan(0);
      }),
    );
  });
});
