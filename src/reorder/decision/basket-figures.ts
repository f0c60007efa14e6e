import { orderNothing } from './batch-cost.js';
import { totalCostMinor } from './expected-cost.js';
import { figure } from './figure.js';
import type { BasketFigures, PlannedOrder } from './item-decision-result.js';
import type { Candidate } from './order-trials.js';
import { dateOfDay } from './plan-days.js';
import type { WeighedOffer } from './weigh-offers.js';

const daysShown = 5;
const packsShown = 4;
/** Order days after its own, of which is told. */
const laterSteps = [1, 3, 7, 14];

/**
 * What a supplier's basket must know of an item: ordering it on another day, and more of it.
 *
 * @param isOrdered whether `own` is what would be done without a basket; else nothing would be, and ordering on any day
 *   costs more than that
 */
export function basketFigures(
  { offer, search, orderDays, rates, base }: WeighedOffer,
  own: Candidate,
  isOrdered: boolean,
  plannedOn: string,
  paths: number,
): BasketFigures {
  const here = search.trials.of(own, paths).costMinor;
  const nothing = search.simulation.evaluate(orderNothing, { from: 0, to: paths });
  const alone = isOrdered ? here : Math.min(here, totalCostMinor(nothing, rates, base.left));
  const indices = new Set<number>();
  for (let part = 0; part <= daysShown; part++) indices.add(Math.round((own.dayIndex * part) / daysShown));
  const days = [...indices].map((dayIndex) => ({
    on: dateOfDay(plannedOn, orderDays[dayIndex] ?? 0),
    extraMinor: figure(search.trials.of({ dayIndex, packs: own.packs }, paths).costMinor - alone),
  }));
  const laterDays: BasketFigures['laterDays'] = [];
  for (const step of laterSteps) {
    const day = orderDays[own.dayIndex + step];
    if (day === undefined) continue;
    const later = search.trials.of({ dayIndex: own.dayIndex + step, packs: own.packs }, paths);
    laterDays.push({ on: dateOfDay(plannedOn, day), extraMinor: figure(later.costMinor - alone) });
  }
  const morePacks = Array.from({ length: packsShown }, (_, index) => {
    const packs = own.packs + index + 1;
    return { packs, extraMinor: figure(search.trials.of({ ...own, packs }, paths).costMinor - here) };
  });
  return {
    offerId: offer.offerId,
    productId: offer.productId,
    supplierId: offer.supplierId,
    packs: own.packs,
    packPrices: offer.replenishment.prices,
    days,
    laterDays,
    morePacks,
  };
}

/** Of an order for an appointment: it is neither moved nor made more. */
export function figuresOfAppointment({ offer }: WeighedOffer, order: PlannedOrder): BasketFigures {
  return {
    offerId: offer.offerId,
    productId: offer.productId,
    supplierId: offer.supplierId,
    packs: order.packs,
    packPrices: offer.replenishment.prices,
    days: [{ on: order.on, extraMinor: 0 }],
    laterDays: [],
    morePacks: [],
  };
}
