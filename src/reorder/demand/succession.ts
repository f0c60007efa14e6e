import type { ItemStock } from '../projection/item-facts.js';
import type { ItemDemandFacts } from './demand-facts.js';
import { type DemandDescription, demandOfItem, type StudioDemand } from './demand-of-item.js';

/** An item that takes the place of another, or may be replaced by one. */
export interface ItemInSuccession {
  demand: ItemDemandFacts;
  stock: ItemStock;
}

/**
 * When the need of items that are replaced passes on to those that take their place: so that no need is counted for both.
 * What is here and what is coming of the old one is used up first, at its mean need; after that, or after its last day, the
 * need is the new one's.
 *
 * @param items all that may be linked
 * @returns the items in the same order, with `inheritsFrom` and `replacedFrom` where they are linked
 */
export function inSuccession<Item extends ItemInSuccession>(
  studio: StudioDemand,
  items: readonly Item[],
  horizonDays: number,
): Item[] {
  const byName = new Map(items.map((item) => [item.demand.item, item]));
  const replaced = new Set(items.flatMap(({ demand }) => demand.replaces ?? []));
  const known = new Map<string, number>();
  const passesOn = (name: string): number => {
    const before = known.get(name);
    if (before !== undefined) return before;
    // Of one that is not planned nothing is here. Set first, it also ends a circle.
    known.set(name, 0);
    const item = byName.get(name);
    if (item === undefined) return 0;
    const { description } = demandOfItem(studio, inheriting(item.demand), horizonDays);
    const day = usedUpOn(description.weeks, item.stock, studio.facts.days);
    known.set(name, day);
    return day;
  };
  const inheriting = (demand: ItemDemandFacts): ItemDemandFacts =>
    demand.replaces === null ? demand : { ...demand, inheritsFrom: passesOn(demand.replaces) };
  return items.map((item) => {
    const demand = inheriting(item.demand);
    if (!replaced.has(demand.item)) return demand === item.demand ? item : { ...item, demand };
    return { ...item, demand: { ...demand, replacedFrom: passesOn(demand.item) } };
  });
}

/**
 * The first day on which nothing usable is left, and nothing comes any more, if as much is needed as on average.
 *
 * @param days looked ahead: the answer when it lasts longer
 */
export function usedUpOn(
  weeks: DemandDescription['weeks'],
  { batches, onTheWay }: ItemStock,
  days: number,
): number {
  const lots = [
    ...batches.map(({ containers, unitsEach, lastDay }) => ({
      units: containers * unitsEach,
      from: 0,
      lastDay,
    })),
    ...onTheWay.map(({ containers, unitsEach, arrival, lifeDays }) => {
      const from = Math.round(
        arrival.days.reduce((sum, day, index) => sum + day * (arrival.weights[index] ?? 0), 0),
      );
      return { units: containers * unitsEach, from, lastDay: from + lifeDays };
    }),
  ].sort((one, other) => one.lastDay - other.lastDay);
  for (let day = 0; day < days; day++) {
    const left = lots.filter(({ units, lastDay }) => units > 1e-9 && lastDay >= day);
    if (left.length === 0) return day;
    const week = weeks[Math.floor(day / 7)];
    let needed = week === undefined ? 0 : (week.known + week.halfKnown + week.unforeseen) / 7;
    for (const lot of left) {
      if (lot.from > day) continue;
      const taken = Math.min(needed, lot.units);
      lot.units -= taken;
      needed -= taken;
    }
  }
  return days;
}
