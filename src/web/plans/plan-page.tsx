import { localDay } from '../../identity/local-day.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useStudio } from '../service/studio-answers.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { LatestRun, MakePlanButton } from './make-plan-part.js';
import { PlanContents } from './plan-contents.js';
import styles from './plans.module.css';
import { useLatestPlan } from './plans.requests.js';

/** What the latest plan says is to be ordered. */
export function PlanPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.plans;
  const { studioId, studioName } = standing;
  const { answer: plan, problem, reload } = useLatestPlan(studioId);
  const timeZone = useStudio(studioId).answer?.timeZone;
  const today = timeZone === undefined ? undefined : localDay(new Date().toISOString(), timeZone);
  const actions = plan !== undefined && (
    <div className={styles.actions}>
      <MakePlanButton standing={standing} isFirst={plan === null} />
      <PageLink to={pathOf({ studioId, area: 'ordering' }, 'plan', 'earlier')} alone>
        {words.toEarlier}
      </PageLink>
    </div>
  );
  const day = plan ? writtenDay(plan.plannedOn, texts.language) : '';
  return (
    <Page
      above={studioName}
      title={words.title}
      {...(plan?.sums && { lead: words.lead(day, plan.sums.days) })}
    >
      <ProblemNote problem={problem} />
      {plan === undefined && !problem && <p role="status">{texts.app.loading}</p>}
      {plan && today !== undefined && plan.plannedOn < today && (
        <Note kind="plain">
          <p>{words.older(day)}</p>
        </Note>
      )}
      {plan === null && <NoPlanYet studioId={studioId} />}
      {plan !== undefined && <LatestRun standing={standing} shownId={plan?.id} onDone={reload} />}
      {plan ? <PlanContents standing={standing} plan={plan} actions={actions} /> : actions}
    </Page>
  );
}

function NoPlanYet({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const words = texts.plans;
  return (
    <Section title={words.none} hint={words.noneHint}>
      <ol className={styles.steps}>
        {words.noneSteps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <PageLink to={pathOf({ studioId, area: 'ordering' }, 'suppliers')} alone>
        {words.toSuppliers}
      </PageLink>
    </Section>
  );
}
