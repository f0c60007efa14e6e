import type { CostRates, OrderPolicy, Replenishment } from '../projection/item-facts.js';
import type { Outcome } from '../projection/outcome.js';
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

/** What is searched, and what for. */
export interface SearchSettings {
  simulation: Simulation;
  replenishment: Replenishment;
  base: BasePolicy;
  rates: CostRates;
  /** Days on which the first order may be placed, rising. */
  orderDays: readonly number[];
  /** Index of the day by which one should be placed. */
  dueIndex: number;
  leastPacks: number;
  mostPacks: number;
  coarsePaths: number;
}

const daysInGrid = 6;
const startsFromGrid = 4;
const startsInFine = 2;
/** Share of the cost by which a neighbour counts as clearly cheaper on half of the paths. */
const clearlyCheaper = 0.005;

/**
 * Finds the first order with the least expected cost: a coarse grid on few paths, from its best places down in halved
 * steps, and the last steps of one pack and one order day on all paths. Cost need not be convex (price breaks, expiry),
 * so several places are followed, and the neighbours in both directions are always looked at.
 */
export class FirstOrderSearch {
  /** What came of each order, by how many paths were looked at. */
  private readonly outcomes = new Map<number, Map<string, Outcome>>();
  /** Half as late again as it is due: up to here the grid is dense. */
  private readonly nearIndex: number;
  /** Different orders that were tried. */
  private readonly tried = new Set<string>();

  constructor(private readonly settings: SearchSettings) {
    const { orderDays, dueIndex } = settings;
    this.nearIndex = Math.min(orderDays.length - 1, Math.max(4, Math.ceil(dueIndex * 1.5)));
  }

  get candidates(): number {
    return this.tried.size;
  }

  get simulation(): Simulation {
    return this.settings.simulation;
  }

  /** The best on the coarse paths: good enough to compare offers. */
  coarse(): PricedCandidate[] {
    const { coarsePaths } = this.settings;
    const grid = this.grid().map((candidate) => this.priced(candidate, coarsePaths));
    const starts = bestOfEachAmount(grid.sort(byCost)).slice(0, startsFromGrid);
    const step = {
      days: Math.max(1, this.nearIndex >> 3),
      packs: Math.max(1, (this.settings.mostPacks - this.settings.leastPacks) >> 3),
    };
    const ends = starts.map((start) => this.descend(start, step, coarsePaths));
    return distinct(ends.sort(byCost), startsInFine);
  }

  /** From the places found, the best on all paths. */
  fine(starts: readonly PricedCandidate[]): PricedCandidate {
    const paths = this.settings.simulation.draws.paths;
    let best: PricedCandidate | null = null;
    for (const start of starts) {
      const from = this.priced(start, paths);
      // A place that is far worse on all paths is not followed down.
      if (best !== null && from.costMinor > best.costMinor + Math.abs(best.costMinor) * 0.1) continue;
      const packs = Math.max(1, Math.round(start.packs / 12));
      const end = this.descend(from, { days: 2, packs }, paths);
      if (best === null || byCost(end, best) < 0) best = end;
    }
    if (best === null) throw new RangeError('There is no order day to begin with.');
    return best;
  }

  /**
   * Whether half of the paths would have chosen a neighbour in packs that is clearly cheaper there: then so many paths
   * are too few to tell.
   */
  isUncertain(best: PricedCandidate): boolean {
    const { simulation, leastPacks, mostPacks, rates, base } = this.settings;
    const { paths } = simulation.draws;
    const halves = [
      { from: 0, to: paths >> 1 },
      { from: paths >> 1, to: paths },
    ].filter(({ from, to }) => to > from);
    for (const range of halves) {
      const costOf = (packs: number) => {
        const outcome = simulation.evaluate(this.policy({ ...best, packs }), range);
        return totalCostMinor(outcome, rates, base.left);
      };
      const here = costOf(best.packs);
      for (const packs of [best.packs - 1, best.packs + 1]) {
        if (packs < leastPacks || packs > mostPacks) continue;
        if (costOf(packs) < here - Math.abs(here) * clearlyCheaper) return true;
      }
    }
    return false;
  }

  /** The same search on other paths. */
  on(simulation: Simulation): FirstOrderSearch {
    const search = new FirstOrderSearch({ ...this.settings, simulation });
    for (const key of this.tried) search.tried.add(key);
    return search;
  }

  /** The best on all paths among those on this order day or later; null: there is no such day. */
  bestFrom(dayIndex: number): PricedCandidate | null {
    const { orderDays, simulation, base, leastPacks } = this.settings;
    if (dayIndex >= orderDays.length) return null;
    const { paths } = simulation.draws;
    let best: PricedCandidate | null = null;
    for (const key of this.outcomes.get(paths)?.keys() ?? []) {
      const [index = 0, packs = 0] = key.split('|').map(Number);
      if (index < dayIndex || packs < leastPacks) continue;
      const priced = this.priced({ dayIndex: index, packs }, paths);
      if (best === null || byCost(priced, best) < 0) best = priced;
    }
    return best ?? this.priced({ dayIndex, packs: Math.max(leastPacks, base.packs) }, paths);
  }

  priced(candidate: Candidate, paths: number): PricedCandidate {
    const { rates, base } = this.settings;
    return { ...candidate, costMinor: totalCostMinor(this.outcome(candidate, paths), rates, base.left) };
  }

