import type { ReactNode } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type {
  BasketView,
  PlanDetailView,
  PlanLineSummaryView,
  PlanSumsView,
} from '../../reorder/plan/plans.views.js';
import { type LineDecision, lineDecisions } from '../../reorder/plan/vocabulary.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useAnswer } from '../service/use-answer.js';
import { Figures } from '../stock/figures.js';
import { useTexts } from '../texts/texts.js';
import { AssumptionsSection } from './assumptions-section.js';
import { BasketSection } from './basket-section.js';
import { DecisionSection } from './decision-section.js';
import { writtenMoney } from './figures/written-money.js';
import { LinesSection } from './lines-section.js';
import styles from './plans.module.css';
import { allPlanLines } from './plans.requests.js';

/** A plan that is done: what is ordered today of whom, and what becomes of the rest. */
export function PlanContents({
  standing,
  plan,
  actions,
}: {
  standing: StandingView;
  plan: PlanDetailView;
  /** What can be done with the whole of it; below what is to be ordered today. */
  actions?: ReactNode;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const { studioId } = standing;
  const { sums, baskets, plannedOn } = plan;
  const ordered = useAnswer(['plan lines', studioId, plan.id, 'ordered'], () =>
    linesOfOrders(studioId, plan.id, sums),
  );
  if (!sums) return null;
  if (sums.lines === 0) {
    return (
      <Section title={words.nothingPlanned} hint={words.nothingPlannedHint}>
        {actions}
      </Section>
    );
  }
  const lines = new Map(
    (ordered.answer ?? []).map((line): [number, PlanLineSummaryView] => [line.lineNumber, line]),
  );
  const today = baskets.filter(({ on }) => on <= plannedOn);
  const laterOn = baskets.filter(({ on }) => on > plannedOn);
  const inBaskets = new Set(baskets.flatMap((basket) => basket.lines.map(({ lineNumber }) => lineNumber)));
  const countOf = (decision: PlanLineSummaryView['decision']) =>
    sums.decisions.find((one) => one.decision === decision)?.lines ?? 0;
  const money = (minor: number) => writtenMoney(minor, sums.currency, texts.language);
  const section = (basket: BasketView) => (
    <BasketSection
      key={`${basket.supplierId} ${basket.on}`}
      standing={standing}
      plan={plan}
      basket={basket}
      lines={lines}
    />
  );
  return (
    <>
      {today.length === 0 && countOf('order now') === 0 && (
        <Section title={words.today}>
          <p>{words.nothingToday}</p>
        </Section>
      )}
      {today.map(section)}
      <ProblemNote problem={ordered.problem} />
      <Section title={words.sums}>
        <Figures
          figures={[
            { name: words.sumsNames.today, value: money(sums.orderTodayMinor), isMain: true },
            { name: words.sumsNames.withDelivery, value: money(sums.orderTodayWithDeliveryMinor) },
            { name: words.sumsNames.waste, value: money(sums.expectedWasteMinor) },
            ...(sums.heldContainers > 0
              ? [{ name: words.sumsNames.held, value: words.containers(sums.heldContainers) }]
              : []),
          ]}
        />
        {actions}
        <p className={styles.caution}>{words.caution}</p>
        {plan.purpose === 'plan' && standing.permissions.includes('set levels') && (
          <PageLink to={pathOf({ studioId, area: 'ordering' }, 'plan', plan.id, 'levels')} alone>
            {words.toLevels}
          </PageLink>
        )}
      </Section>
      {laterOn.map(section)}
      {lineDecisions.map((decision) =>
        isOfOrders(decision) ? (
          <LinesSection
            key={decision}
            standing={standing}
            planId={plan.id}
            decision={decision}
            lines={[...lines.values()].filter(
              (line) => line.decision === decision && !inBaskets.has(line.lineNumber),
            )}
          />
        ) : (
          countOf(decision) > 0 && (
            <DecisionSection key={decision} standing={standing} planId={plan.id} decision={decision} />
          )
        ),
      )}
      <AssumptionsSection
        standing={standing}
        assumptions={plan.assumptions}
        currency={sums.currency}
        title={words.assumptions}
        hint={words.assumptionsHint}
      />
    </>
  );
}

/** Lines that may stand in a basket. */
const decisionsOfOrders = ['order now', 'order later', 'order for the appointment'] as const;

function isOfOrders(decision: LineDecision): decision is (typeof decisionsOfOrders)[number] {
  return decisionsOfOrders.some((one) => one === decision);
}

async function linesOfOrders(
  studioId: string,
  planId: string,
  sums: PlanSumsView | null,
): Promise<PlanLineSummaryView[]> {
  const lines = await Promise.all(
    decisionsOfOrders
      .filter((decision) => sums?.decisions.some((one) => one.decision === decision && one.lines > 0))
      .map((decision) => allPlanLines(studioId, planId, decision)),
  );
  return lines.flat();
}
