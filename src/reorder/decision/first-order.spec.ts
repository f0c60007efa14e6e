import { describe, expect, it } from 'vitest';
import {
  itemFacts,
  offerOf,
  orderDaysEvery,
  type SampleItem,
  sealed,
} from '../../../tests/support/planning-samples.js';
import { drawDemand } from '../projection/demand-draws.js';
import { Simulation } from '../projection/simulate.js';
import { orderNothing } from './batch-cost.js';
import { totalCostMinor } from './expected-cost.js';
import type { Candidate } from './first-order.js';
import { bestOrderOf, type WeighedOffer, weighOffers } from './weigh-offers.js';

const isSoak = process.env.SOAK !== undefined;
/** Paths on which every order is tried, drawn apart from those the decision saw. */
const firstPaths = isSoak ? 20_000 : 2_000;
/** In the soak those that came within 3 % of the least are tried on so many: others cannot be the best. */
const lastPaths = isSoak ? 1_000_000 : 0;
const stillPossible = 1.03;
/** Drawn at once: a million would fill the memory. */
const pathsAtOnce = 50_000;

/** Small enough that every quantity on every day can be tried. */
const problems: Record<string, SampleItem & { most: number; latest: number }> = {
  'needles by the box, any day': {
    usesPerWeek: 14,
    days: 90,
    horizonDays: 50,
    batches: [sealed(25, 1)],
    offers: [offerOf({ packContainers: 10, prices: [{ fromPacks: 1, packPriceMinor: 1_500 }] })],
    most: 36,
    latest: 5,
  },
  'nothing here, ordered once a week, a price break': {
    usesPerWeek: 10,
    dispersion: 1.8,
    days: 100,
    horizonDays: 60,
    batches: [sealed(4, 1)],
    offers: [
      offerOf({
        packContainers: 5,
        prices: [
          { fromPacks: 1, packPriceMinor: 900 },
          { fromPacks: 8, packPriceMinor: 820 },
        ],
        nextOrderDay: orderDaysEvery(7, 1),
      }),
    ],
    most: 60,
    latest: 14,
  },
  'a short life, single pieces': {
    usesPerWeek: 7,
    dispersion: 1.4,
    days: 90,
    horizonDays: 40,
    batches: [sealed(6, 1, 9)],
    settings: { serviceTargetPerMille: 900, orderCostMinor: 300 },
    offers: [
      offerOf({
        packContainers: 1,
        prices: [{ fromPacks: 1, packPriceMinor: 220 }],
        leadTime: { days: [2, 3], weights: [0.6, 0.4] },
        lifeDays: 14,
      }),
    ],
    most: 30,
    latest: 4,
  },
  'a shade in bottles that do not keep long once opened': {
    unit: 'microlitres',
    usesPerWeek: 2,
    amounts: { amounts: [300, 500, 900], weights: [0.4, 0.4, 0.2] },
    days: 300,
    horizonDays: 150,
    openedLifeDays: 60,
    batches: [{ ...sealed(1, 3_000, 40), opened: true }],
    offers: [
      offerOf({
        packContainers: 1,
        unitsEach: 6_000,
        prices: [{ fromPacks: 1, packPriceMinor: 2_400 }],
        lifeDays: 200,
      }),
    ],
    most: 8,
    latest: 8,
  },
  'booked sessions and walk-ins, a hand-set shortage cost': {
    usesPerWeek: 3,
    days: 90,
    horizonDays: 45,
    batches: [sealed(5, 1)],
    settings: { shortageCostMinor: 4_000 },
    expected: [
      {
        source: 'booking',
        chance: 0.9,
        firstDay: 9,
        dayWeights: [1],
        amount: { amounts: [2, 3], weights: [0.5, 0.5] },
      },
      { source: 'course', chance: 1, firstDay: 16, dayWeights: [1], amount: { amounts: [12], weights: [1] } },
      {
        source: 'touch-up',
        chance: 0.7,
        firstDay: 20,
        dayWeights: [0.25, 0.5, 0.25],
        amount: { amounts: [2], weights: [1] },
      },
    ],
    offers: [
      offerOf({ packContainers: 4, minimumPacks: 2, prices: [{ fromPacks: 1, packPriceMinor: 700 }] }),
    ],
    most: 44,
    latest: 3,
  },
};

