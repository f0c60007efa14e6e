import type { BasketView, PlanAssumptionView, PlanLineView, PlanSumsView } from './plans.views.js';

/** What is kept with a plan that is done. */
export interface PlanSummary {
  sums: PlanSumsView;
  baskets: BasketView[];
  assumptions: PlanAssumptionView[];
  runningSeconds: number;
  /** Lines with something to order on the day of the plan. */
  dueToday: number;
}

/** What is kept of a line: all but what stands in columns, and what is looked up when it is shown. */
export type PlanLineContent = Omit<
  PlanLineView,
  'lineNumber' | 'decision' | 'orderOn' | 'offerId' | 'packs' | 'supplierId' | 'level' | 'item'
> & {
  item: PlanLineView['item'];
  /** Pieces; null: nothing sensible can be said. */
  reorderPointPieces: number | null;
};
