import { Button, Group } from '@mantine/core';
import { useEffect, useRef } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { PlanProgress } from './plan-progress.js';
import { isUnderWay, makePlan, useLatestRun } from './plans.requests.js';
import { RunNote } from './run-note.js';

/** How the latest run of a plan stands. */
export function LatestRun({
  standing: { studioId, permissions },
  shownId,
  onDone,
}: {
  standing: StandingView;
  /** The plan that is shown; undefined: there is none. */
  shownId: string | undefined;
  onDone: () => Promise<void>;
}) {
  const { answer: run, problem, reload } = useLatestRun(studioId);
  const isNew = run?.state === 'done' && run.id !== shownId;
  useEffect(() => {
    if (isNew) void onDone();
  }, [isNew, onDone]);
  return (
    <>
      <ProblemNote problem={problem} />
      {run && <RunNote run={run} isOlderShown={shownId !== undefined && shownId !== run.id} />}
      {run && isUnderWay(run) && (
        <PlanProgress
          studioId={studioId}
          plan={run}
          mayStop={permissions.includes('plan orders')}
          onStopped={reload}
        />
      )}
    </>
  );
}

/** Has a plan made, unless one is under way or that is not for the reader. */
export function MakePlanButton({
  standing: { studioId, permissions },
  isFirst,
}: {
  standing: StandingView;
  /** Whether there is no plan yet. */
  isFirst: boolean;
}) {
  const words = useTexts().plans;
  const ids = useRef(new RequestIds()).current;
  const { answer: run, reload } = useLatestRun(studioId);
  const making = useAction(async () => {
    await makePlan(studioId, { id: ids.for({}), purpose: 'plan' });
    ids.renew();
    await reload();
  });
  if (!permissions.includes('plan orders') || (run != null && isUnderWay(run))) return null;
  return (
    <>
      <ProblemNote problem={making.problem} />
      <Group>
        <Button
          {...(!isFirst && { variant: 'default' })}
          loading={making.busy}
          onClick={() => void making.run()}
        >
          {isFirst ? words.make : words.makeAnew}
        </Button>
      </Group>
    </>
  );
}
