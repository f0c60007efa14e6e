import type { DemandFacts, ItemDemandFacts } from '../demand/demand-facts.js';
import type { Need } from './replay-item.js';

/** Of a liquid of which no amount is known: five drops. [C] */
const ASSUMED_MICROLITRES = 250;

/** What was needed of an item each day, and what one need usually is. */
export interface PastNeeds {
  needs: Need[];
  usualUnits: number;
  /** Needs of which nobody wrote down how much, or that nothing was left for: taken for usual ones. */
  amountsAssumed: number;
}

/** What sessions needed of items, whether or not it was there, by item; in whole units, by rising day. */
export function pastNeeds(
  { sessions, unmetWants }: Pick<DemandFacts, 'sessions' | 'unmetWants'>,
  items: readonly ItemDemandFacts[],
): Map<string, PastNeeds> {
  const uses = new Map<string, { day: number; amount: number | null }[]>();
  const add = (item: string, day: number, amount: number | null) => {
    const known = uses.get(item) ?? [];
    known.push({ day, amount });
    uses.set(item, known);
  };
  for (const { day, uses: ofSession } of sessions) {
    for (const { item, amount } of ofSession) add(item, day, amount);
  }
  // None was left, and the session never took place.
  for (const { item, day } of unmetWants) add(item, day, null);
  return new Map(items.map((item) => [item.item, needsOf(item, uses.get(item.item) ?? [])]));
}

function needsOf(
  { unitsOfKitQuantity, otherUses }: ItemDemandFacts,
  uses: readonly { day: number; amount: number | null }[],
): PastNeeds {
  const known = uses.flatMap(({ amount }) => amount ?? []);
  const mean = known.reduce((sum, amount) => sum + amount, 0) / Math.max(1, known.length);
  const usualUnits = Math.max(1, Math.round(mean) || (unitsOfKitQuantity ?? ASSUMED_MICROLITRES));
  const byDay = new Map<number, number>();
  for (const { day, amount } of [...uses, ...otherUses]) {
    byDay.set(day, (byDay.get(day) ?? 0) + Math.max(0, Math.round(amount ?? usualUnits)));
  }
  return {
    needs: [...byDay].sort(([one], [other]) => one - other).map(([day, units]) => ({ day, units })),
    usualUnits,
    amountsAssumed: uses.length - known.length,
  };
}
