import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { Note } from '../frame/note.js';
import { pathOf } from '../frame/places.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { PlanContents } from './plan-contents.js';
import styles from './plans.module.css';
import { RunPage } from './run-page.js';

/** A plan that was made before, as it was. */
export function OnePlanPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const words = texts.plans;
  const area = { studioId: standing.studioId, area: 'ordering' } as const;
  const day = (date: string) => writtenDay(date, texts.language);
  return (
    <RunPage
      standing={standing}
      id={id}
      title={(plan) =>
        plan === undefined
          ? words.title
          : (plan.purpose === 'what if' ? texts.whatIf : words).titleOf(day(plan.plannedOn))
      }
      lead={({ plannedOn, sums }) => (sums === null ? undefined : words.lead(day(plannedOn), sums.days))}
      above={
        <div className={styles.actions}>
          <PageLink to={pathOf(area, 'plan')} alone>
            {words.toLatest}
          </PageLink>
          <PageLink to={pathOf(area, 'plan', 'earlier')} alone>
            {words.toEarlier}
          </PageLink>
        </div>
      }
    >
      {(plan) => (
        <>
          {plan.purpose === 'what if' && (
            <Note kind="plain">
              <p>{words.onlyWhatIf}</p>
            </Note>
          )}
          <PlanContents standing={standing} plan={plan} />
        </>
      )}
    </RunPage>
  );
}
