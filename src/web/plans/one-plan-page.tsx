import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { isProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { PlanContents } from './plan-contents.js';
import { PlanProgress } from './plan-progress.js';
import styles from './plans.module.css';
import { isUnderWay, usePlan } from './plans.requests.js';
import { RunNote } from './run-note.js';

/** A plan that was made before, as it was. */
export function OnePlanPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const words = texts.plans;
  const { studioId, studioName, permissions } = standing;
  const { answer: plan, problem, reload } = usePlan(studioId, id);
  if (isProblem(problem, 'not-found')) return <NoSuchPage />;
  const day = plan ? writtenDay(plan.plannedOn, texts.language) : '';
  return (
    <Page
      above={studioName}
      title={plan ? (plan.purpose === 'what if' ? texts.whatIf : words).titleOf(day) : words.title}
      {...(plan?.sums && { lead: words.lead(day, plan.sums.days) })}
    >
      <ProblemNote problem={problem} />
      {!plan && !problem && <p role="status">{texts.app.loading}</p>}
      <div className={styles.actions}>
        <PageLink to={pathOf({ studioId, area: 'ordering' }, 'plan')} alone>
          {words.toLatest}
        </PageLink>
        <PageLink to={pathOf({ studioId, area: 'ordering' }, 'plan', 'earlier')} alone>
          {words.toEarlier}
        </PageLink>
      </div>
      {plan && (
        <>
          <RunNote run={plan} />
          {plan.purpose === 'what if' && (
            <Note kind="plain">
              <p>{words.onlyWhatIf}</p>
            </Note>
          )}
          {isUnderWay(plan) && (
            <PlanProgress
              studioId={studioId}
              plan={plan}
              mayStop={permissions.includes('plan orders')}
              onStopped={reload}
            />
          )}
          {plan.state === 'done' && <PlanContents standing={standing} plan={plan} />}
        </>
      )}
    </Page>
  );
}
