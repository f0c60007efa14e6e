import { Temporal } from 'temporal-polyfill';
import { Problem } from './problem.js';

const minute = 60_000;

/** A device's clock may run ahead by so much. */
export const maximumLeadMinutes = 5;
/** What a device kept while it had no network may arrive so much later. */
export const maximumLagDays = 31;
/** Opening dates, paper notes and opening stock may lie so far back. */
export const maximumLateRecordDays = 3_660;

/**
 * The instant at which something happened, as the device says it, in canonical form; now when nothing is said.
 * @param given ISO 8601 instant with an offset or Z
 * @param recordedAt the server's instant
 * @throws Problem unusable-time when it is no instant, lies ahead, or further back than allowed
 */
export function occurredAt(given: string | undefined, recordedAt: string, lagDays = maximumLagDays): string {
  if (given === undefined) return recordedAt;
  let instant: Temporal.Instant;
  try {
    instant = Temporal.Instant.from(given);
  } catch {
    throw new Problem(
      400,
      'unusable-time',
      `"${given}" is not an instant. Write it as 2026-03-01T09:30:00Z, with Z or an offset.`,
    );
  }
  const leadMilliseconds = instant.epochMilliseconds - Date.parse(recordedAt);
  if (leadMilliseconds > maximumLeadMinutes * minute) {
    throw new Problem(
      400,
      'unusable-time',
      `${given} lies more than ${maximumLeadMinutes} minutes ahead of the server's clock (${recordedAt}). Set the clock of the device.`,
    );
  }
  if (leadMilliseconds < -lagDays * 24 * 60 * minute) {
    throw new Problem(
      400,
      'unusable-time',
      `${given} lies more than ${lagDays} days back, which is not accepted here. Check the date.`,
    );
  }
  return instant.toString({ fractionalSecondDigits: 3 });
}
