import { describe, expect, it } from 'vitest';
import { type FanDay, fanGeometry, roundSteps } from './fan-geometry.js';

const size = { width: 320, height: 200, left: 20, right: 0, top: 0, bottom: 0 };
const day = (date: string, p50: number): FanDay => ({
  day: date,
  p5: Math.max(0, p50 - 2),
  p25: Math.max(0, p50 - 1),
  p50,
  p75: p50 + 1,
  p95: p50 + 2,
});

describe('the fan of what may be here', () => {
  const fan = fanGeometry([day('2026-03-20', 8), day('2026-04-19', 0)], size);

  it('begins at the left with what is here, and ends at the right', () => {
    expect(fan.median).toBe('M20 40L320 200');
    expect(fan.zeroY).toBe(200);
  });

  it('has its wide band around its narrow one', () => {
    expect(fan.wide).toBe('M20 0L320 160L320 200L20 80Z');
    expect(fan.narrow).toBe('M20 20L320 180L320 200L20 60Z');
  });

  it('places days by the calendar, also over a change of the clocks, and none outside', () => {
    expect(fan.xOf('2026-04-04')).toBe(170);
    expect([fan.xOf('2026-03-19'), fan.xOf('2026-04-20')]).toEqual([undefined, undefined]);
  });

  it('writes today and whole weeks after it', () => {
    expect(fan.days.map(({ day }) => day)).toEqual(['2026-03-20', '2026-04-03', '2026-04-17']);
  });

  it('is drawn also where nothing is here and nothing will be', () => {
    const empty = { day: '2026-03-20', p5: 0, p25: 0, p50: 0, p75: 0, p95: 0 };
    const flat = fanGeometry([empty, { ...empty, day: '2026-03-21' }], size);
    expect(flat.median).toBe('M20 200L320 200');
    expect(flat.days.map(({ day }) => day)).toEqual(['2026-03-20', '2026-03-21']);
  });
});

describe('the amounts at its left', () => {
  it.each([
    [10, 5, [0, 2, 4, 6, 8, 10]],
    [11, 4, [0, 5, 10, 15]],
    [0.7, 4, [0, 0.2, 0.4, 0.6, 0.8]],
    [1, 1, [0, 1]],
    [0, 4, [0, 0.5, 1]],
    [987, 3, [0, 500, 1000]],
  ])('up to %d, at most %d steps: %j', (highest, atMost, steps) => {
    expect(roundSteps(highest, atMost)).toEqual(steps);
  });
});
