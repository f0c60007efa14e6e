import type { DayFactsView } from '../../sessions/day-facts.views.js';
import { withWaiting } from '../offline/known-day.js';
import { useOutgoing } from '../offline/outgoing.js';
import { useConnection } from '../service/connection.js';
import type { ServiceProblem } from '../service/problem.js';
import { useAnswer } from '../service/use-answer.js';
import type { DaySession } from './session-entry.js';
import { listSessionsInSetup, listSessionsOfDay } from './sessions.requests.js';

/** The sessions of the day, and trays of other days that are still laid; without network what this device knows of them. */
export function useSessionsOfDay(
  studioId: string,
  day: string,
  facts: DayFactsView | undefined,
): { sessions: readonly DaySession[] | undefined; problem: ServiceProblem | undefined } {
  const ofDay = useAnswer(['sessions of day', studioId, day], () => listSessionsOfDay(studioId, day));
  const inSetup = useAnswer(['sessions in setup', studioId], () => listSessionsInSetup(studioId));
  const { isReached } = useConnection();
  const { waiting } = useOutgoing();
  if (!isReached && facts) return { sessions: withWaiting(facts, waiting).sessions, problem: undefined };
  const known = new Set(ofDay.answer?.map(({ id }) => id));
  const others = inSetup.answer?.filter(({ id }) => !known.has(id)) ?? [];
  return {
    sessions: ofDay.answer && [...others, ...ofDay.answer],
    problem: ofDay.problem ?? inSetup.problem,
  };
}
