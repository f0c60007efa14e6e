import { useParams } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { PlanDetailView, PlanLineView } from '../../../reorder/plan/plans.views.js';
import { PageLink } from '../../frame/navigation.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { isProblem } from '../../service/problem.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { AssumptionsSection } from '../assumptions-section.js';
import styles from '../plans.module.css';
import { usePlan, usePlanLine } from '../plans.requests.js';
import { CostSection } from './cost-section.js';
import { DecisionPart } from './decision-part.js';
import { NeedSection } from './need-section.js';
import { OutlookSection } from './outlook-section.js';
import { PlanningSection } from './planning-section.js';
import { RangeSection } from './range-section.js';
import { StockSection } from './stock-section.js';
import { SupplySection } from './supply-section.js';

/** What a plan says of one item, with all its reasons. */
export function LinePage({ standing, id }: { standing: StandingView; id: string }) {
  const { line = '' } = useParams();
  const lineNumber = Number(line);
  if (!Number.isInteger(lineNumber) || lineNumber < 1) return <NoSuchPage />;
  return <ShownLine key={lineNumber} standing={standing} planId={id} lineNumber={lineNumber} />;
}

function ShownLine({
  standing,
  planId,
  lineNumber,
}: {
  standing: StandingView;
  planId: string;
  lineNumber: number;
}) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const { answer: line, problem } = usePlanLine(studioId, planId, lineNumber);
  const { answer: plan } = usePlan(studioId, planId);
  if (isProblem(problem, 'not-found')) return <NoSuchPage />;
  return (
    <Page
      above={studioName}
      title={line?.item.label ?? texts.plans.lineNumber(lineNumber)}
      {...(plan && {
        lead: (isWhatIf(plan) ? texts.whatIf : texts.plans).titleOf(
          writtenDay(plan.plannedOn, texts.language),
        ),
      })}
    >
      <ProblemNote problem={problem} />
      {!line && !problem && <p role="status">{texts.app.loading}</p>}
      {line && <Sections standing={standing} planId={planId} line={line} plan={plan} />}
    </Page>
  );
}

function Sections({
  standing,
  planId,
  line,
  plan,
}: {
  standing: StandingView;
  planId: string;
  line: PlanLineView;
  plan: PlanDetailView | undefined;
}) {
  const texts = useTexts();
  const words = texts.planLine;
  const { studioId } = standing;
  const area = { studioId, area: 'ordering' } as const;
  const mayPlan = plan !== undefined && !isWhatIf(plan) && standing.permissions.includes('plan orders');
  return (
    <>
      {isWhatIf(plan) && (
        <Note kind="plain">
          <p>{texts.plans.onlyWhatIf}</p>
        </Note>
      )}
      <div className={styles.actions}>
        <PageLink to={pathOf(area, isWhatIf(plan) ? 'what-if' : 'plan', planId)} alone>
          {isWhatIf(plan) ? texts.whatIf.toAnswer : words.toPlan}
        </PageLink>
        {mayPlan && (
          <PageLink to={`${pathOf(area, 'what-if')}?plan=${planId}&line=${line.lineNumber}`} alone>
            {words.whatIf}
          </PageLink>
        )}
      </div>
      <DecisionPart line={line} />
      <OutlookSection line={line} plannedOn={plan?.plannedOn} />
      <RangeSection line={line} />
      <NeedSection line={line} />
      <StockSection studioId={studioId} line={line} />
      <SupplySection standing={standing} line={line} />
      <CostSection line={line} />
      {mayPlan && <PlanningSection standing={standing} item={line.item} />}
      <AssumptionsSection
        standing={standing}
        assumptions={line.assumptions}
        currency={line.currency}
        unit={line.item.unit}
        title={texts.plans.assumptions}
        hint={texts.plans.assumptionsHint}
      />
    </>
  );
}

function isWhatIf(plan: PlanDetailView | undefined): boolean {
  return plan?.purpose === 'what if';
}
