import type { ItemUnit } from '../item.js';
import type { ComputedItem, FollowedItem } from './item-line.js';
import type { StockCounts } from './item-stock.js';
import type { BasketView, PlanAssumptionView, PlannedItemView, PlanSumsView } from './plans.views.js';

/** What is kept with a plan that is done. */
export interface PlanSummary {
  sums: PlanSumsView;
  baskets: BasketView[];
  assumptions: PlanAssumptionView[];
  runningSeconds: number;
  /** Lines with something to order on the day of the plan. */
  dueToday: number;
}

/** How an offer is told of in a line. */
export interface KeptOffer {
  offerId: string;
  productId: string;
  supplierId: string;
  supplierName: string;
  packContainers: number;
  unitsEach: number;
  minimumPacks: number;
  prices: { fromPacks: number; packPriceMinor: number }[];
  leadTime: { days: number[]; weights: number[] };
  /** Null: no date limits it. */
  lifeDays: number | null;
}

/** An assumption as it is kept: words are found when it is shown. */
export interface KeptAssumption {
  code: string;
  figures: Record<string, unknown>;
}

/** What is kept of a line beside its columns: what was found out, and what the basket made of it. */
export interface PlanLineContent {
  item: PlannedItemView & { unit: ItemUnit };
  /** What a level of stock may stand under: the product, or every configuration that is pooled. */
  levelKeys: string[];
  plannedOn: string;
  currency: string;
  computed: ComputedItem;
  counts: StockCounts;
  onTheWayUnits: number;
  offers: KeptOffer[];
  assumptions: KeptAssumption[];
  serviceTargetPerMille: number;
  weeksOfHistory: number;
  stakeMinor: number;
  /** What is ordered in the end; null: nothing. */
  order: {
    productId: string;
    packs: number;
    containers: number;
    units: number;
    costMinor: number;
    arrivesOn: string;
    arrivesLate: string;
  } | null;
  /** With that order, where the item by itself would order otherwise; null: it is ordered as it would be by itself. */
  followed: FollowedItem | null;
  /** The plan this was computed for; null: this one. */
  takenOverFromId: string | null;
}
