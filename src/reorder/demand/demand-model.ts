/**
 * What will be needed of one item, as chances. Days are counted from the day of the plan, which is day 0, in local days
 * of the studio; amounts are whole units of the item (pieces or microlitres).
 */
export interface DemandModel {
  /** Days looked ahead. */
  days: number;
  /** Each comes or does not, on one day, and then takes an amount: booked sessions, courses, touch-ups owed. */
  expected: ExpectedUse[];
  /** What nobody has booked yet. */
  unforeseen: UnforeseenUse[];
}

export interface ExpectedUse {
  source: 'booking' | 'course' | 'touch-up';
  /** That it takes place and needs the item, 0 to 1. */
  chance: number;
  /** The first day it may fall on, and how likely each day from there on is; the weights add up to 1. */
  firstDay: number;
  dayWeights: readonly number[];
  amount: AmountDistribution;
}

/** Amounts of one use and how likely each is; the weights add up to 1. Amounts are whole and at least 0. */
export interface AmountDistribution {
  amounts: readonly number[];
  weights: readonly number[];
}

/** A series of uses by period, of which a part is not known yet on each day to come. */
export interface UnforeseenUse {
  /** One is drawn for a whole path, by weight: how sure the level itself is, is part of what may happen. */
  components: readonly CountComponent[];
  periodDays: number;
  /** Of each day from day 0: its share of its period's uses (closed days 0); those of a whole period add up to 1. */
  dayShares: Float64Array;
  /** Of each day: the share of its uses that is not booked, owed or otherwise known today, 0 to 1. */
  unknownShares: Float64Array;
  amount: AmountDistribution;
}

/** How many uses a period has, by one method of forecasting. */
export type CountComponent = {
  method: ForecastMethod;
  weight: number;
} & (
  | {
      kind: 'negative binomial';
      mean: number /** Variance over mean, at least 1; 1 is Poisson. */;
      dispersion: number;
    }
  | { kind: 'empirical' /** Counts of a period, each as likely. */; counts: readonly number[] }
);

export type ForecastMethod =
  | 'Croston'
  | 'Syntetos-Boylan'
  | 'Teunter-Syntetos-Babai'
  | 'simple smoothing'
  | 'bootstrap'
  | 'level assumed';
