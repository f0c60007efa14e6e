import { orderNothing } from '../../src/reorder/decision/batch-cost.js';
import { totalCostMinor } from '../../src/reorder/decision/expected-cost.js';
import type { Candidate } from '../../src/reorder/decision/order-trials.js';
import { bestOrderOf, type WeighedOffer, weighOffers } from '../../src/reorder/decision/weigh-offers.js';
import { drawDemand } from '../../src/reorder/projection/demand-draws.js';
import { Simulation } from '../../src/reorder/projection/simulate.js';
import { itemFacts, type SampleItem } from './planning-samples.js';

/** Drawn at once: a million paths would fill the memory. */
const pathsAtOnce = 50_000;
/** Parts of paths from which the error of a difference is told. */
const parts = 20;

/** What is ordered first of a sample with one offer, as a decision finds it on the paths it is given. */
export function firstOrderOf(sample: SampleItem, paths: number, seed: number): WeighedOffer {
  const facts = itemFacts({ ...sample, paths, seed });
  const { draws, stock, horizonDays, offers, settings } = facts;
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const [offer] = offers;
  if (offer === undefined) throw new Error('A sample that is judged has an offer.');
  const { prices, packContainers, unitsEach } = offer.replenishment;
  const unitMinor =
    Math.min(...prices.map(({ packPriceMinor }) => packPriceMinor)) / packContainers / unitsEach;
  const rates = { unitMinor, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
  const nothing = new Simulation(stock, null, draws, rates, horizon).evaluate(orderNothing);
  const [chosen] = weighOffers(facts, settings, offers, unitMinor, 1, nothing).weighed;
  if (chosen === undefined) throw new Error('No offer was weighed.');
  return bestOrderOf(facts, chosen);
}

/** Prices first orders on paths that no decision saw, with the later orders and the rates of the one that is judged. */
export class OrderJudge {
  private readonly facts;

  constructor(
    sample: SampleItem,
    private readonly chosen: WeighedOffer,
  ) {
    this.facts = itemFacts({ ...sample, paths: 1 });
  }

  /** Expected costs of each, all on the same paths. */
  costs(candidates: readonly Candidate[], paths: number, seed: number): Float64Array {
    const { facts, chosen } = this;
    const { rates, base, offer, search } = chosen;
    const horizon = { days: facts.horizonDays, tailDays: facts.demand.days - facts.horizonDays };
    const costs = new Float64Array(candidates.length);
    for (let done = 0, part = 0; done < paths; done += pathsAtOnce, part++) {
      const some = Math.min(pathsAtOnce, paths - done);
      const draws = drawDemand(facts.demand, { paths: some, seed: seed + part });
      const simulation = new Simulation(facts.stock, offer.replenishment, draws, rates, horizon);
      for (const [index, candidate] of candidates.entries()) {
        const outcome = simulation.evaluate(search.trials.policy(candidate));
        costs[index] = (costs[index] ?? 0) + (totalCostMinor(outcome, rates, base.left) * some) / paths;
      }
    }
    return costs;
  }

  /** The cheapest of them on so many paths, the best first. */
  cheapest<Order extends Candidate>(
    candidates: readonly Order[],
    count: number,
    paths: number,
    seed: number,
  ): Order[] {
    const costs = this.costs(candidates, paths, seed);
    return [...candidates.keys()]
      .sort((one, other) => (costs[one] ?? 0) - (costs[other] ?? 0))
      .slice(0, count)
      .flatMap((index) => candidates[index] ?? []);
  }

  /** By what share of its cost one is dearer than the other, and the standard error of that: both on the same paths. */
  above(
    one: Candidate,
    other: Candidate,
    paths: number,
    seed: number,
  ): { share: number; standardError: number } {
    const differences: number[] = [];
    let cost = 0;
    for (let part = 0; part < parts; part++) {
      const [ofOne = 0, ofOther = 0] = this.costs(
        [one, other],
        Math.ceil(paths / parts),
        seed + 1_000 * part,
      );
      differences.push(ofOne - ofOther);
      cost += ofOther / parts;
    }
    const mean = differences.reduce((sum, each) => sum + each, 0) / parts;
    const squares = differences.reduce((sum, each) => sum + (each - mean) ** 2, 0);
    const standardError = Math.sqrt(squares / (parts - 1) / parts);
    return { share: mean / Math.abs(cost), standardError: standardError / Math.abs(cost) };
  }
}
