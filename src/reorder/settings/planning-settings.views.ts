import type { RangeChoice } from '../decision/range-choice.js';
import type { ItemKind } from '../item.js';

/** A value that plans use. */
export class EffectiveNumberView {
  value: number;
  /** Nobody set it: it is an assumption, and plans say so. */
  assumed: boolean;
}

/** What plans take for granted until somebody says otherwise or it is learnt. */
export class PlanningAssumptionView {
  code:
    | 'serviceTargetPerMille'
    | 'orderCostMinor'
    | 'holdingPerYearPerMille'
    | 'returnPerMille'
    | 'leadTimeDays'
    | 'lifeOnArrivalDays'
    | 'deliveryCostMinor';
  value: number;
  /** Why it is what it is. */
  basis: 'common practice, no source' | 'assumption';
}

/** How the studio plans. */
export class PlanningSettingsView {
  serviceTargetPerMille: EffectiveNumberView;
  /** In minor units of `currency`. */
  orderCostMinor: EffectiveNumberView;
  holdingPerYearPerMille: EffectiveNumberView;
  returnPerMille: EffectiveNumberView;
  /** The studio's. */
  currency: string;
  assumptions: PlanningAssumptionView[];
  /** Null: nothing is set. */
  version: number | null;
}

/** How one item is planned, where it differs; what is null is as the studio plans. */
export class ItemPlanningView {
  itemKind: ItemKind;
  /** A product id, or a key of a cartridge configuration. */
  itemKey: string;
  /** Of a product in words; null for a configuration, whose key says it. */
  itemName: string | null;
  serviceTargetPerMille: number | null;
  /** In minor units of the studio's currency. */
  shortageCostMinor: number | null;
  rangeChoice: RangeChoice | null;
  replacesProductId: string | null;
  replacesProductName: string | null;
  version: number;
}

export class ItemPlanningPageView {
  items: ItemPlanningView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}

/** What planning knows of somebody who treats. */
export class ArtistPlanningView {
  personId: string;
  /** The last day here, YYYY-MM-DD; null: no end is known. */
  leavesOn: string | null;
  /** The last day on which they may do anything, as it stands in the list of people; it ends what they need too. */
  worksUntil: string | null;
  /** Null: nothing is set. */
  version: number | null;
}
