import { expect, it } from 'vitest';
import { levelChanges } from './level-changes.js';

const line = (
  lineNumber: number,
  minimumPieces: number | null,
  currentPieces: number | null,
  setByHand = false,
) => ({
  lineNumber,
  item: {
    kind: 'product' as const,
    ...{ key: 'p', unit: 'pieces' as const, label: 'Gel', productIds: ['p'] },
    ...{ productName: 'Gel', shade: null, makerName: 'Halden' },
  },
  level: { minimumPieces, currentPieces, setByHand },
});

it('leaves what stays as it is, and keeps apart what was set by hand', () => {
  const { free, byHand } = levelChanges([
    line(1, 3, null),
    line(2, 3, 3),
    line(3, null, 2),
    line(4, 0, 2),
    line(5, 4, 2, true),
    line(6, 2, 2, true),
    line(7, 0, null),
  ]);
  expect(free.map(({ lineNumber }) => lineNumber)).toEqual([1, 4]);
  expect(byHand.map(({ lineNumber }) => lineNumber)).toEqual([5]);
});
