import { Button } from '@mantine/core';
import { useRef } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { PlanProgress } from '../plan-progress.js';
import styles from '../plans.module.css';
import { isUnderWay } from '../plans.requests.js';
import { RunNote } from '../run-note.js';
import { makeReplay, useReplays } from './replay.requests.js';
import { ReplayResult } from './replay-result.js';

/** What would have come of it had plans been followed, beside what was really ordered and beside fixed levels. */
export function ReplayPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.replay;
  const { studioId, studioName, permissions } = standing;
  const ids = useRef(new RequestIds()).current;
  const { answer, problem, reload } = useReplays(studioId);
  const making = useAction(async () => {
    await makeReplay(studioId, { id: ids.for({}) });
    ids.renew();
    await reload();
  });
  const run = answer?.run ?? null;
  const isRunning = run !== null && isUnderWay(run);
  const mayPlan = permissions.includes('plan orders');
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <ProblemNote problem={problem ?? making.problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {run && <RunNote run={{ ...run, sameAsId: null }} isOlderShown={answer?.done != null} />}
      {answer && (
        <div className={styles.actions}>
          {isRunning && (
            <PlanProgress
              studioId={studioId}
              plan={{ ...run, items: run.steps, itemsDone: run.stepsDone }}
              mayStop={mayPlan}
              onStopped={reload}
              words={words.progress}
            />
          )}
          {mayPlan && !isRunning && (
            <Button
              {...(answer.result && { variant: 'default' })}
              loading={making.busy}
              onClick={() => void making.run()}
            >
              {answer.result ? words.makeAnew : words.make}
            </Button>
          )}
        </div>
      )}
      {answer && !answer.result && !isRunning && (
        <Section title={words.none} hint={words.noneHint}>
          {null}
        </Section>
      )}
      {answer?.result?.tooShort && (
        <Note kind="plain">
          <p>{words.tooShort(answer.result.tooShort.recordedDays, answer.result.tooShort.neededDays)}</p>
        </Note>
      )}
      {answer?.result && !answer.result.tooShort && <ReplayResult result={answer.result} />}
    </Page>
  );
}
