import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { PlanDetailView } from '../../../reorder/plan/plans.views.js';
import { PageLink } from '../../frame/navigation.js';
import { Note } from '../../frame/note.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { request } from '../../service/request.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { writtenInstantHere } from '../../texts/written-dates.js';
import { LatestRun, MakePlanButton } from '../make-plan-part.js';
import styles from '../plans.module.css';
import { allPlanLines, latestOrders, latestPlans } from '../plans.requests.js';
import { RunPage } from '../run-page.js';
import { comparedPlan, isOutdated } from './compared-plan.js';
import { DifferenceEntries } from './difference-entries.js';
import { SumsTable } from './sums-table.js';
import { SupposedPart } from './supposed-part.js';

/** What would be if something were different, beside the plan as it is. */
export function WhatIfResultPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const words = texts.whatIf;
  const area = { studioId: standing.studioId, area: 'ordering' } as const;
  return (
    <RunPage
      standing={standing}
      id={id}
      title={() => words.title}
      below={
        <div className={styles.actions}>
          <PageLink to={pathOf(area, 'what-if')} alone>
            {words.another}
          </PageLink>
          <PageLink to={pathOf(area, 'plan')} alone>
            {texts.plans.toLatest}
          </PageLink>
        </div>
      }
    >
      {(plan) => <ComparedPart standing={standing} plan={plan} />}
    </RunPage>
  );
}

/** Beside the plan that was the latest when it was asked. */
function ComparedPart({ standing, plan }: { standing: StandingView; plan: PlanDetailView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.whatIf;
  const { studioId } = standing;
  const found = useAnswer(['compared with', studioId, plan.id], async () => {
    const [plans, orders] = await Promise.all([latestPlans(studioId), latestOrders(studioId)]);
    const compared = comparedPlan(plans, plan);
    if (compared === undefined) return null;
    const base = await request('GET', '/studios/{studioId}/plans/{planId}', {
      studioId,
      planId: compared.id,
    });
    return {
      base,
      latestId: plans.find(({ state }) => state === 'done')?.id,
      isOld: isOutdated(base, plan, orders),
    };
  });
  if (found.answer === null) return <p>{words.noPlanThen}</p>;
  if (found.answer === undefined) {
    return found.problem ? <ProblemNote problem={found.problem} /> : <p role="status">{texts.app.loading}</p>;
  }
  const { base, isOld, latestId } = found.answer;
  return (
    <>
      <p>
        {words.comparedWith(
          writtenInstantHere(base.askedAt, language),
          writtenInstantHere(plan.askedAt, language),
        )}
      </p>
      {isOld && (
        <>
          <Note kind="plain">
            <p>{words.changedSince}</p>
          </Note>
          <div className={styles.actions}>
            <LatestRun standing={standing} shownId={latestId} onDone={found.reload} />
            <MakePlanButton standing={standing} isFirst={false} />
          </div>
        </>
      )}
      <Comparison studioId={studioId} base={base} plan={plan} />
    </>
  );
}

function Comparison({
  studioId,
  base,
  plan,
}: {
  studioId: string;
  base: PlanDetailView;
  plan: PlanDetailView;
}) {
  const texts = useTexts();
  const words = texts.whatIf;
  const lines = useAnswer(['what if compared', studioId, base.id, plan.id], async () => {
    const [before, after] = await Promise.all([
      allPlanLines(studioId, base.id),
      allPlanLines(studioId, plan.id),
    ]);
    return { before, after };
  });
  const ofOne = plan.whatIf?.itemKey ?? null;
  const label = ofOne === null ? undefined : lines.answer?.after[0]?.item.label;
  return (
    <>
      <Section title={words.supposedTitle}>
        <SupposedPart studioId={studioId} whatIf={plan.whatIf} label={label} />
        {ofOne === null && <SumsTable base={base} plan={plan} />}
      </Section>
      <ProblemNote problem={lines.problem} />
      {!lines.answer && !lines.problem && <p role="status">{texts.app.loading}</p>}
      {lines.answer && (
        <DifferenceEntries
          studioId={studioId}
          planId={plan.id}
          before={lines.answer.before}
          after={lines.answer.after}
          isOfOne={ofOne !== null}
        />
      )}
    </>
  );
}
