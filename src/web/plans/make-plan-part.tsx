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

/** Has a plan made, and tells how the latest run of one stands. */
export function MakePlanPart({
  standing: { studioId, permissions },
  shownId,
  onDone,
}: {
  standing: StandingView;
  /** The plan that is shown; undefined: there is none. */
  shownId: string | undefined;
  onDone: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const ids = useRef(new RequestIds()).current;
  const { answer: run, problem, reload } = useLatestRun(studioId);
  const making = useAction(async () => {
    await makePlan(studioId, { id: ids.for({}), purpose: 'plan' });
    ids.renew();
    await reload();
  });
  const isNew = run?.state === 'done' && run.id !== shownId;
  useEffect(() => {
    if (isNew) void onDone();
  }, [isNew, onDone]);
  const isRunning = run != null && isUnderWay(run);
  const mayPlan = permissions.includes('plan orders');
  return (
    <>
      <ProblemNote problem={problem ?? making.problem} />
      {run && <RunNote run={run} isOlderShown={shownId !== undefined && shownId !== run.id} />}
      {isRunning && <PlanProgress studioId={studioId} plan={run} mayStop={mayPlan} onStopped={reload} />}
      {mayPlan && !isRunning && (
        <Group>
          <Button
            {...(shownId !== undefined && { variant: 'default' })}
            loading={making.busy}
            onClick={() => void making.run()}
          >
            {shownId === undefined ? words.make : words.makeAnew}
          </Button>
        </Group>
      )}
    </>
  );
}
