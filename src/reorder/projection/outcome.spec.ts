import { describe, expect, it } from 'vitest';
import { chanceShortBefore, firstShortDay, type Outcome } from './outcome.js';

// Of ten paths one runs short on day 1, four on day 3, five never.
const outcome = { paths: 10, firstShortCounts: Int32Array.of(0, 1, 0, 4, 0) } as Outcome;

describe('an outcome', () => {
  it('knows the chance of having run short before a day', () => {
    expect([0, 1, 2, 3, 4, 99].map((day) => chanceShortBefore(outcome, day))).toEqual([
      0, 0, 0.1, 0.1, 0.5, 0.5,
    ]);
  });

  it('knows the first day by which running short has a chance, and that it never has', () => {
    expect([0, 0.05, 0.1, 0.11, 0.5, 0.51].map((chance) => firstShortDay(outcome, chance))).toEqual([
      1,
      1,
      1,
      3,
      3,
      null,
    ]);
  });
});
