import { Temporal } from 'temporal-polyfill';

/** The clocks of two devices may differ by so much. */
export const MOST_CLOCK_DIFFERENCE_MINUTES = 5;

/**
 * What is wrong with the times of a topical anaesthetic, in words for a person; null: nothing.
 *
 * @param appliedAt ISO 8601 instant at which it was put on; null: not told
 * @param removedAt ISO 8601 instant at which it was taken off; null: not told
 */
export function removalFault(appliedAt: string | null, removedAt: string | null): string | null {
  if (appliedAt === null || removedAt === null) return null;
  if (Temporal.Instant.compare(removedAt, appliedAt) >= 0) return null;
  return `removedAt ${removedAt} lies before appliedAt ${appliedAt}. What was put on is taken off later; correct one of them.`;
}

/**
 * What is wrong with the instant at which a session was completed, in words for a person; null: nothing.
 *
 * @param inSetupAt ISO 8601 instant at which its setup began; null: not known
 */
export function completionTimeFault(completedAt: string, inSetupAt: string | null): string | null {
  if (inSetupAt === null) return null;
  const earliest = Temporal.Instant.from(inSetupAt).subtract({ minutes: MOST_CLOCK_DIFFERENCE_MINUTES });
  if (Temporal.Instant.compare(completedAt, earliest) >= 0) return null;
  return `The session cannot have been completed on ${completedAt}: its setup began on ${inSetupAt}, and clocks may differ by ${MOST_CLOCK_DIFFERENCE_MINUTES} minutes. Correct the time, or record the visit late.`;
}
