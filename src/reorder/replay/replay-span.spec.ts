import { describe, expect, it } from 'vitest';
import { DAYS_NEEDED, weeksToReplay } from './replay-span.js';

describe('how far back a replay goes', () => {
  it.each([
    [0, 0],
    [DAYS_NEEDED - 1, 0],
    [DAYS_NEEDED, 4],
    [DAYS_NEEDED + 6, 4],
    [DAYS_NEEDED + 7, 5],
    [3_000, 52],
  ])('of %i days of record, %i weeks', (days, weeks) => {
    expect(weeksToReplay(days)).toBe(weeks);
  });
});
