import type { Booking } from '../demand/demand-facts.js';
import type { CountComponent, DemandModel, ExpectedUse } from '../demand/demand-model.js';
import type { DaysDistribution } from '../projection/item-facts.js';
import type { PackPrice } from '../supply/pack-price.js';

/** More or fewer sessions of a procedure on a day, counted from the day of the plan. */
export interface SupposedSessions {
  procedureId: string;
  day: number;
  /** Negative: so many fewer. */
  sessions: number;
}

/** Lead times that are shorter or longer: times a factor, and days more or fewer; never less than none. */
export function supposedLeadTime(
  { days, weights }: DaysDistribution,
  perMille: number,
  extraDays: number,
): DaysDistribution {
  const moved = new Map<number, number>();
  for (const [index, each] of days.entries()) {
    const day = Math.max(0, Math.round((each * perMille) / 1_000) + extraDays);
    moved.set(day, (moved.get(day) ?? 0) + (weights[index] ?? 0));
  }
  const sorted = [...moved].sort(([one], [other]) => one - other);
  return { days: sorted.map(([day]) => day), weights: sorted.map(([, weight]) => weight) };
}

export function supposedPrices(prices: readonly PackPrice[], perMille: number): PackPrice[] {
  return prices.map(({ fromPacks, packPriceMinor }) => ({
    fromPacks,
    packPriceMinor: Math.round((packPriceMinor * perMille) / 1_000),
  }));
}

/** Bookings with some more, which are first sessions by whoever does most of the procedure, or without some of them. */
export function supposedBookings(
  bookings: readonly Booking[],
  supposed: readonly SupposedSessions[],
  artistOf: (procedureId: string) => string,
): Booking[] {
  const all = [...bookings];
  for (const { procedureId, day, sessions } of supposed) {
    for (let count = 0; count < sessions; count += 1) {
      const artistId = artistOf(procedureId);
      all.push({ procedureId, artistId, visitKind: 'first session', day, followsSessionId: null });
    }
    for (let count = 0; count > sessions; count -= 1) {
      const index = all.findLastIndex((each) => each.procedureId === procedureId && each.day === day);
      if (index !== -1) all.splice(index, 1);
    }
  }
  return all;
}

/**
 * A model with so many more or fewer bookings, and as many more or fewer of what nobody has booked yet. What is owed, and
 * courses, stay as they are.
 */
export function supposedDemand(model: DemandModel, perMille: number): DemandModel {
  if (perMille === 1_000) return model;
  const factor = perMille / 1_000;
  return {
    days: model.days,
    expected: model.expected.flatMap((use) => (use.source === 'booking' ? timesUse(use, factor) : [use])),
    unforeseen: model.unforeseen.map((use) => ({
      ...use,
      components: use.components.flatMap((component) => timesComponent(component, factor)),
    })),
  };
}

/** Whole ones, and one that comes with the chance of the rest. */
function timesUse(use: ExpectedUse, factor: number): ExpectedUse[] {
  const whole = Math.floor(factor);
  const rest = factor - whole;
  const uses: ExpectedUse[] = Array.from({ length: whole }, () => use);
  if (rest > 0) uses.push({ ...use, chance: use.chance * rest });
  return uses;
}

/** Counts stay whole: as often the next one above and below that their mean is times the factor. */
function timesComponent(component: CountComponent, factor: number): CountComponent[] {
  if (component.kind === 'negative binomial') return [{ ...component, mean: component.mean * factor }];
  const { counts, weight } = component;
  const below = counts.map((count) => Math.floor(count * factor));
  const above = counts.map((count) => Math.ceil(count * factor));
  const [wanted, least, most] = [factor * sum(counts), sum(below), sum(above)];
  const share = most === least ? 0 : (wanted - least) / (most - least);
  return [
    { ...component, counts: below, weight: weight * (1 - share) },
    { ...component, counts: above, weight: weight * share },
  ].filter((each) => each.weight > 0);
}

function sum(counts: readonly number[]): number {
  return counts.reduce((total, count) => total + count, 0);
}
