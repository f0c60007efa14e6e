import type { DayFacts, DayLine } from '../../sessions/day-facts.js';
import type { WaitingWrite } from './waiting-write.js';

/** The lines that scans judged on this device have put on trays, which the service does not know yet. */
export function linesJudgedHere(waiting: readonly WaitingWrite[]): DayLine[] {
  return waiting.flatMap((write) => (write.kind === 'scan' ? (write.judgedHere?.line ?? []) : []));
}

/** The facts of the day with what has happened on this device since. */
export function withWaiting<Facts extends DayFacts>(facts: Facts, waiting: readonly WaitingWrite[]): Facts {
  const begun = new Set(waiting.flatMap((write) => (write.kind === 'setup' ? write.sessionId : [])));
  const known = new Set(facts.lines.map(({ id }) => id));
  return {
    ...facts,
    sessions: facts.sessions.map((session) =>
      begun.has(session.id) ? { ...session, state: 'in setup' as const } : session,
    ),
    lines: [...facts.lines, ...linesJudgedHere(waiting).filter(({ id }) => !known.has(id))],
  };
}
