import type { DayFacts, DayLine } from '../../sessions/day-facts.js';
import type { WaitingWrite } from './waiting-write.js';

/** The lines that scans judged on this device have put on trays, which the service does not know yet. */
export function linesJudgedHere(waiting: readonly WaitingWrite[]): DayLine[] {
  return waiting.flatMap((write) => (write.kind === 'scan' ? (write.judgedHere?.line ?? []) : []));
}

/** Ids of the lines that were taken off trays on this device, which the service does not know yet. */
export function linesTakenOffHere(waiting: readonly WaitingWrite[]): ReadonlySet<string> {
  return new Set(waiting.flatMap((write) => (write.kind === 'take off' ? write.lineId : [])));
}

/** The facts of the day with what has happened on this device since. */
export function withWaiting<Facts extends DayFacts>(facts: Facts, waiting: readonly WaitingWrite[]): Facts {
  if (waiting.length === 0) return facts;
  const begun = new Set(waiting.flatMap((write) => (write.kind === 'setup' ? write.sessionId : [])));
  const takenOff = linesTakenOffHere(waiting);
  const openedAt = new Map(
    waiting.flatMap((write) => (write.kind === 'open' ? [[write.containerId, write.occurredAt]] : [])),
  );
  const known = new Set(facts.lines.map(({ id }) => id));
  return {
    ...facts,
    sessions: facts.sessions.map((session) =>
      begun.has(session.id) ? { ...session, state: 'in setup' as const } : session,
    ),
    containers: facts.containers.map((container) => {
      const opened = container.state === 'sealed' && openedAt.get(container.containerId);
      return opened ? { ...container, state: 'opened' as const, openedAt: opened } : container;
    }),
    lines: [...facts.lines, ...linesJudgedHere(waiting).filter(({ id }) => !known.has(id))].filter(
      ({ id }) => !takenOff.has(id),
    ),
  };
}
