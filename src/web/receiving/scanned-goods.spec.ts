import { expect, it } from 'vitest';
import type { SymbolView } from '../../catalogue/symbols.views.js';
import { goodsInSymbol } from './scanned-goods.js';

const symbol: SymbolView = {
  kind: 'gs1',
  text: 'text',
  symbologyIdentifier: ']d2',
  labelCode: null,
  gtin: '09506000134352',
  lotCode: 'CL-2041',
  serial: null,
  useBy: '2028-10-31',
  useByPrecision: 'month',
  producedOn: null,
  elements: [],
  faults: [],
  product: null,
  contentCount: null,
};

it('takes a symbol by its own number', () => {
  expect(goodsInSymbol(symbol)).toMatchObject({ gtin: '09506000134352', count: 1, lotCode: 'CL-2041' });
});

it('takes a box that names its content for so many of that', () => {
  const elements = [
    { applicationIdentifier: '02', value: '09506000134369' },
    { applicationIdentifier: '37', value: '12' },
  ];
  expect(goodsInSymbol({ ...symbol, gtin: null, elements })).toMatchObject({
    gtin: '09506000134369',
    count: 12,
  });
});

it('names no product where the symbol does not', () => {
  expect(goodsInSymbol({ ...symbol, gtin: null })).toMatchObject({ gtin: null, count: 1 });
});
