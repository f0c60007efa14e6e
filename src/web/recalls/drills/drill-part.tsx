import { Button } from '@mantine/core';
import { useRef } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { DrillStep } from '../../../recalls/drills/drill-steps.js';
import type { RecallView } from '../../../recalls/recalls.views.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { Sign } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import type { RecallPart } from '../recall-parts.js';
import { useRecallSteps } from '../recalls.requests.js';
import { Clock } from './clock.js';
import styles from './drills.module.css';
import { type NotedStep, noteStep } from './drills.requests.js';
import { Score } from './score.js';

/** Where a step is done. */
const partOfStep: Record<DrillStep, RecallPart> = {
  'notice read': 'overview',
  'scope settled': 'overview',
  'stock listed': 'containers',
  'stock found': 'containers',
  'exposures listed': 'exposures',
  'messages prepared': 'telling',
  'balance drawn': 'balance',
  closed: 'closing',
};

/** The way through a drill: its clock, its steps with what each took, and how it stands. */
export function DrillPart({
  standing: { studioId, permissions },
  recall,
}: {
  standing: StandingView;
  recall: RecallView;
}) {
  const texts = useTexts();
  const words = texts.drills;
  const { answer, problem, reload } = useRecallSteps(studioId, recall.id);
  const ids = useRef(new RequestIds()).current;
  const noting = useAction(async (step: NotedStep) => {
    await noteStep(studioId, recall.id, { id: ids.for({ step }), step });
    ids.renew();
    await reload();
  });
  const next = answer?.steps.find(({ doneAt }) => doneAt === null)?.step;
  const minutes = new Intl.NumberFormat(texts.language, { maximumFractionDigits: 1 });
  const area = { studioId, area: 'recalls' } as const;
  return (
    <Section title={words.steps} hint={words.stepsHint}>
      <ProblemNote problem={problem ?? noting.problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <>
          <Clock from={answer.startedAt} until={answer.endedAt} />
          <ol className={styles.steps}>
            {answer.steps.map(({ step, doneAt, minutes: took }) => {
              const part = partOfStep[step];
              return (
                <li key={step} className={styles.step}>
                  <span className={styles.name}>{words.stepNames[step]}</span>
                  {doneAt !== null && <Sign standing="good">{words.took(minutes.format(took ?? 0))}</Sign>}
                  {doneAt === null && recall.state === 'open' && (
                    <span className={styles.actions}>
                      {part !== 'overview' && (
                        <PageLink
                          alone
                          to={pathOf(area, recall.id, part)}
                          aria-label={words.goToOf(words.stepNames[step])}
                        >
                          {words.goTo}
                        </PageLink>
                      )}
                      {step !== 'closed' && permissions.includes('find held stock') && (
                        <Button
                          variant={step === next ? 'filled' : 'default'}
                          aria-label={words.doneOf(words.stepNames[step])}
                          loading={noting.busy}
                          onClick={() => void noting.run(step)}
                        >
                          {words.done}
                        </Button>
                      )}
                    </span>
                  )}
                </li>
              );
            })}
          </ol>
          {answer.score && <Score score={answer.score} />}
        </>
      )}
    </Section>
  );
}
