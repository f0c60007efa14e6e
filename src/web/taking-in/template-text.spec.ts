import { parse } from 'csv-parse/sync';
import { expect, it } from 'vitest';
import { bookingColumns, bookingExample } from '../../sessions/bookings/booking-columns.js';
import { openingStockColumns, openingStockExample } from '../../stock/opening-stock/opening-stock-columns.js';
import { templateText } from './template-text.js';

it('is read back by another reader as it was written', () => {
  const rows = [{ one: 'a, "b"', two: 'ä' }, { two: '=1' }];
  const text = templateText([{ name: 'one' }, { name: 'two' }], rows);
  expect(parse(text, { bom: true, columns: true })).toEqual([
    { one: 'a, "b"', two: 'ä' },
    { one: '', two: '=1' },
  ]);
});

it('has every column, and an example for each kind of row', () => {
  const [header = [], ...stock] = parse(templateText(openingStockColumns, openingStockExample), {
    bom: true,
  });
  expect(header).toEqual(openingStockColumns.map(({ name }) => name));
  expect(stock).toHaveLength(openingStockExample.length);
  const [names = []] = parse(templateText(bookingColumns, bookingExample), { bom: true });
  expect(names).toEqual(bookingColumns.map(({ name }) => name));
});
