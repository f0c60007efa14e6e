import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { DayFactsView } from '../../sessions/day-facts.views.js';
import type { TrayView } from '../../sessions/tray.views.js';
import { linesJudgedHere, linesTakenOffHere, withWaiting } from '../offline/known-day.js';
import { outgoing, useOutgoing } from '../offline/outgoing.js';
import { trayOnDevice } from '../offline/tray-on-device.js';
import { factsKey, useDayFacts } from '../offline/use-day-facts.js';
import type { WaitingWrite } from '../offline/waiting-write.js';
import { useConnection } from '../service/connection.js';
import { isProblem, ServiceProblem } from '../service/problem.js';
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
  facts: DayFactsView | undefined;
  reload(): Promise<void>;
} {
  const { studioId } = standing;
  const asked = useAnswer(['tray', studioId, sessionId], () => showTray(studioId, sessionId));
  const facts = useDayFacts(standing);
  const { waiting } = useOutgoing();
  const { isReached } = useConnection();
  const here = facts && trayOnDevice(withWaiting(facts, waiting), sessionId, new Date().toISOString());
  const answers = useQueryClient();
  const { reload } = asked;
  useEffect(
    () =>
      outgoing.onSettled((write, answer) => {
        const isOurs = write.sessionId === sessionId && changesTheTray.has(write.kind);
        if (isOurs && !(answer instanceof ServiceProblem)) {
          void reload();
          void answers.invalidateQueries({ queryKey: factsKey(studioId) });
        }
        return false;
      }),
    [answers, reload, sessionId, studioId],
  );
  // Until the service has told it, also where it is just reached again: the tray stays in sight and can be worked at.
  const known = !isReached || here?.state === 'in setup' ? here : undefined;
  const isKnown = asked.answer !== undefined || known !== undefined;
  return {
    answer: asked.answer ? joined(asked.answer, here, waiting) : known,
    problem: isKnown && isProblem(asked.problem, 'unreachable') ? undefined : asked.problem,
    facts,
    reload: asked.reload,
  };
}

/** Beside scans, of which each is told by itself. */
const changesTheTray: ReadonlySet<WaitingWrite['kind']> = new Set(['setup', 'take off', 'open']);

function joined(told: TrayView, here: TrayView | undefined, waiting: readonly WaitingWrite[]): TrayView {
  const newIds = new Set(linesJudgedHere(waiting).map(({ id }) => id));
  const takenOff = linesTakenOffHere(waiting);
  const known = new Set(told.lines.map(({ id }) => id));
  const added = here?.lines.filter(({ id }) => newIds.has(id) && !known.has(id)) ?? [];
  const left = told.lines.filter(({ id }) => !takenOff.has(id));
  const isBegun = told.state === 'planned' && here?.state === 'in setup';
  const isChanged = added.length > 0 || left.length < told.lines.length;
  return {
    ...told,
    state: isBegun ? 'in setup' : told.state,
    lines: [...left, ...added],
    lacking: here && isChanged ? here.lacking : told.lacking,
  };
}
