import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backtest } from './backtest.js';
import { forecastCandidates } from './forecast-candidates.js';

describe('a backtest', () => {
  it('foretells from each period of the past that leaves a whole horizon', () => {
    expect(backtest(new Array<number>(20).fill(1), 3).origins).toBe(12);
    expect(backtest(new Array<number>(8).fill(1), 3).origins).toBe(0);
    expect(backtest([], 3).origins).toBe(0);
  });

  it('gives numbers for bursts that nobody could foretell, and none does without penalty', () => {
    const { logScores } = backtest([...new Array<number>(40).fill(0), 4_000, 0, 0, 0], 3);
    expect(logScores).toHaveLength(forecastCandidates.length);
    expect(logScores.every((score) => Number.isFinite(score) && score < 0)).toBe(true);
  });

  it('changes no earlier score when the last period becomes another', () => {
    const series = fc.array(fc.nat(9), { minLength: 12, maxLength: 40 });
    fc.assert(
      fc.property(series, fc.nat(9), (counts, last) => {
        const before = backtest(counts.slice(0, -1), 2);
        const after = backtest([...counts.slice(0, -1), last], 2);
        expect(after.origins).toBe(before.origins + 1);
        // The score added is the logarithm of a chance.
        expect(after.logScores.every((score, index) => score <= (before.logScores[index] ?? 0) + 1e-9)).toBe(
          true,
        );
      }),
    );
  });
});