describe('the first order', () => {
  for (const [name, problem] of Object.entries(problems)) {
    it(
      `costs no more than 1 % above the best of all quantities and days: ${name}`,
      () => {
        const { chosen, at } = decided(problem);
        const { least, ofChosen, tried, best } = exhausted(problem, chosen, at);
        expect(tried).toBeGreaterThan(40);
        expect(least).toBeGreaterThan(0);
        if (isSoak) console.log(name, at, { best, least, ofChosen, above: ofChosen / least - 1 });
        expect(ofChosen).toBeLessThanOrEqual(least * 1.01);
      },
      isSoak ? 3_600_000 : 60_000,
    );
  }
});

function decided(problem: SampleItem): { chosen: WeighedOffer; at: Candidate } {
  const facts = itemFacts({ ...problem, paths: 2_000, seed: 11 });
  const { draws, stock, horizonDays, offers, settings } = facts;
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const [offer] = offers;
  if (offer === undefined) throw new Error('A problem has an offer.');
  const { prices, packContainers, unitsEach } = offer.replenishment;
  const lowest = Math.min(...prices.map(({ packPriceMinor }) => packPriceMinor));
  const unitMinor = lowest / packContainers / unitsEach;
  const rates = { unitMinor, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
  const nothing = new Simulation(stock, null, draws, rates, horizon).evaluate(orderNothing);
  const { weighed } = weighOffers(facts, settings, offers, unitMinor, 1, nothing);
  const [chosen] = weighed;
  if (chosen === undefined) throw new Error('No offer was weighed.');
  const found = bestOrderOf(facts, chosen);
  return { chosen: found, at: found.best };
}

/** Tries all of them on new paths. */
function exhausted(
  problem: SampleItem & { most: number; latest: number },
  chosen: WeighedOffer,
  at: Candidate,
): { least: number; ofChosen: number; tried: number; best: Candidate | undefined } {
  const { offer, orderDays } = chosen;
  const candidates: Candidate[] = [at];
  for (const [dayIndex, day] of orderDays.entries()) {
    if (day > problem.latest) break;
    for (let packs = Math.max(1, offer.replenishment.minimumPacks); packs <= problem.most; packs++) {
      candidates.push({ dayIndex, packs });
    }
  }
  const first = costsOf(problem, chosen, candidates, firstPaths, 90_000);
  if (lastPaths === 0) return { ...leastOf(candidates, first), tried: candidates.length };
  const limit = Math.min(...first) * stillPossible;
  const possible = candidates.filter((_, index) => index === 0 || (first[index] ?? 0) <= limit);
  const last = costsOf(problem, chosen, possible, lastPaths, 190_000);
  return { ...leastOf(possible, last), tried: candidates.length };
}

/** Expected costs by the same later orders and the same rates. */
function costsOf(
  problem: SampleItem,
  { base, rates, offer, search }: WeighedOffer,
  candidates: readonly Candidate[],
  allPaths: number,
  seed: number,
): Float64Array {
  const facts = itemFacts({ ...problem, paths: 1 });
  const costs = new Float64Array(candidates.length);
  const horizon = { days: facts.horizonDays, tailDays: facts.demand.days - facts.horizonDays };
  for (let done = 0, part = 0; done < allPaths; done += pathsAtOnce, part++) {
    const paths = Math.min(pathsAtOnce, allPaths - done);
    const draws = drawDemand(facts.demand, { paths, seed: seed + part });
    const simulation = new Simulation(facts.stock, offer.replenishment, draws, rates, horizon);
    for (const [index, candidate] of candidates.entries()) {
      const outcome = simulation.evaluate(search.policy(candidate));
      costs[index] = (costs[index] ?? 0) + (totalCostMinor(outcome, rates, base.left) * paths) / allPaths;
    }
  }
  return costs;
}

function leastOf(candidates: readonly Candidate[], costs: Float64Array) {
  const least = Math.min(...costs);
  return { least, ofChosen: costs[0] ?? 0, best: candidates[costs.indexOf(least)] };
}
