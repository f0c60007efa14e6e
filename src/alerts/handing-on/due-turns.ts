import { Temporal } from 'temporal-polyfill';

/** By so much the clocks of two processes may differ. */
const clocksDifferMinutes = 2;

/**
 * Which turns are over. A turn that lies ahead was noted by a clock that has been put back since: it is over too, since
 * telling somebody early is better than not at all.
 *
 * @param now ISO 8601 instant
 * @param minutes how long a turn lasts
 * @returns instants in UTC with milliseconds: what began at `until` or before it, or at `from` or after it, is over
 */
export function dueTurns(now: string, minutes: number): { until: string; from: string } {
  const at = Temporal.Instant.from(now);
  const written = (instant: Temporal.Instant) => instant.toString({ fractionalSecondDigits: 3 });
  return {
    until: written(at.subtract({ minutes })),
    from: written(at.add({ minutes: clocksDifferMinutes })),
  };
}
