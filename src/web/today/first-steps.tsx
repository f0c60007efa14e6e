import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { Note } from '../frame/note.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import styles from './first-steps.module.css';
import { lookAtFirstSteps } from './first-steps.requests.js';
import { firstSteps } from './first-steps-of.js';

/** The way from an empty studio to its first finished tray; gone once a session was completed. */
export function FirstSteps({ standing }: { standing: StandingView }) {
  const may =
    standing.permissions.includes('receive stock') && standing.permissions.includes('work the tray');
  return may ? <Steps standing={standing} /> : null;
}

function Steps({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, permissions } = standing;
  const { answer: found } = useAnswer(['first steps', studioId], () => lookAtFirstSteps(studioId));
  // Where it cannot be asked it is no help either.
  if (!found || found.hasCompleted) return null;
  const steps = firstSteps(found, studioId, permissions);
  const next = steps.find(({ isDone }) => !isDone);
  return (
    <Note kind="plain">
      <h2 className={styles.title}>{texts.firstSteps.title}</h2>
      <p>{texts.firstSteps.lead}</p>
      <ol className={styles.steps}>
        {steps.map((step) => (
          <li
            key={step.name}
            data-done={step.isDone || undefined}
            aria-current={step === next ? 'step' : undefined}
          >
            <span className={styles.name}>
              {step.isDone ? (
                <span>{texts.firstSteps.steps[step.name]}</span>
              ) : step.path === undefined ? (
                <span>{texts.firstSteps.steps[step.name]}</span>
              ) : (
                <PageLink to={step.path} alone>
                  {texts.firstSteps.steps[step.name]}
                </PageLink>
              )}
              {step.isDone && <strong> {texts.firstSteps.done}</strong>}
            </span>
            {!step.isDone && <p className={styles.hint}>{texts.firstSteps.hints[step.name]}</p>}
          </li>
        ))}
      </ol>
    </Note>
  );
}
