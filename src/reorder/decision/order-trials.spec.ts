import { describe, expect, it } from 'vitest';
import { firstOrderOf } from '../../../tests/support/order-judge.js';
import { sealed } from '../../../tests/support/planning-samples.js';
import { byCost, mayBeCheaper, type Trial } from './order-trials.js';

const { trials } = firstOrderOf({ usesPerWeek: 7, batches: [sealed(10, 1)] }, 400, 3).search;

/** That is as much as it costs on each part of the paths. */
function costing(...partCostsMinor: number[]): Trial {
  const costMinor = partCostsMinor.reduce((sum, each) => sum + each, 0) / partCostsMinor.length;
  return {
    ...trials.of({ dayIndex: 0, packs: 1 }, 400),
    costMinor,
    partCostsMinor: Float64Array.from(partCostsMinor),
  };
}

describe('a first order that was tried', () => {
  it('comes to the same, whether its paths are tried at once or in parts', () => {
    const candidate = { dayIndex: 1, packs: 2 };
    const { outcome, costMinor, partCostsMinor } = trials.of(candidate, 400);
    const atOnce = trials.facts.simulation.evaluate(trials.policy(candidate));
    for (const figure of ['unmetUnits', 'orders', 'heldUnitDays', 'costMinor'] as const) {
      expect(outcome[figure].mean).toBeCloseTo(atOnce[figure].mean, 9);
      expect(outcome[figure].standardError).toBeCloseTo(atOnce[figure].standardError, 9);
    }
    expect(outcome.paths).toBe(400);
    expect(outcome.firstShortCounts).toEqual(atOnce.firstShortCounts);
    expect(partCostsMinor.reduce((sum, each) => sum + each, 0) / partCostsMinor.length).toBeCloseTo(
      costMinor,
      0,
    );
  });

  it('is tried once for so many paths, and counted once', () => {
    const { candidates } = trials;
    const trial = trials.of({ dayIndex: 3, packs: 77 }, 400);
    expect(trials.of({ dayIndex: 3, packs: 77 }, 400)).toBe(trial);
    expect(trials.of({ dayIndex: 3, packs: 77 }, 200)).not.toBe(trial);
    expect(trials.candidates).toBe(candidates + 1);
    const sorted = trials.sorted(400);
    expect(sorted).toContain(trial);
    expect([...sorted].sort(byCost)).toEqual(sorted);
  });
});

describe('a dearer one', () => {
  it('is so for certain when it is dearer on all parts alike, however much the parts vary', () => {
    expect(mayBeCheaper(costing(110, 210, 310, 410), costing(100, 200, 300, 400), 0.005)).toBe(false);
  });

  it('may be cheaper when it is on half of the parts', () => {
    expect(mayBeCheaper(costing(90, 215, 290, 415), costing(100, 200, 300, 400), 0.005)).toBe(true);
  });

  it('is not worth finding when it can be cheaper by a trifle only', () => {
    expect(mayBeCheaper(costing(1_000, 1_001, 999), costing(1_000, 1_000, 1_000), 0.005)).toBe(false);
    expect(mayBeCheaper(costing(1_000, 1_001, 999), costing(1_000, 1_000, 1_000), 0)).toBe(true);
  });

  it('is taken by its mean when there is but one path', () => {
    expect(mayBeCheaper(costing(101), costing(100), 0.005)).toBe(false);
    expect(mayBeCheaper(costing(90), costing(100), 0.005)).toBe(true);
  });
});
