import { Temporal } from 'temporal-polyfill';

/** A session may be planned so far ahead; a refresh is due after one to three years [C]. */
export const MOST_PLAN_AHEAD_DAYS = 1_500;
/** A plan made while there was no network may arrive so much later. */
export const MOST_PLAN_LAG_DAYS = 31;

/** The instant in canonical form, UTC with milliseconds, or why it cannot be used, in words for a person. */
export type PlanTime = { instant: string } | { error: string };

/**
 * When the client booked: any instant that is not in the future.
 *
 * @param given as it came in
 * @param recordedAt instant of the server
 */
export function bookedTime(given: string, recordedAt: string): PlanTime {
  const booked = instantOf('bookedAt', given);
  if ('error' in booked) return booked;
  if (Temporal.Instant.compare(booked.read, recordedAt) > 0) {
    return { error: `bookedAt ${given} lies in the future. Check the date.` };
  }
  return canonical(booked.read);
}

/** When the session is to start: at most 31 days back, for plans made without network, and 1500 ahead. */
export function plannedTime(given: string, recordedAt: string): PlanTime {
  const planned = instantOf('plannedStart', given);
  if ('error' in planned) return planned;
  const recorded = Temporal.Instant.from(recordedAt);
  if (Temporal.Instant.compare(planned.read, recorded.subtract({ hours: 24 * MOST_PLAN_LAG_DAYS })) < 0) {
    return {
      error: `plannedStart ${given} lies more than ${MOST_PLAN_LAG_DAYS} days back. What took place already goes in as a late record.`,
    };
  }
  if (Temporal.Instant.compare(planned.read, recorded.add({ hours: 24 * MOST_PLAN_AHEAD_DAYS })) > 0) {
    return {
      error: `plannedStart ${given} lies more than ${MOST_PLAN_AHEAD_DAYS} days ahead. Check the year.`,
    };
  }
  return canonical(planned.read);
}

function instantOf(field: string, given: string): { read: Temporal.Instant } | { error: string } {
  try {
    return { read: Temporal.Instant.from(given) };
  } catch {
    return {
      error: `${field} "${given}" is not an instant. Write it as 2026-03-01T09:30:00Z, with Z or an offset.`,
    };
  }
}

function canonical(instant: Temporal.Instant): PlanTime {
  return { instant: instant.toString({ fractionalSecondDigits: 3 }) };
}
