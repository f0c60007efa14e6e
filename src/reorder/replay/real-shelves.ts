import type { Batch, ItemStock } from '../projection/item-facts.js';
import type { Need } from './replay-item.js';
import { StockWalk } from './stock-walk.js';

/** What really happened to an item; days count from the day of the plan. */
export interface RealPast {
  /** On the first morning; last days count like all days here. */
  stock: readonly Batch[];
  received: readonly { day: number; batch: Batch }[];
  needs: readonly Need[];
  openedLifeDays: number;
}

/**
 * What was really on the shelf on mornings of the past, each with last days counted from it. What was under way is left out:
 * on which day it was to come is not on record.
 *
 * @param firstDay the morning of `stock`, from which on it is looked at every so many days
 */
export function realShelves(
  { stock, received, needs, openedLifeDays }: RealPast,
  firstDay: number,
  everyDays: number,
): Map<number, ItemStock> {
  const shelf = new StockWalk(openedLifeDays, 0);
  shelf.add(stock);
  const shelves = new Map<number, ItemStock>();
  for (let day = firstDay; day < 0; day++) {
    if ((day - firstDay) % everyDays === 0) {
      shelves.set(day, { batches: shelf.batches(day), onTheWay: [], openedLifeDays });
    }
    shelf.add(received.filter((arrival) => arrival.day === day).map(({ batch }) => batch));
    for (const need of needs) if (need.day === day) shelf.take(day, Math.max(0, need.units));
    shelf.discard(day);
  }
  return shelves;
}
