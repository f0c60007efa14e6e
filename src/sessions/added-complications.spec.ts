import { describe, expect, it } from 'vitest';
import { addedComplications, longestComplicationsInAll } from './added-complications.js';

describe('complications noticed later', () => {
  it('stand below what was said before, with their day', () => {
    const first = addedComplications('none', 'swelling', '2026-03-11');
    expect(first).toBe('none\n2026-03-11: swelling');
    expect(addedComplications(first, 'gone', '2026-03-13')).toBe(
      'none\n2026-03-11: swelling\n2026-03-13: gone',
    );
  });

  it('stand alone when nothing was asked before', () => {
    expect(addedComplications(null, 'swelling', '2026-03-11')).toBe('2026-03-11: swelling');
  });

  it('are refused when they would not fit', () => {
    const almost = 'x'.repeat(longestComplicationsInAll - '\n2026-03-11: y'.length);
    expect(addedComplications(almost, 'y', '2026-03-11')).toHaveLength(longestComplicationsInAll);
    expect(addedComplications(almost, 'yy', '2026-03-11')).toBeNull();
  });
});
