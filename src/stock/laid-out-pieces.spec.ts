import { describe, expect, it } from 'vitest';
import { countedPieces, refusalToTake, warningsOfWaste } from './laid-out-pieces.js';

const box = { booked: 10, onTrays: 3 };

describe('pieces that lie on trays', () => {
  it('are not taken out of their box, with how many they are', () => {
    expect(refusalToTake(box, 7)).toBeNull();
    expect(refusalToTake(box, 8)).toMatch(/of the 10 in this box 3 lie on trays. At most 7/);
    expect(refusalToTake({ booked: 2, onTrays: 3 }, 1)).toMatch(/At most 0/);
  });

  it('cannot be more than the book shows', () => {
    expect(refusalToTake(box, 11)).toMatch(/book shows 10/);
  });

  it('are thrown away only with a warning that says how many are missing', () => {
    expect(warningsOfWaste(box, 7)).toEqual([]);
    expect(warningsOfWaste(box, 9)).toEqual([expect.stringMatching(/^3 of the 10 .* so 2 of those/)]);
    expect(warningsOfWaste({ booked: 10, onTrays: 0 }, 10)).toEqual([]);
    expect(warningsOfWaste(box, 10)).toEqual([expect.stringMatching(/so 3 of those/)]);
  });

  it('count as here beside what was counted in the box, and that is said', () => {
    expect(countedPieces(box, 7)).toEqual({ present: 10, warnings: [expect.stringMatching(/^3 more/)] });
    expect(countedPieces({ booked: 10, onTrays: 0 }, 9)).toEqual({ present: 9, warnings: [] });
  });
});
