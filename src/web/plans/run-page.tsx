import type { ReactNode } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { PlanDetailView } from '../../reorder/plan/plans.views.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { isProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { PlanProgress } from './plan-progress.js';
import { isUnderWay, usePlan } from './plans.requests.js';
import { RunNote } from './run-note.js';

/** The page of one run of a plan, or of a what-if: how it stands, and once it is done what came of it. */
export function RunPage({
  standing: { studioId, studioName, permissions },
  id,
  title,
  lead,
  above,
  below,
  children,
}: {
  standing: StandingView;
  id: string;
  /** Of a run that is not known yet: undefined. */
  title: (run: PlanDetailView | undefined) => string;
  lead?: (run: PlanDetailView) => string | undefined;
  above?: ReactNode;
  below?: ReactNode;
  /** What came of it. */
  children: (run: PlanDetailView) => ReactNode;
}) {
  const texts = useTexts();
  const { answer: run, problem, reload } = usePlan(studioId, id);
  if (isProblem(problem, 'not-found')) return <NoSuchPage />;
  const said = run && lead?.(run);
  return (
    <Page above={studioName} title={title(run)} {...(said !== undefined && { lead: said })}>
      <ProblemNote problem={problem} />
      {!run && !problem && <p role="status">{texts.app.loading}</p>}
      {above}
      {run && <RunNote run={run} />}
      {run && isUnderWay(run) && (
        <PlanProgress
          studioId={studioId}
          plan={run}
          mayStop={permissions.includes('plan orders')}
          onStopped={reload}
        />
      )}
      {run?.state === 'done' && children(run)}
      {below}
    </Page>
  );
}
