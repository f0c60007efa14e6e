import { describe, expect, it } from 'vitest';
import { madeStudio } from '../../../tests/support/made-studio.js';
import { type Batch, type ItemStock, NEVER } from '../projection/item-facts.js';
import type { ItemDemandFacts } from './demand-facts.js';
import { demandOfItem, studioDemand } from './demand-of-item.js';
import { inSuccession, usedUpOn } from './succession.js';

const stock = (units: number, lastDay = NEVER, more: Partial<ItemStock> = {}): ItemStock => {
  const batch: Batch = { containers: 1, unitsEach: units, lastDay, opened: false, costEachMinor: null };
  return { batches: units === 0 ? [] : [batch], onTheWay: [], openedLifeDays: NEVER, ...more };
};
const item = (name: string, replaces: string | null = null): ItemDemandFacts => ({
  ...{ item: name, unitsOfKitQuantity: null, availableFrom: replaces === null ? null : -5 },
  ...{ replaces, otherUses: [] },
});
const week = { known: 3, halfKnown: 2, unforeseen: 2 };
const weeks = Array.from({ length: 10 }, () => week);

describe('when an item is used up', () => {
  it('is when its mean need has taken it, or its last day is over', () => {
    expect(usedUpOn(weeks, stock(10), 70)).toBe(10);
    expect(usedUpOn(weeks, stock(10, 4), 70)).toBe(5);
    expect(usedUpOn(weeks, stock(0), 70)).toBe(0);
    expect(usedUpOn(weeks, stock(500), 70)).toBe(70);
    expect(usedUpOn([], stock(10), 70)).toBe(70);
  });

  it('counts what is on the way, for as long as it keeps', () => {
    const arrival = { days: [6, 10], weights: [0.5, 0.5] };
    const coming = (lifeDays: number) => ({
      onTheWay: [{ containers: 5, unitsEach: 1, arrival, lifeDays }],
    });
    expect(usedUpOn(weeks, stock(2, NEVER, coming(NEVER)), 70)).toBe(13);
    expect(usedUpOn(weeks, stock(2, NEVER, coming(1)), 70)).toBe(10);
  });
});

describe('an item that takes the place of another', () => {
  const studio = studioDemand(madeStudio(5));
  const unitsOf = (demand: ItemDemandFacts) =>
    demandOfItem(studio, demand, 120).description.weeks.map(
      ({ known, halfKnown, unforeseen }) => known + halfKnown + unforeseen,
    );
  const total = (units: readonly number[]) => units.reduce((sum, each) => sum + each, 0);
  const linked = (old: ItemStock) => {
    const [first, second] = inSuccession(
      studio,
      [
        { demand: item('shade 0'), stock: old },
        { demand: item('shade 0 new', 'shade 0'), stock: stock(0) },
      ],
      120,
    );
    return [unitsOf(first?.demand ?? item('')), unitsOf(second?.demand ?? item(''))] as const;
  };
  const alone = unitsOf(item('shade 0'));

  it('needs nothing while there is enough of the old one', () => {
    const [old, fresh] = linked(stock(1e9));
    expect(total(fresh)).toBe(0);
    expect(total(old)).toBeCloseTo(total(alone), 6);
  });

  it('needs all of it from the day on when the old one is used up, and the old one nothing more: none is counted twice', () => {
    const [old, fresh] = linked(stock(total(alone.slice(0, 4))));
    expect(total(old)).toBeCloseTo(total(alone.slice(0, 4)), 6);
    expect(total(fresh.slice(0, 4))).toBe(0);
    for (const [index, units] of alone.entries()) {
      expect((old[index] ?? 0) + (fresh[index] ?? 0)).toBeCloseTo(units, 6);
    }
  });

  it('needs it after the last day of the old one, and at once when nothing of that is left', () => {
    const [, late] = linked(stock(1e9, 13));
    expect(total(late.slice(0, 2))).toBe(0);
    expect(total(late)).toBeCloseTo(total(alone.slice(2)), 6);
    expect(total(linked(stock(0))[1])).toBeCloseTo(total(alone), 6);
  });

  it('passes the need on from one to the next', () => {
    const none = stock(0);
    const [, , last] = inSuccession(
      studio,
      [
        { demand: item('shade 0'), stock: stock(1e9, 6) },
        { demand: item('shade 0 new', 'shade 0'), stock: none },
        { demand: item('shade 0 newer', 'shade 0 new'), stock: none },
      ],
      120,
    );
    expect(last?.demand).toMatchObject({ inheritsFrom: 0 });
    expect(last?.demand.replacedFrom).toBeUndefined();
  });
});
