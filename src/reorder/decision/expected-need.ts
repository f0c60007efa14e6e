import type { AmountDistribution, CountComponent, DemandModel, ExpectedUse } from '../demand/demand-model.js';

/** Mean units of one use. */
export function meanAmount({ amounts, weights }: AmountDistribution): number {
  let units = 0;
  for (const [index, amount] of amounts.entries()) units += amount * (weights[index] ?? 0);
  return units;
}

/** What is expected of the days before `days`, by where it comes from; units and uses. */
export interface ExpectedNeed {
  /** `booked`: sessions that are booked and may take it. */
  bookings: { units: number; uses: number; booked: number };
  courses: { units: number; uses: number };
  touchUps: { units: number; uses: number };
  unforeseen: { units: number; uses: number };
}

export function expectedNeed(model: DemandModel, days: number = model.days): ExpectedNeed {
  const need: ExpectedNeed = {
    bookings: { units: 0, uses: 0, booked: 0 },
    courses: { units: 0, uses: 0 },
    touchUps: { units: 0, uses: 0 },
    unforeseen: { units: 0, uses: 0 },
  };
  for (const use of model.expected) {
    const uses = use.chance * shareBefore(use, days);
    const of = need[sources[use.source]];
    of.uses += uses;
    of.units += uses * meanAmount(use.amount);
    if (use.source === 'booking' && use.chance >= hardly) need.bookings.booked += shareBefore(use, days);
  }
  for (const series of model.unforeseen) {
    const perPeriod = meanOfComponents(series.components);
    const each = meanAmount(series.amount);
    for (let day = 0; day < Math.min(days, model.days); day++) {
      const uses = perPeriod * (series.dayShares[day] ?? 0) * (series.unknownShares[day] ?? 0);
      need.unforeseen.uses += uses;
      need.unforeseen.units += uses * each;
    }
  }
  return need;
}

/** A booking that takes it less often than this is none of it. */
const hardly = 0.01;

const sources = { booking: 'bookings', course: 'courses', 'touch-up': 'touchUps' } as const;

export function sumOfNeed({ bookings, courses, touchUps, unforeseen }: ExpectedNeed): {
  units: number;
  uses: number;
} {
  return {
    units: bookings.units + courses.units + touchUps.units + unforeseen.units,
    uses: bookings.uses + courses.uses + touchUps.uses + unforeseen.uses,
  };
}

/** Uses expected in a year, known or not, as the series go on; not what happens to be booked today. */
export function usesPerYear(model: DemandModel): number {
  if (model.days <= 0) return 0;
  // What is booked already is a part of what the series foretell: the larger of the two counts.
  let bySeries = 0;
  for (const { components, periodDays } of model.unforeseen) {
    bySeries += (meanOfComponents(components) * 365) / Math.max(1, periodDays);
  }
  const byDays = (sumOfNeed(expectedNeed(model)).uses * 365) / model.days;
  return Math.max(bySeries, byDays);
}

function shareBefore({ firstDay, dayWeights }: ExpectedUse, days: number): number {
  let share = 0;
  for (let index = 0; index < dayWeights.length && firstDay + index < days; index++) {
    share += dayWeights[index] ?? 0;
  }
  return share;
}

/** Mean uses of a period. */
export function meanOfComponents(components: readonly CountComponent[]): number {
  let mean = 0;
  for (const component of components) mean += component.weight * meanOfComponent(component);
  return mean;
}

function meanOfComponent(component: CountComponent): number {
  if (component.kind === 'negative binomial') return component.mean;
  const { counts } = component;
  if (counts.length === 0) return 0;
  let sum = 0;
  for (const count of counts) sum += count;
  return sum / counts.length;
}
