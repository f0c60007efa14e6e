import { expect, it } from 'vitest';
import { lineOfPaper, packWords, paperLine } from './order-paper.js';

it.each([
  [1, 1, 'single'],
  [6, 1, '6 pieces'],
  [1, 20, 'box of 20'],
  [2, 20, '2 boxes of 20'],
])('says a pack of %i containers of %i as %s', (packContainers, containerPieces, words) => {
  expect(packWords({ packContainers, containerPieces })).toBe(words);
});

it('says nothing of a price that is not known', () => {
  const line = lineOfPaper(
    {
      ...{ id: 'l', lineNumber: 1, productId: 'p', orderCode: null, packs: 2 },
      ...{ packContainers: 1, containerPieces: 1, packPriceMinor: null },
    },
    'Halden Ink Brow Umber',
    'EUR',
  );
  expect(line).toMatchObject({ pieces: 2, packPrice: null, linePrice: null });
  expect(paperLine(line)).toBe('1. 2 × Halden Ink Brow Umber (single)');
});
