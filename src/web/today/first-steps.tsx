import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { Note } from '../frame/note.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import styles from './first-steps.module.css';
import { lookAtFirstSteps } from './first-steps.requests.js';
import { type FoundAtStart, firstSteps } from './first-steps-of.js';

/**
 * What a studio has of what its first tray needs; null for whoever cannot bring it there. Where it cannot be asked it is no
 * help either, and settled all the same.
 */
export function useFirstSteps({ studioId, permissions }: StandingView): {
  found: FoundAtStart | null | undefined;
  isSettled: boolean;
} {
  const may = permissions.includes('receive stock') && permissions.includes('work the tray');
  const { answer, problem } = useAnswer(['first steps', studioId], async () =>
    may ? lookAtFirstSteps(studioId) : null,
  );
  return { found: answer, isSettled: answer !== undefined || problem !== undefined };
}

/** The way from an empty studio to its first finished tray; gone once a session was completed. */
export function FirstSteps({
  standing: { studioId, permissions },
  found,
}: {
  standing: StandingView;
  found: FoundAtStart | null | undefined;
}) {
  const texts = useTexts();
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
