import type { AlertView } from '../../alerts/alerts.views.js';
import type { SessionState } from '../../sessions/vocabulary.js';

/** For whom and when something of the day is to be done, as one person sees it. */
export const parts = ['now', 'later', 'given', 'over'] as const;
export type DayPart = (typeof parts)[number];

/** Whose tray begins within so long is laid now. */
const soonMilliseconds = 60 * 60_000;

/**
 * Sorts a session into the day of one person.
 * - now: its tray is laid, or it begins within an hour or should have begun
 * - later: it begins later, or no time was said
 * - given: it is another artist's
 * - over: nothing is to be done for it any more
 *
 * @param now ISO 8601 instant
 */
export function partOfSession(
  session: { state: SessionState; plannedStart: string | null; artistId: string },
  personId: string,
  now: string,
): DayPart {
  const { state, plannedStart, artistId } = session;
  if (state !== 'planned' && state !== 'in setup') return 'over';
  if (artistId !== personId) return 'given';
  if (state === 'in setup') return 'now';
  if (plannedStart === null) return 'later';
  return Date.parse(plannedStart) <= Date.parse(now) + soonMilliseconds ? 'now' : 'later';
}

/** As for sessions: who has taken an alert on or was given it has it; a notice that nobody has can wait. */
export function partOfAlert(
  { severity, acknowledgedBy, givenTo }: Pick<AlertView, 'severity' | 'acknowledgedBy' | 'givenTo'>,
  personId: string,
): DayPart {
  if (acknowledgedBy === personId || givenTo === personId) return 'now';
  if (acknowledgedBy !== null || givenTo !== null) return 'given';
  return severity === 'notice' ? 'later' : 'now';
}

const severities: readonly AlertView['severity'][] = ['urgent', 'warning', 'notice'];

/** The worst first, and of equal ones what opened first. */
export function worstFirst(one: AlertView, other: AlertView): number {
  const bySeverity = severities.indexOf(one.severity) - severities.indexOf(other.severity);
  return bySeverity !== 0 ? bySeverity : one.openedAt < other.openedAt ? -1 : 1;
}
