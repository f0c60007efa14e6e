import type { TouchUpDays } from '../../sessions/touch-up-window.js';

/** Clients who come back, supposed as from so many visits. */
const VISITS_SUPPOSED = 10;
/** The window's own days count as much as so many touch-ups. */
const TOUCH_UPS_SUPPOSED = 10;
/** Touch-ups come so long after the window has closed; later ones are not waited for. */
export const GRACE_DAYS = 60;
/** A touch-up seen on one day stands for its neighbours too, the nearer the more. */
const SMOOTHED_DAYS = 3;

/** A visit that is followed by a touch-up, or is not. */
export interface VisitToReturnFrom {
  day: number;
  /** Days until the touch-up; null: none was made. */
  returnedAfter: number | null;
}

export interface Returns {
  /** That a client comes back at all, 0 to 1. */
  rate: number;
  /** Of each number of days after the visit: that the touch-up falls on it if there is one; they add up to 1. */
  delays: Float64Array;
  /** Visits the rate, and touch-ups the delays were learnt from: those long enough ago to be over. */
  visits: number;
  touchUps: number;
}

/**
 * How many clients come back, and when: learnt from visits that are long enough ago for all touch-ups to have come, drawn
 * towards what is supposed while they are few.
 *
 * @param supposedRate 0 to 1
 */
export function learnReturns(
  visits: readonly VisitToReturnFrom[],
  { fromDays, toDays }: TouchUpDays,
  supposedRate: number,
): Returns {
  const last = toDays + GRACE_DAYS;
  const over = visits.filter(({ day }) => -day > last);
  const after = over.flatMap(({ returnedAfter }) =>
    returnedAfter !== null && returnedAfter >= 0 && returnedAfter <= last ? [returnedAfter] : [],
  );
  const rate = (after.length + VISITS_SUPPOSED * supposedRate) / (over.length + VISITS_SUPPOSED);
  const delays = new Float64Array(last + 1);
  // A triangle over the window: most come in the middle of it.
  const middle = (fromDays + toDays) / 2;
  const half = (toDays - fromDays) / 2 + 1;
  const triangle = (delay: number) => Math.max(0, 1 - Math.abs(delay - middle) / half);
  spread(delays, fromDays, toDays, triangle, TOUCH_UPS_SUPPOSED);
  for (const delay of after) {
    const near = (other: number) => 1 - Math.abs(other - delay) / (SMOOTHED_DAYS + 1);
    spread(delays, Math.max(0, delay - SMOOTHED_DAYS), Math.min(last, delay + SMOOTHED_DAYS), near, 1);
  }
  const total = TOUCH_UPS_SUPPOSED + after.length;
  for (let delay = 0; delay <= last; delay++) delays[delay] = (delays[delay] ?? 0) / total;
  return { rate, delays, visits: over.length, touchUps: after.length };
}

function spread(
  delays: Float64Array,
  from: number,
  to: number,
  shape: (delay: number) => number,
  weight: number,
): void {
  let sum = 0;
  for (let delay = from; delay <= to; delay++) sum += shape(delay);
  for (let delay = from; delay <= to; delay++) {
    delays[delay] = (delays[delay] ?? 0) + (weight * shape(delay)) / sum;
  }
}

export interface ReturnStillExpected {
  chance: number;
  /** From the day of the plan on; they add up to 1. */
  dayWeights: number[];
}

/**
 * The touch-up of a visit after which none came yet.
 *
 * @param age days since the visit, on the day of the plan; at least 0
 * @returns null when none comes any more
 */
export function returnStillExpected({ rate, delays }: Returns, age: number): ReturnStillExpected | null {
  const left = delays.slice(age);
  const share = left.reduce((sum, weight) => sum + weight, 0);
  if (!(share > 1e-9)) return null;
  return {
    chance: (rate * share) / (1 - rate + rate * share),
    dayWeights: Array.from(left, (weight) => weight / share),
  };
}
