import type { DemandModel, UnforeseenUse } from '../../src/reorder/demand/demand-model.js';
import { drawDemand, seedOfItem } from '../../src/reorder/projection/demand-draws.js';
import {
  type Batch,
  type CostRates,
  type ItemStock,
  NEVER,
  type Replenishment,
} from '../../src/reorder/projection/item-facts.js';
import type { Estimate } from '../../src/reorder/projection/outcome.js';
import { Simulation } from '../../src/reorder/projection/simulate.js';
import type { BenchSettings } from './bench-settings.js';
import { walkPlainLoop } from './plain-projection.js';

/** Item-days, each path's counted, per second of processor time. */
export interface ProjectionComparison {
  /** Needs drawn and walked through. */
  wholePerSecond: number;
  /** Walked through again: what each further candidate takes. */
  againPerSecond: number;
  plainPerSecond: number;
  wholeRatios: number[];
  againRatios: number[];
  /** A catalogue of slow, steady and fast items, one policy each; seconds of processor time. */
  catalogue: { items: number; days: number; paths: number; drawSeconds: number; walkSeconds: number };
}

const days = 120;
const noOrders = { first: null, reorderPointUnits: null, packs: 0 };
const rates: CostRates = { unitMinor: 25, orderMinor: 800, shortageMinor: 500, holdingMinorPerDay: 0.02 };

/** @throws Error when the simulation and the plain loop do not come to the same */
export function benchProjections({ small, seed, warmUpRounds, rounds }: BenchSettings): ProjectionComparison {
  const paths = small ? 2_000 : 20_000;
  const mean = 0.5;
  const lotUnits = [8, 8, 8, 8, 8, 8, 8, 8];
  const lotLastDays = lotUnits.map((_, lot) => 14 + lot * 15);
  const batches = lotUnits.map((containers, lot) => pieces(containers, lotLastDays[lot] ?? NEVER));
  const stock: ItemStock = { batches, onTheWay: [], openedLifeDays: NEVER };
  const every = new Float64Array(days).fill(1);
  const model: DemandModel = {
    days,
    expected: [],
    unforeseen: [
      {
        components: [{ method: 'level assumed', weight: 1, kind: 'negative binomial', mean, dispersion: 1 }],
        periodDays: 1,
        dayShares: every,
        unknownShares: every,
        amount: { amounts: [1], weights: [1] },
      },
    ],
  };
  const seconds = { whole: [] as number[], again: [] as number[], plain: [] as number[] };
  for (let round = 0; round < warmUpRounds + rounds; round++) {
    const begun = processorMilliseconds();
    const draws = drawDemand(model, { paths, seed: seed + round });
    const simulation = new Simulation(stock, null, draws, rates, { days, tailDays: 0 });
    const outcome = simulation.evaluate(noOrders);
    const walked = processorMilliseconds();
    simulation.evaluate(noOrders);
    const again = processorMilliseconds();
    const plain = walkPlainLoop({ paths, days, mean, lotUnits, lotLastDays }, seed + round);
    const ended = processorMilliseconds();
    expectSame('wasted units', outcome.wastedUnits, plain.wastedUnits);
    expectSame('unmet units', outcome.unmetUnits, plain.unmetUnits);
    if (round < warmUpRounds) continue;
    seconds.whole.push((walked - begun) / 1000);
    seconds.again.push((again - walked) / 1000);
    seconds.plain.push((ended - again) / 1000);
  }
  const perSecond = (some: readonly number[]): number =>
    (days * paths * some.length) / some.reduce((sum, each) => sum + each, 0);
  const ratios = (some: readonly number[]): number[] =>
    some.map((each, round) => (seconds.plain[round] ?? Number.NaN) / each);
  return {
    wholePerSecond: perSecond(seconds.whole),
    againPerSecond: perSecond(seconds.again),
    plainPerSecond: perSecond(seconds.plain),
    wholeRatios: ratios(seconds.whole),
    againRatios: ratios(seconds.again),
    catalogue: walkCatalogue(small ? 20 : 1_000, small ? 200 : 2_000, seed),
  };
}

/** Of this process alone: other work on the machine does not count. */
function processorMilliseconds(): number {
  return process.cpuUsage().user / 1000;
}

/** Both were drawn, each with its own luck: twice the variance. */
function expectSame(what: string, { mean, standardError }: Estimate, plain: number): void {
  const errors = Math.abs(mean - plain) / (Math.SQRT2 * standardError);
  if (!(errors < 5)) {
    throw new Error(
      `The simulation has ${mean} ${what}, the plain loop ${plain}: ${errors} standard errors apart.`,
    );
  }
}

