import { Button } from '@mantine/core';
import { useRef } from 'react';
import type { PlanView } from '../../reorder/plan/plans.views.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import styles from './plan-progress.module.css';
import { cancelPlan } from './plans.requests.js';

/** How far a plan is that is being worked out, and the way to stop it. */
export function PlanProgress({
  studioId,
  plan: { id, state, items, itemsDone },
  mayStop,
  onStopped,
  words: own,
}: {
  studioId: string;
  plan: Pick<PlanView, 'id' | 'state' | 'items' | 'itemsDone'>;
  mayStop: boolean;
  onStopped: () => Promise<void>;
  /** What is being worked out; left out: a plan. */
  words?: { running: string; waiting: string; done: (done: number, all: number) => string };
}) {
  const texts = useTexts();
  const words = texts.plans;
  const { running, waiting, done } = own ?? { ...words, done: words.progress };
  const ids = useRef(new RequestIds()).current;
  const stopping = useAction(async () => {
    await cancelPlan(studioId, id, { id: ids.for({ stop: id }) });
    await onStopped();
  });
  const known = items !== null && items > 0;
  return (
    <div className={styles.progress}>
      <p role="status">{state === 'waiting' ? waiting : running}</p>
      <progress
        className={styles.bar}
        aria-label={running}
        {...(known && { max: items, value: itemsDone ?? 0 })}
      />
      {known && <p className={styles.count}>{done(itemsDone ?? 0, items)}</p>}
      <ProblemNote problem={stopping.problem} />
      {mayStop && (
        <Button variant="default" loading={stopping.busy} onClick={() => void stopping.run()}>
          {words.stop}
        </Button>
      )}
    </div>
  );
}
