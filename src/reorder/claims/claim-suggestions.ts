import { Temporal } from 'temporal-polyfill';
import type { ClaimReason } from './vocabulary.js';

/** A line of a delivery that was bought, with what is known of it. */
export interface DeliveredLine {
  deliveryLineId: string;
  lotId: string;
  /** The studio's local day of its arrival, ISO `YYYY-MM-DD`. */
  arrivedOn: string;
  pieces: number;
  /** The last day of its lot; null: none is printed. */
  useBy: string | null;
  /** Pieces that were put aside, by what is wrong with them. */
  brokenSeals: number;
  damagedPackages: number;
  /** Days it should have had on arrival by the offer; null: the offer says nothing. */
  promisedLifeDays: number | null;
}

/** What came otherwise than it was ordered. */
export interface OrderDifference {
  kind: 'more than ordered' | 'another product' | 'not ordered';
  deliveryLineId: string;
  lotId: string | null;
  orderLineId: string | null;
  pieces: number;
}

/** A line of an order that was closed with something missing. */
export interface ShortLine {
  orderLineId: string;
  missingPieces: number;
}

/** How short a date is; days are negative where it is past. */
export interface ShortDate {
  useBy: string;
  /** On arrival. */
  daysLeft: number;
  /** By the offer; null: it is past, whatever the offer says. */
  promisedDays: number | null;
}

/** Something that gives reason to claim. */
export interface Suggestion {
  reason: ClaimReason;
  orderLineId: string | null;
  deliveryLineId: string | null;
  lotId: string | null;
  pieces: number;
  /** Of a date that is too short; else null. */
  shortDate: ShortDate | null;
  why: string;
}

/** What single lines of deliveries give reason to claim. A piece with a fault is not claimed for its date too. */
export function claimsOfDelivery(line: DeliveredLine): Suggestion[] {
  const { deliveryLineId, lotId, arrivedOn, pieces, useBy, promisedLifeDays } = line;
  const about = { orderLineId: null, deliveryLineId, lotId, shortDate: null };
  const claims: Suggestion[] = [];
  const { brokenSeals, damagedPackages } = line;
  if (brokenSeals > 0) {
    const why = `${counted(brokenSeals)} came with a broken seal.`;
    claims.push({ ...about, reason: 'broken seal', pieces: brokenSeals, why });
  }
  if (damagedPackages > 0) {
    const why = `${counted(damagedPackages)} came in a damaged package.`;
    claims.push({ ...about, reason: 'damaged package', pieces: damagedPackages, why });
  }
  const sound = pieces - brokenSeals - damagedPackages;
  if (useBy === null || sound <= 0) return claims;
  const life = Temporal.PlainDate.from(arrivedOn).until(useBy, { largestUnit: 'days' }).days;
  const short = { ...about, reason: 'short date', pieces: sound } as const;
  if (life < 0) {
    const shortDate = { useBy, daysLeft: life, promisedDays: null };
    claims.push({
      ...short,
      shortDate,
      why: `${counted(sound)} came on ${arrivedOn}, past their last day, ${useBy}.`,
    });
  } else if (promisedLifeDays !== null && life < promisedLifeDays) {
    const promised = `the offer says at least ${promisedLifeDays}`;
    claims.push({
      ...short,
      shortDate: { useBy, daysLeft: life, promisedDays: promisedLifeDays },
      why: `${counted(sound)} had ${life} days left when they came (${useBy}); ${promised}.`,
    });
  }
  return claims;
}

/** What came beside an order. */
export function claimsOfDifference(difference: OrderDifference): Suggestion {
  const { kind, deliveryLineId, lotId, orderLineId, pieces } = difference;
  const words = {
    'more than ordered': 'more than were ordered',
    'another product': 'of another product than was ordered',
    'not ordered': 'that were not ordered',
  };
  return {
    ...{ reason: 'not ordered', orderLineId, deliveryLineId, lotId, pieces, shortDate: null },
    why: `${counted(pieces)} came ${words[kind]}.`,
  };
}

/** What never came. */
export function claimsOfShortLine({ orderLineId, missingPieces }: ShortLine): Suggestion {
  return {
    ...{ reason: 'too few', orderLineId, deliveryLineId: null, lotId: null, pieces: missingPieces },
    shortDate: null,
    why: `${counted(missingPieces)} of the order never came.`,
  };
}

/** A suggestion is gone once somebody opened a claim for it, whatever became of that. */
export function suggestionKey({
  reason,
  orderLineId,
  deliveryLineId,
}: Pick<Suggestion, 'reason' | 'orderLineId' | 'deliveryLineId'>): string {
  return `${reason} ${deliveryLineId ?? `order ${orderLineId}`}`;
}

/**
 * What pieces cost, in whole minor units, halves rounded up; null: not known.
 * @param price what so many pieces cost
 */
export function costOfPieces(pieces: number, price: { minor: number; pieces: number } | null): number | null {
  return price === null || price.pieces < 1 ? null : Math.round((price.minor * pieces) / price.pieces);
}

function counted(pieces: number): string {
  return pieces === 1 ? '1 piece' : `${pieces} pieces`;
}
