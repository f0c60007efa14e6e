import { describe, expect, it } from 'vitest';
import type { AmountDistribution, ExpectedUse } from './demand-model.js';
import { joinSmallChances } from './joined-uses.js';

const one: AmountDistribution = { amounts: [1], weights: [1] };
const use = (firstDay: number, chance: number, amount = one): ExpectedUse => ({
  source: 'booking',
  chance,
  firstDay,
  dayWeights: [1],
  amount,
});

describe('uses that hardly ever come', () => {
  it('are joined by day and amount, and what is expected stays', () => {
    const many = Array.from({ length: 40 }, (_, index) => use(index % 2, 0.01));
    const joined = joinSmallChances(many);
    expect(joined.length).toBeLessThanOrEqual(6);
    expect(joined.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(0.4, 12);
    expect(Math.max(...joined.map(({ chance }) => chance))).toBeLessThanOrEqual(0.1 + 1e-12);
    expect(many.every(({ chance }) => chance === 0.01)).toBe(true);
  });

  it('stay one by one when they are likely, or take other amounts', () => {
    const other: AmountDistribution = { amounts: [2], weights: [1] };
    const uses = [use(0, 0.9), use(0, 0.9), use(0, 0.01), use(0, 0.01, other)];
    expect(joinSmallChances(uses)).toEqual(uses);
  });

  it('are left out when they cannot come', () => {
    expect(joinSmallChances([use(0, 0)])).toEqual([]);
  });
});
