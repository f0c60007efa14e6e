import { describe, expect, it } from 'vitest';
import { madeStudio } from '../../../tests/support/made-studio.js';
import { demandOfItem, studioDemand } from '../demand/demand-of-item.js';
import { type ItemStock, NEVER } from '../projection/item-facts.js';
import { factsAsOf } from './facts-as-of.js';
import { type LinkedItem, linkedNames, successionAsOf } from './past-succession.js';

const demandOf = (item: string, replaces: string | null, availableFrom: number | null) => ({
  ...{ item, replaces, availableFrom, unitsOfKitQuantity: null, otherUses: [] },
});
const shelf = (units: number): ItemStock => ({
  batches: [{ containers: 1, unitsEach: units, lastDay: NEVER, opened: false, costEachMinor: null }],
  ...{ onTheWay: [], openedLifeDays: NEVER },
});
const facts = madeStudio(5);
const old = demandOf('shade 0', null, null);
const fresh = demandOf('shade 0 new', 'shade 0', -20);
const knownOn = (day: number, unitsOfOld: number) => {
  const studio = studioDemand({ ...factsAsOf(facts, day), days: 120 });
  const items: LinkedItem[] = [
    { demand: old, needs: [{ day: -200, units: 1 }], shelves: new Map([[day, shelf(unitsOfOld)]]) },
    { demand: fresh, needs: [], shelves: new Map() },
  ];
  const known = successionAsOf(studio, items, day, 120);
  const needed = (item: typeof old) =>
    demandOfItem(studio, known.get(item.item) ?? item, 120).description.weeks.reduce(
      (sum, { known: booked, halfKnown, unforeseen }) => sum + booked + halfKnown + unforeseen,
      0,
    );
  return { known, needed };
};

describe('what was known of items of which one takes the place of the other', () => {
  it('is nothing of it before the new one came', () => {
    const { known, needed } = knownOn(-28, 1e9);
    expect(known.get('shade 0')?.replacedFrom).toBeUndefined();
    expect(known.get('shade 0 new')).toMatchObject({ replaces: null });
    expect(needed(old)).toBeGreaterThan(0);
    expect(needed(fresh)).toBe(0);
  });

  it('leaves the need to the old one while enough of it was on the shelf', () => {
    const { known, needed } = knownOn(-14, 1e9);
    expect(known.get('shade 0 new')).toMatchObject({ replaces: 'shade 0', inheritsFrom: 120 });
    expect(needed(old)).toBeGreaterThan(0);
    expect(needed(fresh)).toBe(0);
  });

  it('gives the need to the new one when nothing of the old one was left', () => {
    const { known, needed } = knownOn(-14, 0);
    expect(known.get('shade 0')).toMatchObject({ replacedFrom: 0 });
    expect(needed(old)).toBe(0);
    expect(needed(fresh)).toBeGreaterThan(0);
  });
});

it('links those that replace and those that are replaced', () => {
  expect([...linkedNames([old, fresh, demandOf('other', null, null)])].sort()).toEqual([
    'shade 0',
    'shade 0 new',
  ]);
});
