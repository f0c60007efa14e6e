import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { DayFacts } from '../../sessions/day-facts.js';
import type { TrayView } from '../../sessions/tray.views.js';
import { linesJudgedHere, withWaiting } from '../offline/known-day.js';
import { useOutgoing } from '../offline/outgoing.js';
import { trayOnDevice } from '../offline/tray-on-device.js';
import { useDayFacts } from '../offline/use-day-facts.js';
import { useConnection } from '../service/connection.js';
import type { ServiceProblem } from '../service/problem.js';
import { useAnswer } from '../service/use-answer.js';
import { showTray } from './tray.requests.js';

/**
 * A tray as it lies: as the service tells it, with what was judged on this device since; and as this device knows it when
 * the service is not reached and has told nothing.
 */
export function useTray(
  standing: StandingView,
  sessionId: string,
): {
  answer: TrayView | undefined;
  problem: ServiceProblem | undefined;
  facts: DayFacts | undefined;
  reload(): Promise<void>;
} {
  const { studioId } = standing;
  const asked = useAnswer(['tray', studioId, sessionId], () => showTray(studioId, sessionId));
  const facts = useDayFacts(standing);
  const { waiting } = useOutgoing();
  const { isReached } = useConnection();
  const here = facts && trayOnDevice(withWaiting(facts, waiting), sessionId, new Date().toISOString());
  const isKnown = asked.answer !== undefined || (here !== undefined && !isReached);
  return {
    answer: asked.answer ? joined(asked.answer, here, waitingIds(waiting)) : isReached ? undefined : here,
    problem: isKnown && !isReached ? undefined : asked.problem,
    facts,
    reload: asked.reload,
  };
}

const waitingIds = (waiting: Parameters<typeof linesJudgedHere>[0]) =>
  new Set(linesJudgedHere(waiting).map(({ id }) => id));

function joined(told: TrayView, here: TrayView | undefined, newIds: ReadonlySet<string>): TrayView {
  const known = new Set(told.lines.map(({ id }) => id));
  const added = here?.lines.filter(({ id }) => newIds.has(id) && !known.has(id)) ?? [];
  if (!here || added.length === 0) return told;
  return { ...told, lines: [...told.lines, ...added], lacking: here.lacking };
}
