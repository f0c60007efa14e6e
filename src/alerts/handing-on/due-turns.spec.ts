import { describe, expect, it } from 'vitest';
import { dueTurns } from './due-turns.js';

const isOver = (beganAt: string, now: string, minutes: number) => {
  const { until, from } = dueTurns(now, minutes);
  return beganAt <= until || beganAt >= from;
};

describe('dueTurns', () => {
  it('lets a turn last its minutes, to the millisecond', () => {
    const now = '2026-01-15T12:00:00.000Z';
    expect(isOver('2026-01-15T11:00:00.001Z', now, 60)).toBe(false);
    expect(isOver('2026-01-15T11:00:00.000Z', now, 60)).toBe(true);
    expect(isOver('2026-01-14T11:00:00.000Z', now, 60)).toBe(true);
  });

  it('lasts as long when the clocks of the studio change meanwhile, which are not asked', () => {
    expect(isOver('2026-03-29T00:30:00.000Z', '2026-03-29T01:29:59.999Z', 60)).toBe(false);
    expect(isOver('2026-03-29T00:30:00.000Z', '2026-03-29T01:30:00.000Z', 60)).toBe(true);
  });

  it('ends a turn that a clock put back since left ahead, but not one of a clock that is a little fast', () => {
    const now = '2026-01-15T12:00:00.000Z';
    expect(isOver('2026-01-15T12:01:59.999Z', now, 60)).toBe(false);
    expect(isOver('2026-01-15T12:02:00.000Z', now, 60)).toBe(true);
    expect(isOver('2027-01-15T12:00:00.000Z', now, 60)).toBe(true);
  });
});