  /** What comes of a first order, tried once for so many paths. */
  outcome(candidate: Candidate, paths: number): Outcome {
    const key = `${candidate.dayIndex}|${candidate.packs}`;
    this.tried.add(key);
    let known = this.outcomes.get(paths);
    if (known === undefined) {
      known = new Map();
      this.outcomes.set(paths, known);
    }
    let outcome = known.get(key);
    if (outcome === undefined) {
      outcome = this.settings.simulation.evaluate(this.policy(candidate), { from: 0, to: paths });
      known.set(key, outcome);
    }
    return outcome;
  }

  policy({ dayIndex, packs }: Candidate): OrderPolicy {
    const { base, orderDays } = this.settings;
    return {
      first: { day: orderDays[dayIndex] ?? 0, packs },
      reorderPointUnits: base.reorderPointUnits,
      packs: base.packs,
    };
  }

  /** What is here and coming. */
  private unitsHere(): number {
    const { batches, onTheWay } = this.settings.simulation.stock;
    let units = 0;
    for (const { containers, unitsEach } of [...batches, ...onTheWay]) units += containers * unitsEach;
    return units;
  }

  private grid(): Candidate[] {
    const { leastPacks, mostPacks, base, replenishment, dueIndex, orderDays } = this.settings;
    const amounts = new Set([
      leastPacks,
      ...[0.15, 0.3, 0.5, 1, 1.5, 2.5, 4].map((share) => Math.round(base.packs * share)),
    ]);
    // So little that the next order follows at once (two deliveries are seldom late together), and just more.
    for (const units of [base.reorderPointUnits, base.reorderPointUnits - this.unitsHere()]) {
      const packs = Math.floor(units / base.packUnits);
      amounts.add(packs).add(packs + 1);
    }
    for (const { fromPacks } of replenishment.prices) amounts.add(fromPacks);
    const days = new Set([0, Math.min(dueIndex, this.nearIndex)]);
    for (let part = 0; part < daysInGrid; part++) {
      days.add(Math.round((this.nearIndex * part) / (daysInGrid - 1)));
    }
    const grid: Candidate[] = [];
    for (const packs of amounts) {
      if (packs < leastPacks || packs > mostPacks) continue;
      for (const dayIndex of days) grid.push({ dayIndex, packs });
    }
    // Far ones too: that nothing is worth ordering shows as an order put off as long as can be.
    const last = orderDays.length - 1;
    for (const dayIndex of [last >> 1, last]) {
      grid.push({ dayIndex, packs: leastPacks });
      if (base.packs > leastPacks && base.packs <= mostPacks) grid.push({ dayIndex, packs: base.packs });
    }
    return grid;
  }

  /** Steps to the best neighbour until none is better, then halves the steps. */
  private descend(
    start: PricedCandidate,
    first: { days: number; packs: number },
    paths: number,
  ): PricedCandidate {
    let best = start;
    for (let { days, packs } = first; ; days = Math.max(1, days >> 1), packs = Math.max(1, packs >> 1)) {
      for (let moved = true; moved; ) {
        const from = best;
        for (const candidate of this.neighbours(from, days, packs)) {
          const priced = this.priced(candidate, paths);
          if (byCost(priced, best) < 0) best = priced;
        }
        moved = best !== from;
      }
      if (days <= 1 && packs <= 1) return best;
    }
  }

  private neighbours({ dayIndex, packs }: Candidate, days: number, amount: number): Candidate[] {
    const { leastPacks, mostPacks, orderDays } = this.settings;
    const moves = [
      [days, 0],
      [-days, 0],
      [0, amount],
      [0, -amount],
      [days, amount],
      [-days, -amount],
    ] as const;
    const neighbours: Candidate[] = [];
    for (const [dayMove, packMove] of moves) {
      const candidate = { dayIndex: dayIndex + dayMove, packs: packs + packMove };
      const fits = candidate.dayIndex >= 0 && candidate.dayIndex < orderDays.length;
      if (fits && candidate.packs >= leastPacks && candidate.packs <= mostPacks) neighbours.push(candidate);
    }
    return neighbours;
  }
}

/** By cost; of equal ones the later day, then the fewer packs. */
function byCost(left: PricedCandidate, right: PricedCandidate): number {
  const difference = left.costMinor - right.costMinor;
  if (Math.abs(difference) > 1e-9) return difference;
  return right.dayIndex - left.dayIndex || left.packs - right.packs;
}

/** The first of each number of packs: places far apart are followed, not the same one on several days. */
function bestOfEachAmount(sorted: readonly PricedCandidate[]): PricedCandidate[] {
  const amounts = new Set<number>();
  return sorted.filter(({ packs }) => {
    if (amounts.has(packs)) return false;
    amounts.add(packs);
    return true;
  });
}

/** The first ones that are not the same. */
function distinct(sorted: readonly PricedCandidate[], most: number): PricedCandidate[] {
  const kept: PricedCandidate[] = [];
  for (const each of sorted) {
    if (kept.length === most) break;
    if (!kept.some(({ dayIndex, packs }) => dayIndex === each.dayIndex && packs === each.packs))
      kept.push(each);
  }
  return kept;
}
