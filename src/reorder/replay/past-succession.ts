import type { ItemDemandFacts } from '../demand/demand-facts.js';
import type { StudioDemand } from '../demand/studio-demand.js';
import { inSuccession } from '../demand/succession.js';
import type { ItemStock } from '../projection/item-facts.js';
import { itemFactsAsOf } from './facts-as-of.js';
import type { Need } from './replay-item.js';

/** An item that takes the place of another, or is replaced by one, and what was here of it. */
export interface LinkedItem {
  demand: ItemDemandFacts;
  /** By rising day, counted from the day of the plan. */
  needs: readonly Need[];
  /** What was on the shelf, by morning. */
  shelves: ReadonlyMap<number, ItemStock>;
}

/** Those of the items that take the place of another, or are replaced by one. */
export function linkedNames(items: readonly ItemDemandFacts[]): Set<string> {
  return new Set(items.flatMap(({ item, replaces }) => (replaces === null ? [] : [item, replaces])));
}

/**
 * What was known of linked items on a morning of the past: the need of the old one is the new one's from the day on which
 * what was on the shelf that morning would be used up. Before the new one had come, or was needed, nobody knew that it would
 * take the place of the old one.
 *
 * @param studio as of that morning
 * @returns by item
 */
export function successionAsOf(
  studio: StudioDemand,
  items: readonly LinkedItem[],
  day: number,
  horizonDays: number,
): Map<string, ItemDemandFacts> {
  const none: ItemStock = { batches: [], onTheWay: [], openedLifeDays: 0 };
  const known = items.map((item) => {
    const demand = itemFactsAsOf(item.demand, day);
    const stock = item.shelves.get(day) ?? none;
    return { demand: hadCome(item, day) ? demand : { ...demand, replaces: null }, stock };
  });
  return new Map(inSuccession(studio, known, horizonDays).map(({ demand }) => [demand.item, demand]));
}

function hadCome({ demand: { availableFrom }, needs }: LinkedItem, day: number): boolean {
  return (availableFrom !== null && availableFrom < day) || (needs[0]?.day ?? 0) < day;
}
