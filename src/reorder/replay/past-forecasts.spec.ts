import { describe, expect, it } from 'vitest';
import { madeStudio } from '../../../tests/support/made-studio.js';
import type { ItemDemandFacts } from '../demand/demand-facts.js';
import { calibrate } from './calibration.js';
import { pastForecasts } from './past-forecasts.js';

const item = (name: string) => ({
  ...{ item: name, unitsOfKitQuantity: null, availableFrom: null, replaces: null },
  otherUses: [],
});
const items = ['needle', 'shade 0', 'shade 2', 'shade 5', 'shade 9', 'shade 15', 'shade 22', 'shade 28'].map(
  item,
);
const settings = { horizonDays: 28, mostOrigins: 8, levels: [0.5, 0.75, 0.95], paths: 400, seed: 1 };

describe('what would have been foretold', () => {
  it('was enough about as often as it claimed, in a studio that goes on as it did', () => {
    const [at50, at75, at95] = calibrate(pastForecasts(madeStudio(21), items, settings));
    expect(at95?.forecasts).toBe(64);
    for (const each of [at50, at75, at95]) {
      // Items of one month share its sessions, so that chance moves the share by more than the standard error.
      const off = Math.abs((each?.enough ?? 0) - (each?.claimed ?? 0));
      expect(off).toBeLessThan(4 * (each?.standardError ?? 0));
    }
    expect(at95?.enough ?? 0).toBeGreaterThan(at50?.enough ?? 1);
  });

  it('does not change with what came later', () => {
    const facts = madeStudio(21);
    const day = -28;
    const sessions = facts.sessions.map((session) =>
      session.day >= day ? { ...session, uses: [{ item: 'needle', amount: 900 }] } : session,
    );
    const one = pastForecasts(facts, items, { ...settings, mostOrigins: 1 });
    const other = pastForecasts({ ...facts, sessions, bookings: [] }, items, { ...settings, mostOrigins: 1 });
    expect(other.map(({ foretold }) => foretold)).toEqual(one.map(({ foretold }) => foretold));
    expect(other[0]?.came).not.toBe(one[0]?.came);
  });

  it('is of what was known of an item on each morning', () => {
    const asked: number[] = [];
    const asOf = (item: ItemDemandFacts, day: number) => {
      asked.push(day);
      return { ...item, replacedFrom: 0 };
    };
    const few = { ...settings, mostOrigins: 2 };
    const foretold = pastForecasts(madeStudio(21), items.slice(0, 1), few, asOf);
    expect(asked).toEqual([-28, -56]);
    expect(foretold.map((one) => one.foretold)).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it('is nothing where the record is too young', () => {
    expect(pastForecasts({ ...madeStudio(1), recordedFrom: -60 }, items, settings)).toEqual([]);
  });
});
