import { dateOfDay } from '../decision/plan-days.js';
import type { StudioDemand } from '../demand/studio-demand.js';
import { decidePrepared, type PlanItemFacts, type PlanOffer, prepareItem } from '../plan/item-line.js';
import type { ReplayMorning } from './replay-item.js';

/** How a decision of the past is made. */
export interface ThenSetting {
  plannedOn: string;
  seed: number;
  paths: number;
}

/**
 * What the plan would have ordered on a morning of the past: the plan's own decision, on what was known and on the shelf of
 * the replay. Orders are placed on that weekday only, since it is looked at once a week.
 *
 * @param studio as of that morning
 * @param item as of that morning, but for its stock and offers
 * @returns packs, and what a missing unit was reckoned to cost
 */
export function planThen(
  studio: StudioDemand,
  item: PlanItemFacts,
  offer: PlanOffer,
  { day, batches, onTheWay }: ReplayMorning,
  { plannedOn, seed, paths }: ThenSetting,
): { packs: number; shortageMinor: number } {
  const then = dateOfDay(plannedOn, day);
  const facts: PlanItemFacts = {
    ...item,
    onHoldUnits: 0,
    offers: [{ ...offer, orderWeekdays: [studio.facts.weekday] }],
    stock: {
      openedLifeDays: item.stock.openedLifeDays,
      batches: batches.map((batch) => ({
        ...batch,
        costEachMinor: batch.costEachMinor === null ? null : Math.round(batch.costEachMinor),
      })),
      onTheWay: onTheWay.map(({ units, containers, arrivesOn }) => ({
        containers,
        unitsEach: containers > 0 ? Math.round(units / containers) : 0,
        arrival: { days: [arrivesOn], weights: [1] },
        lifeDays: offer.lifeDays,
      })),
    },
  };
  const prepared = prepareItem(studio, facts, {
    plannedOn: then,
    seed: seed - day,
    paths,
    bookingsPerMille: 1_000,
  });
  const { order, shortage } = decidePrepared(prepared).decision;
  const isDue = order !== null && order.on <= then;
  return { packs: isDue ? order.packs : 0, shortageMinor: shortage.minorPerUnit };
}
