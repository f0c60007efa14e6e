import { describe, expect, it } from 'vitest';
import { uniform } from '../../../tests/support/made-series.js';
import { calibrate, type Foretold } from './calibration.js';

/** Forecasts that are enough with one chance and claim another. */
function forecasts(count: number, really: number, claimed: number): Foretold[] {
  const random = uniform(9);
  return Array.from({ length: count }, () => ({
    level: 0.95,
    foretold: 5,
    claimed,
    came: random() < really ? 5 : 6,
  }));
}

describe('calibration', () => {
  it('finds forecasts right that are enough as often as they claim', () => {
    const [at95] = calibrate(forecasts(2_000, 0.96, 0.96));
    expect(at95).toMatchObject({
      level: 0.95,
      forecasts: 2_000,
      claimed: expect.closeTo(0.96, 9),
      verdict: 'as claimed',
    });
    expect(at95?.standardError).toBeCloseTo(Math.sqrt((0.96 * 0.04) / 2_000), 9);
  });

  it('finds those that promise too much, and those that promise too little', () => {
    expect(calibrate(forecasts(2_000, 0.9, 0.95))[0]?.verdict).toBe('too seldom');
    expect(calibrate(forecasts(2_000, 0.99, 0.95))[0]?.verdict).toBe('too often');
  });

  it('says nothing of a few, and nothing of none', () => {
    expect(calibrate(forecasts(10, 0.1, 0.95))[0]?.verdict).toBe('too few to tell');
    expect(calibrate([])).toEqual([]);
  });

  it('tells levels apart', () => {
    const many = [0.95, 0.5].flatMap((level) => forecasts(30, 1, 1).map((each) => ({ ...each, level })));
    expect(calibrate(many).map(({ level, enough }) => [level, enough])).toEqual([
      [0.5, 1],
      [0.95, 1],
    ]);
  });
});
