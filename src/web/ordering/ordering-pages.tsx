import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { PlanPage } from '../plans/plan-page.js';

const pages: readonly AreaPage[] = [
  { path: 'plan', name: (texts) => texts.plans.pages.plan, needs: 'read plans', Open: PlanPage },
];

/** What to order, how much and why; what was ordered, of whom, and on what terms. */
export function OrderingPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="ordering" standing={standing} pages={pages} />;
}
