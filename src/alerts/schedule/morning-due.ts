import { Temporal } from 'temporal-polyfill';
import { nextMorning } from './next-morning.js';

/** What was done later than this from now was done by a clock that was wrong, and is not believed. */
const believedHours = 24;

/**
 * Whether it is time for what is done once on each of a studio's mornings, by when it was done last. A clock that is set
 * back by a day or less lets nothing be done twice: what was done stays done until the next morning after it. One that
 * was ahead by more than a day, and was set right, does not let mornings be missed until it is reached again.
 *
 * @param doneAt ISO 8601 instant; null: never
 * @param now the same
 * @param morning local time, `HH:MM`
 * @param timeZone IANA time zone of the studio
 */
export function isMorningDue(doneAt: string | null, now: string, morning: string, timeZone: string): boolean {
  if (doneAt === null) return true;
  const done = Temporal.Instant.from(doneAt);
  const present = Temporal.Instant.from(now);
  if (Temporal.Instant.compare(done, present) > 0) {
    return Temporal.Instant.compare(done, present.add({ hours: believedHours })) > 0;
  }
  return Temporal.Instant.compare(nextMorning(doneAt, morning, timeZone), present) <= 0;
}
