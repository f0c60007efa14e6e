import { describe, expect, it } from 'vitest';
import { comparedPlan, isOutdated } from './compared-plan.js';

const run = (id: string, day: string, state: 'done' | 'failed' = 'done') => ({
  ...{ id, state, plannedOn: day, askedAt: `${day}T03:00:00Z`, endedAt: `${day}T03:05:00Z` },
});
const plans = [run('third', '2026-11-26'), run('failed', '2026-11-25', 'failed'), run('first', '2026-11-24')];
const asked = { plannedOn: '2026-11-25', askedAt: '2026-11-25T10:00:00Z' };

describe('the plan that a what-if is compared with', () => {
  it('is the one that was the latest when it was asked, not a later one and none that failed', () => {
    expect(comparedPlan(plans, asked)?.id).toBe('first');
    expect(comparedPlan(plans, { askedAt: '2026-11-26T10:00:00Z' })?.id).toBe('third');
    expect(comparedPlan(plans, { askedAt: '2026-11-24T03:04:00Z' })).toBeUndefined();
  });

  it('is outdated on a later day, and once something was ordered in between', () => {
    const base = run('base', '2026-11-25');
    expect(isOutdated(run('first', '2026-11-24'), asked, [])).toBe(true);
    expect(isOutdated(base, asked, [{ createdAt: '2026-11-25T02:00:00Z' }])).toBe(false);
    expect(isOutdated(base, asked, [{ createdAt: '2026-11-25T09:00:00Z' }])).toBe(true);
    expect(isOutdated(base, asked, [{ createdAt: '2026-11-25T11:00:00Z' }])).toBe(false);
  });
});
