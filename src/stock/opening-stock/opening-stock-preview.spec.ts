import { describe, expect, it } from 'vitest';
import { openingStockColumns, openingStockExample } from './opening-stock-columns.js';
import { planOpeningStock } from './opening-stock-plan.js';
import { previewOf } from './opening-stock-preview.js';
import { readStockRow } from './opening-stock-row.js';

const day = '2026-11-25';
const record = {
  makers: [],
  products: [],
  gtins: [],
  lots: [],
  places: [{ id: 'shelf', name: 'Shelf' }],
  people: [],
  day,
};
const read = openingStockExample.map((cells, index) => ({ number: index + 2, ...readStockRow(cells, day) }));

describe('a preview of opening stock', () => {
  it('counts what the example, brought to an empty catalogue, would make', () => {
    const preview = previewOf(planOpeningStock(read, record), [], []);
    expect(preview.rows.flatMap(({ faults }) => faults)).toEqual([]);
    expect(preview).toMatchObject({
      usable: true,
      counts: { rows: 4, faultyRows: 0, makers: 2, products: 3, lots: 4, containers: 7 },
    });
    expect(preview.rows[1]).toMatchObject({ row: 3, openedOn: '2026-03-12', remainingMicrolitres: 6_000 });
  });

  it('is not usable while any row or the file itself has a fault', () => {
    const [first, ...rest] = read;
    const faulty = first && { ...first, faults: [{ column: 'lot' as const, message: 'is empty' }] };
    const plan = planOpeningStock(faulty ? [faulty, ...rest] : rest, record);
    expect(previewOf(plan, [], [])).toMatchObject({ usable: false, counts: { faultyRows: 1 } });
    expect(previewOf([], [{ row: 1, column: 'lot', message: 'is missing' }], []).usable).toBe(false);
  });
});

describe('the columns of opening stock', () => {
  it('have each a name of its own, and the example uses no other', () => {
    const names: string[] = openingStockColumns.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const row of openingStockExample) for (const name of Object.keys(row)) expect(names).toContain(name);
  });
});
