import { describe, expect, it } from 'vitest';
import { madeStudio } from '../../../tests/support/made-studio.js';
import { countByPeriod, periodsSince, studioDemand } from './studio-demand.js';

describe('what all items of a studio share', () => {
  it('counts whole weeks back from the day before the plan', () => {
    expect(periodsSince(-20)).toBe(2);
    expect(periodsSince(-5_000)).toBe(104);
    expect(periodsSince(0)).toBe(0);
    expect(countByPeriod([-1, -7, -8, -14, -15, 0, 3], 2)).toEqual([2, 2]);
  });

  it('learns how the studio works from its sessions', () => {
    const studio = studioDemand(madeStudio(1));
    expect(studio.allReturns.rate).toBeGreaterThan(0.6);
    expect(studio.allReturns.rate).toBeLessThan(0.85);
    expect(studio.carriedOver).toBeCloseTo(0.9, 1);
    expect(studio.weekdays.slice(5)).toEqual([0, 0]);
    expect(studio.methodPrior.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
  });

  it('learns from bookings of one kind how many take place: what became of touch-ups says nothing of others', () => {
    const facts = madeStudio(1);
    const touchUps = Array.from({ length: 200 }, (_, index) => ({
      ...{ visitKind: 'touch-up' as const, day: -1 - index, bookedOn: -40 - index, calledOffOn: -1 - index },
    }));
    const attended = (lapsedBookings: typeof facts.lapsedBookings) =>
      studioDemand({ ...facts, lapsedBookings }).bookings.attended;
    expect(attended([...facts.lapsedBookings, ...touchUps])).toEqual(attended(facts.lapsedBookings));
    const others = touchUps.map((each) => ({ ...each, visitKind: 'first session' as const }));
    expect(attended([...facts.lapsedBookings, ...others])[0]).toBeLessThan(
      0.95 * (attended(facts.lapsedBookings)[0] ?? 0),
    );
  });

  it('supposes everything of a studio without a record', () => {
    const empty = {
      ...madeStudio(1),
      recordedFrom: 0,
      sessions: [],
      bookings: [],
      lapsedBookings: [],
      owedTouchUps: [],
    };
    const studio = studioDemand(empty);
    expect(studio.weekdaysAssumed).toBe(true);
    expect(studio.allReturns).toMatchObject({ visits: 0, touchUps: 0 });
    expect(studio.carriedOver).toBeCloseTo(0.85, 12);
  });
});
