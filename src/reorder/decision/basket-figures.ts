import { figure } from './figure.js';
import type { BasketFigures } from './item-decision-result.js';
import { dateOfDay } from './plan-days.js';
import type { WeighedOffer } from './weigh-offers.js';

const daysShown = 5;
const packsShown = 4;

/** What a supplier's basket must know of an item: ordering it earlier, and more of it. */
export function basketFigures(
  { offer, search, best, orderDays }: WeighedOffer,
  plannedOn: string,
  paths: number,
): BasketFigures {
  const here = search.priced(best, paths).costMinor;
  const indices = new Set<number>();
  for (let part = 0; part <= daysShown; part++) indices.add(Math.round((best.dayIndex * part) / daysShown));
  const days = [...indices].map((dayIndex) => ({
    on: dateOfDay(plannedOn, orderDays[dayIndex] ?? 0),
    extraMinor: figure(search.priced({ dayIndex, packs: best.packs }, paths).costMinor - here),
  }));
  const morePacks = Array.from({ length: packsShown }, (_, index) => {
    const packs = best.packs + index + 1;
    return { packs, extraMinor: figure(search.priced({ ...best, packs }, paths).costMinor - here) };
  });
  return {
    offerId: offer.offerId,
    productId: offer.productId,
    supplierId: offer.supplierId,
    packs: best.packs,
    packPrices: offer.replenishment.prices,
    days,
    morePacks,
  };
}
