import type { Replenishment } from '../projection/item-facts.js';
import type { Simulation } from '../projection/simulate.js';
import { stockPosition } from '../projection/stock-position.js';
import {
  byCost,
  type Candidate,
  mayBeCheaper,
  OrderTrials,
  type Trial,
  type TrialFacts,
} from './order-trials.js';

/** What is searched. */
export interface SearchSettings extends TrialFacts {
  replenishment: Replenishment;
  /** Index of the day by which one should be placed. */
  dueIndex: number;
  coarsePaths: number;
}

interface Step {
  days: number;
  packs: number;
}

const daysInGrid = 6;
const startsFromGrid = 4;
const followedInFine = 2;
/** Of those that may be the best more are not kept. */
const mostContenders = 8;
/** Share of the cost by which an order must be cheaper to be worth finding. */
const worthFinding = 0.005;

/**
 * Finds the first order with the least expected cost: a coarse grid on few paths, from its best places down in halved
 * steps, then on all paths those that may still be the best, and from the cheapest of them the last steps of one pack and
 * one order day. Cost need not be convex (price breaks, expiry), so several places are followed, and the neighbours in
 * both directions are always looked at.
 */
export class FirstOrderSearch {
  /** Half as late again as it is due: up to here the grid is dense. */
  private readonly nearIndex: number;

  constructor(
    private readonly settings: SearchSettings,
    readonly trials: OrderTrials = new OrderTrials(settings),
  ) {
    const { orderDays, dueIndex } = settings;
    this.nearIndex = Math.min(orderDays.length - 1, Math.max(4, Math.ceil(dueIndex * 1.5)));
  }

  get simulation(): Simulation {
    return this.settings.simulation;
  }

  /** Those that may be the best by the coarse paths, the cheapest first: good enough to compare offers. */
  coarse(): Trial[] {
    const { coarsePaths, base } = this.settings;
    const grid = this.grid().map((candidate) => this.trials.of(candidate, coarsePaths));
    const starts = bestOfEachAmount(grid.sort(byCost)).slice(0, startsFromGrid);
    const step = {
      days: Math.max(1, this.nearIndex >> 3),
      packs: Math.max(1, (base.mostPacks - base.leastPacks) >> 3),
    };
    for (const start of starts) this.descend(start, step, coarsePaths);
    return this.contenders(coarsePaths);
  }

  /** From the places found on few paths, the best on all. */
  fine(starts: readonly Candidate[]): Trial {
    return this.follow(starts, ({ packs }) => ({ days: 2, packs: Math.max(1, Math.round(packs / 12)) }));
  }

  /** From the places found on nearly as many paths, the best on all: chance has moved it by little. */
  finest(starts: readonly Candidate[]): Trial {
    return this.follow(starts, () => ({ days: 1, packs: 1 }));
  }

  /** Whether chance may hide that another one is clearly cheaper, by all paths. */
  isUncertain(best: Trial): boolean {
    const tried = this.trials.sorted(this.allPaths);
    return tried.some((trial) => trial !== best && mayBeCheaper(trial, best, worthFinding));
  }

  /**
   * The cheapest of all that were tried on so many paths, and those of which chance may hide that they are cheaper. Of
   * neighbours the cheaper one: the other is found from there.
   */
  contenders(paths: number = this.allPaths): Trial[] {
    const kept: Trial[] = [];
    for (const trial of this.trials.sorted(paths)) {
      const [best] = kept;
      if (kept.some((other) => areNeighbours(other, trial))) continue;
      if (best !== undefined && !mayBeCheaper(trial, best, worthFinding)) continue;
      kept.push(trial);
      if (kept.length === mostContenders) break;
    }
    return kept;
  }

  /** The same search on other paths. */
  on(simulation: Simulation): FirstOrderSearch {
    return new FirstOrderSearch({ ...this.settings, simulation }, this.trials.on(simulation));
  }

  /** The best on all paths among those on this order day or later; null: there is no such day. */
  bestFrom(dayIndex: number): Trial | null {
    const { orderDays, base } = this.settings;
    if (dayIndex >= orderDays.length) return null;
    const later = this.trials
      .sorted(this.allPaths)
      .find((trial) => trial.dayIndex >= dayIndex && trial.packs >= base.leastPacks);
    return later ?? this.trials.of({ dayIndex, packs: base.packs }, this.allPaths);
  }

  private get allPaths(): number {
    return this.settings.simulation.draws.paths;
  }

  private grid(): Candidate[] {
    const { simulation, base, replenishment, dueIndex, orderDays } = this.settings;
    const { leastPacks, mostPacks } = base;
    const amounts = new Set([
      leastPacks,
      ...[0.15, 0.3, 0.5, 1, 1.5, 2.5, 4].map((share) => Math.round(base.packs * share)),
    ]);
    // So little that the next order follows at once (two deliveries are seldom late together), and just more.
    for (const units of [base.reorderPointUnits, base.reorderPointUnits - stockPosition(simulation.stock)]) {
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
      if (base.packs > leastPacks) grid.push({ dayIndex, packs: base.packs });
    }
    return grid;
  }

  private follow(starts: readonly Candidate[], stepFrom: (start: Candidate) => Step): Trial {
    const paths = this.allPaths;
    const places = starts.map((start) => this.trials.of(start, paths)).sort(byCost);
    let best: Trial | null = null;
    for (const from of bestOfEachAmount(places).slice(0, followedInFine)) {
      // A place that is far worse on all paths is not followed down.
      if (best !== null && from.costMinor > best.costMinor + Math.abs(best.costMinor) * 0.1) continue;
      const end = this.descend(from, stepFrom(from), paths);
      if (best === null || byCost(end, best) < 0) best = end;
    }
    if (best === null) throw new RangeError('There is no order day to begin with.');
    return best;
  }

  /** Steps to the best neighbour until none is better, then halves the steps. */
  private descend(start: Trial, first: Step, paths: number): Trial {
    let best = start;
    for (let { days, packs } = first; ; days = Math.max(1, days >> 1), packs = Math.max(1, packs >> 1)) {
      for (let moved = true; moved; ) {
        const from = best;
        for (const candidate of this.neighbours(from, days, packs)) {
          const trial = this.trials.of(candidate, paths);
          if (byCost(trial, best) < 0) best = trial;
        }
        moved = best !== from;
      }
      if (days <= 1 && packs <= 1) return best;
    }
  }

  private neighbours({ dayIndex, packs }: Candidate, days: number, amount: number): Candidate[] {
    const { base, orderDays } = this.settings;
    const { leastPacks, mostPacks } = base;
    const moves = [
      [days, 0],
      [-days, 0],
      [0, amount],
      [0, -amount],
      [days, amount],
      [-days, -amount],
      [days, -amount],
      [-days, amount],
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

/** The first of each number of packs: places far apart are followed, not the same one on several days. */
function bestOfEachAmount(sorted: readonly Trial[]): Trial[] {
  const amounts = new Set<number>();
  return sorted.filter(({ packs }) => {
    if (amounts.has(packs)) return false;
    amounts.add(packs);
    return true;
  });
}

/** So near that the steps down from one come by the other. */
function areNeighbours(one: Candidate, other: Candidate): boolean {
  const packs = Math.max(1, Math.max(one.packs, other.packs) >> 2);
  return Math.abs(one.dayIndex - other.dayIndex) <= 2 && Math.abs(one.packs - other.packs) <= packs;
}
