import type { DemandFacts, ItemDemandFacts } from './demand-facts.js';
import type { DemandModel, ForecastMethod } from './demand-model.js';
import type { SeriesClass } from './series-class.js';

/** Something supposed and not known, with its figures. */
export interface DemandAssumption {
  code:
    | 'no history'
    | 'short history'
    | 'level assumed'
    | 'amount from kit list'
    | 'amount assumed'
    | 'return rate assumed'
    | 'return delay assumed'
    | 'booking curve assumed'
    | 'attendance assumed'
    | 'weekdays assumed'
    | 'history of predecessor'
    | 'artist leaves'
    | 'bookings after the last day';
  figures: Readonly<Record<string, number | string>>;
}

/** What is expected, by how much of it is known, and how the unknown part is foretold: for an explanation. */
export interface DemandDescription {
  /** Expected units of each seven days from day 0 on. */
  weeks: { known: number; halfKnown: number; unforeseen: number }[];
  class: SeriesClass;
  adi: number | null;
  cv2: number | null;
  /** Methods of the main unforeseen series, the most weighted first; weights of a method's variants added up. */
  methods: { method: ForecastMethod; weight: number }[];
  origins: number;
  /** Units of one use, on average. */
  unitsOfUse: number;
}

export interface ItemDemand {
  model: DemandModel;
  assumptions: DemandAssumption[];
  description: DemandDescription;
}

/** What all items of a plan share, worked out once. */
export interface StudioDemand {
  facts: DemandFacts;
}

export declare function studioDemand(facts: DemandFacts): StudioDemand;

/** What will be needed of one item, as chances, from the studio's facts and its own. */
export declare function demandOfItem(
  studio: StudioDemand,
  item: ItemDemandFacts,
  horizonDays: number,
): ItemDemand;