function walkCatalogue(items: number, paths: number, seed: number): ProjectionComparison['catalogue'] {
  let drawSeconds = 0;
  let walkSeconds = 0;
  for (let index = 0; index < items; index++) {
    const item = catalogueItem(index);
    const begun = processorMilliseconds();
    const draws = drawDemand(item.model, { paths, seed: seedOfItem(seed, `item ${index}`) });
    const drawn = processorMilliseconds();
    new Simulation(item.stock, item.replenishment, draws, rates, { days, tailDays: 0 }).evaluate(item.policy);
    drawSeconds += (drawn - begun) / 1000;
    walkSeconds += (processorMilliseconds() - drawn) / 1000;
  }
  return { items, days, paths, drawSeconds, walkSeconds };
}

/** Of twenty items twelve are used about once in five weeks, five twice a week and three three times a day. */
function catalogueItem(index: number) {
  const place = index % 20;
  const weeklyUses = place < 12 ? 0.2 : place < 17 ? 2 : 20;
  const bottles = place < 17 && place % 2 === 0;
  const unitsEach = bottles ? 10_000 : 1;
  const amount = bottles
    ? { amounts: [60, 100, 150, 220, 350], weights: [0.2, 0.3, 0.3, 0.15, 0.05] }
    : { amounts: [1, 2], weights: [0.85, 0.15] };
  const unforeseen: UnforeseenUse = {
    components: [
      {
        method: 'simple smoothing',
        weight: 0.5,
        kind: 'negative binomial',
        mean: weeklyUses,
        dispersion: 1.4,
      },
      { method: 'Croston', weight: 0.3, kind: 'negative binomial', mean: weeklyUses * 0.8, dispersion: 1 },
      {
        method: 'bootstrap',
        weight: 0.2,
        kind: 'empirical',
        counts: Array.from({ length: 52 }, (_, week) => Math.round((weeklyUses * (week % 5)) / 2)),
      },
    ],
    periodDays: 7,
    dayShares: Float64Array.from({ length: days }, (_, day) => (day % 7 < 5 ? 0.2 : 0)),
    unknownShares: Float64Array.from({ length: days }, (_, day) => 1 - 0.6 * Math.exp(-day / 21)),
    amount,
  };
  const booked = Math.ceil(weeklyUses * 3);
  const model: DemandModel = {
    days,
    unforeseen: [unforeseen],
    expected: Array.from({ length: booked }, (_, use) => ({
      source: 'booking' as const,
      chance: 0.9,
      firstDay: (use * 7 + index) % 60,
      dayWeights: [1],
      amount,
    })),
  };
  const weeklyUnits = weeklyUses * (bottles ? 140 : 1.15);
  const containers = bottles ? 1 : Math.ceil(weeklyUnits / 2);
  const opened = { containers: 1, unitsEach: 4_000, lastDay: 40, opened: true, costEachMinor: null };
  const batches = Array.from({ length: 8 }, (_, lot): Batch => {
    return lot === 0 && bottles ? opened : { ...pieces(containers, 20 + lot * 25), unitsEach };
  });
  const replenishment: Replenishment = {
    packContainers: bottles ? 1 : 20,
    unitsEach,
    minimumPacks: 1,
    prices: [
      { fromPacks: 1, packPriceMinor: 2_500 },
      { fromPacks: 5, packPriceMinor: 2_300 },
    ],
    leadTime: { days: [2, 3, 4, 6, 9], weights: [0.1, 0.4, 0.3, 0.15, 0.05] },
    // On one day a week.
    nextOrderDay: Int32Array.from({ length: days }, (_, day) => {
      const next = Math.ceil(day / 7) * 7;
      return next < days ? next : NEVER;
    }),
    lifeDays: 500,
  };
  const arrival = { days: [2, 4, 7], weights: [0.5, 0.3, 0.2] };
  const stock: ItemStock = {
    batches,
    onTheWay: [{ containers, unitsEach, arrival, lifeDays: 400 }],
    openedLifeDays: bottles ? 90 : NEVER,
  };
  const packUnits = replenishment.packContainers * unitsEach;
  const policy = {
    first: { day: 0, packs: 1 },
    reorderPointUnits: Math.ceil(weeklyUnits * 2),
    packs: Math.max(1, Math.ceil((weeklyUnits * 4) / packUnits)),
  };
  return { model, stock, replenishment, policy };
}

function pieces(containers: number, lastDay: number): Batch {
  return { containers, unitsEach: 1, lastDay, opened: false, costEachMinor: null };
}
