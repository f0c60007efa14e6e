import { expect, it } from 'vitest';
import { linesOfWrapper } from './lines-of-wrapper.js';

const lines = [
  { id: 'a', labelCode: 'B2C3D4E5F6G7', productId: 'liner', lotCode: 'CL-9' },
  { id: 'b', labelCode: 'B2C3D4E5F6G7', productId: 'liner', lotCode: 'CL-9' },
  { id: 'c', labelCode: 'H2C3D4E5F6G7', productId: 'liner', lotCode: null },
  { id: 'd', labelCode: 'K2C3D4E5F6G7', productId: 'umber', lotCode: 'HU-118' },
];
const nothing = { labelCode: null, productId: null, lotCode: null, text: '' };
const found = (wrapper: Partial<typeof nothing> | Record<string, string>) =>
  linesOfWrapper(lines, { ...nothing, ...wrapper }).map(({ id }) => id);

it('knows our own label', () => expect(found({ labelCode: 'H2C3D4E5F6G7' })).toEqual(['c']));

it('knows the maker’s symbol by product and lot, and by the product alone where it has no lot', () => {
  expect(found({ productId: 'liner', lotCode: 'CL-9' })).toEqual(['a', 'b']);
  expect(found({ productId: 'liner', lotCode: 'CL-8' })).toEqual([]);
  expect(found({ productId: 'liner' })).toEqual(['a', 'b', 'c']);
});

it('knows a typed lot or label however it is written', () => {
  expect(found({ text: 'hu 118' })).toEqual(['d']);
  expect(found({ text: 'k2c3-d4e5-f6g7' })).toEqual(['d']);
  expect(found({ text: 'HU-11' })).toEqual([]);
});
