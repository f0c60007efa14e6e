import type { CostRates, OrderPolicy } from '../projection/item-facts.js';
import { joinedOutcome, type Outcome } from '../projection/outcome.js';
import type { Simulation } from '../projection/simulate.js';
import type { BasePolicy } from './base-policy.js';
import { totalCostMinor } from './expected-cost.js';

/** A first order: on the order day with this index, so many packs. */
export interface Candidate {
  dayIndex: number;
  packs: number;
}

export interface PricedCandidate extends Candidate {
  costMinor: number;
}

/** What came of a first order on the paths it was tried on, and what it cost on each part of them. */
export interface Trial extends PricedCandidate {
  outcome: Outcome;
  partCostsMinor: Float64Array;
}

export interface TrialFacts {
  simulation: Simulation;
  base: BasePolicy;
  rates: CostRates;
  /** Days on which the first order may be placed, rising. */
  orderDays: readonly number[];
}

/** Equal parts of the paths, by which is told how far chance may have moved a difference. */
const parts = 16;
/** A difference is held for certain when it is further from 0 than so many standard errors. */
const certainErrors = 2;

/** Tries first orders, each once for so many paths, and tells them apart as far as so many paths can. */
export class OrderTrials {
  /** By how many paths were looked at, and by order. */
  private readonly trials = new Map<number, Map<string, Trial>>();

  constructor(
    readonly facts: TrialFacts,
    /** Different orders that were tried. */
    private readonly tried = new Set<string>(),
  ) {}

  get candidates(): number {
    return this.tried.size;
  }

  /** The same on other paths, of which none was tried yet. */
  on(simulation: Simulation): OrderTrials {
    return new OrderTrials({ ...this.facts, simulation }, this.tried);
  }

  /** What comes of a first order on the first so many paths. */
  of(candidate: Candidate, paths: number): Trial {
    const key = `${candidate.dayIndex}|${candidate.packs}`;
    this.tried.add(key);
    let known = this.trials.get(paths);
    if (known === undefined) {
      known = new Map();
      this.trials.set(paths, known);
    }
    let trial = known.get(key);
    if (trial === undefined) {
      trial = this.try(candidate, paths);
      known.set(key, trial);
    }
    return trial;
  }

  /** All that were tried on so many paths, the cheapest first. */
  sorted(paths: number): Trial[] {
    return [...(this.trials.get(paths)?.values() ?? [])].sort(byCost);
  }

  policy({ dayIndex, packs }: Candidate): OrderPolicy {
    const { base, orderDays } = this.facts;
    return {
      first: { day: orderDays[dayIndex] ?? 0, packs },
      reorderPointUnits: base.reorderPointUnits,
      packs: base.packs,
    };
  }

  private try({ dayIndex, packs }: Candidate, paths: number): Trial {
    const { simulation, rates, base } = this.facts;
    const policy = this.policy({ dayIndex, packs });
    const outcomes: Outcome[] = [];
    const count = Math.min(parts, paths);
    for (let part = 0; part < count; part++) {
      const from = Math.floor((paths * part) / count);
      const to = Math.floor((paths * (part + 1)) / count);
      outcomes.push(simulation.evaluate(policy, { from, to }));
    }
    const outcome = joinedOutcome(outcomes);
    return {
      dayIndex,
      packs,
      costMinor: totalCostMinor(outcome, rates, base.left),
      outcome,
      partCostsMinor: Float64Array.from(outcomes, (each) => totalCostMinor(each, rates, base.left)),
    };
  }
}

/** By cost; of equal ones the later day, then the fewer packs. */
export function byCost(left: PricedCandidate, right: PricedCandidate): number {
  const difference = left.costMinor - right.costMinor;
  if (Math.abs(difference) > 1e-9) return difference;
  return right.dayIndex - left.dayIndex || left.packs - right.packs;
}

/**
 * Whether chance may hide that a rival is cheaper than the other one by more than the share of its cost. Both were tried
 * on the same paths: their difference varies far less than they do.
 */
export function mayBeCheaper(rival: Trial, than: Trial, share: number): boolean {
  const difference = rival.costMinor - than.costMinor;
  return difference - certainErrors * errorOfDifference(rival, than) < -share * Math.abs(than.costMinor);
}

/** Standard error of the difference of two costs on the same paths; 0 where there is but one. */
function errorOfDifference({ partCostsMinor: one }: Trial, { partCostsMinor: other }: Trial): number {
  const count = one.length;
  if (count < 2) return 0;
  let sum = 0;
  let squares = 0;
  for (let part = 0; part < count; part++) {
    const difference = (one[part] ?? 0) - (other[part] ?? 0);
    sum += difference;
    squares += difference * difference;
  }
  return Math.sqrt(Math.max(0, squares - (sum * sum) / count) / (count - 1) / count);
}
