import { describe, expect, it } from 'vitest';
import { seriesA, seriesB } from '../../../tests/support/reference-series.js';
import { crostonLevels } from './croston.js';

describe("Croston's forecast", () => {
  it('is that of R 4.2.2 with alpha 0.1', () => {
    expect(crostonLevels(seriesA, 0.1).at(-1)).toBeCloseTo(0.9845965214, 10);
    expect(crostonLevels(seriesB, 0.1).at(-1)).toBeCloseTo(1.4345137075, 10);
  });

  it('is 0 before any demand, and does not fall while nothing is needed', () => {
    expect([...crostonLevels([0, 0, 4, 0, 0], 0.1)]).toEqual([0, 0, 0, 4 / 3, 4 / 3, 4 / 3]);
    expect([...crostonLevels([], 0.1)]).toEqual([0]);
  });
});
