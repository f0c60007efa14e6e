import type { Decide, ReplayMorning, ReplayTerms } from './replay-item.js';

/** Two numbers a person would set once: at or below the first, order up to the second. */
export interface FixedLevels {
  minimumUnits: number;
  maximumUnits: number;
}

/** Orders whole packs up to a maximum whenever what is here and coming is at or below a minimum. */
export function orderBetween({ minimumUnits, maximumUnits }: FixedLevels, terms: ReplayTerms): Decide {
  const packUnits = terms.packContainers * terms.unitsEach;
  return (morning) => {
    const position = positionOf(morning);
    if (!(packUnits > 0) || position > minimumUnits) return 0;
    return Math.max(0, Math.ceil((maximumUnits - position) / packUnits));
  };
}

/**
 * Levels by the usual rule of thumb, from what was needed before the replay begins: as a minimum one and a half times the
 * need of a lead time and the days between reviews, as a maximum a month's need more, and a pack at least. [C]
 */
export function usualLevels(unitsPerDay: number, terms: ReplayTerms): FixedLevels {
  const minimumUnits = Math.ceil(1.5 * unitsPerDay * (terms.leadTimeDays + terms.reviewEveryDays));
  const more = Math.max(terms.packContainers * terms.unitsEach, Math.ceil(30 * unitsPerDay));
  return { minimumUnits, maximumUnits: minimumUnits + more };
}

/** What may still be used and what is coming. */
export function positionOf({ batches, onTheWay }: ReplayMorning): number {
  const here = batches.reduce(
    (sum, { containers, unitsEach, lastDay }) => (lastDay < 0 ? sum : sum + containers * unitsEach),
    0,
  );
  return onTheWay.reduce((sum, { units }) => sum + units, here);
}
