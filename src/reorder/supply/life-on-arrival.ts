import { Temporal } from 'temporal-polyfill';
import { planningAssumptions } from '../settings/planning-assumptions.js';

/** What the offer says weighs as much as so many lots that were seen. An assumption, no source [C]. */
export const OFFER_COUNTS_AS_LOTS = 3;
/** Only the latest lots count. */
export const MOST_LOTS = 30;
/** A last day further off is a slip of the pen. */
export const LONGEST_LIFE_DAYS = 3650;

/** A lot that arrived sealed. */
export interface ArrivedLot {
  /** Null: it came from nobody who sells. */
  supplierId: string | null;
  /** The studio's local day, ISO `YYYY-MM-DD`. */
  arrivedOn: string;
  /** The last day on which it may be used, ISO; null: none is printed. */
  useBy: string | null;
}

export interface LifeOnArrival {
  /** Days it may be used from its arrival on, the day itself not counted; null: no date limits it. */
  lifeDays: number | null;
  basis: 'offered' | 'learnt' | 'offered and learnt' | 'no dates' | 'assumed';
  /** Lots that were counted. */
  lots: number;
  /** Lots that were not: their last day lies further off than anything keeps. */
  leftOut: number;
}

/**
 * How long a product still keeps when it arrives: the mean of its latest lots of this supplier (of all, when it brought
 * none yet), and what the offer says as if it were three lots more, rounded down. What arrived past its day counts as 0. A
 * product most of whose lots bear no date is limited by none. Without lots and without a word an assumption stands.
 *
 * @param lots of the product
 * @param supplierId null: whoever brings it
 */
export function lifeOnArrivalOf(
  lots: readonly ArrivedLot[],
  supplierId: string | null,
  offeredDays: number | null,
): LifeOnArrival {
  const ofSupplier = supplierId === null ? [] : lots.filter((lot) => lot.supplierId === supplierId);
  const latest = [...(ofSupplier.length > 0 ? ofSupplier : lots)]
    .sort((one, other) => (one.arrivedOn < other.arrivedOn ? 1 : one.arrivedOn > other.arrivedOn ? -1 : 0))
    .slice(0, MOST_LOTS);
  let leftOut = 0;
  const lives: number[] = [];
  let undated = 0;
  for (const { arrivedOn, useBy } of latest) {
    if (useBy === null) {
      undated += 1;
      continue;
    }
    const days = Temporal.PlainDate.from(arrivedOn).until(useBy, { largestUnit: 'days' }).days;
    if (days > LONGEST_LIFE_DAYS) leftOut += 1;
    else lives.push(Math.max(0, days));
  }
  if (offeredDays === null && undated > lives.length) {
    return { lifeDays: null, basis: 'no dates', lots: undated, leftOut };
  }
  const sum = lives.reduce((total, days) => total + days, 0);
  if (offeredDays !== null) {
    const weight = OFFER_COUNTS_AS_LOTS + lives.length;
    return {
      lifeDays: Math.floor((OFFER_COUNTS_AS_LOTS * offeredDays + sum) / weight),
      basis: lives.length === 0 ? 'offered' : 'offered and learnt',
      lots: lives.length,
      leftOut,
    };
  }
  if (lives.length === 0) {
    return { lifeDays: planningAssumptions.lifeOnArrivalDays.value, basis: 'assumed', lots: 0, leftOut };
  }
  return { lifeDays: Math.floor(sum / lives.length), basis: 'learnt', lots: lives.length, leftOut };
}
