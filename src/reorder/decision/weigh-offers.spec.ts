import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf, sealed } from '../../../tests/support/planning-samples.js';
import { Simulation } from '../projection/simulate.js';
import { orderNothing } from './batch-cost.js';
import { bestOrderOf, weighOffers } from './weigh-offers.js';

const free = { unitMinor: 0, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };

function weighed(paths: number, usesPerWeek: number) {
  const offers = [
    offerOf({ packContainers: 20, prices: [{ fromPacks: 1, packPriceMinor: 3_000 }] }, 'boxes'),
    offerOf({ packContainers: 1, prices: [{ fromPacks: 1, packPriceMinor: 152 }], lifeDays: 60 }, 'pieces'),
  ];
  const facts = itemFacts({ usesPerWeek, dispersion: 2, batches: [sealed(9, 1)], offers, paths });
  const { draws, stock, settings, horizonDays } = facts;
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const nothing = new Simulation(stock, null, draws, free, horizon).evaluate(orderNothing);
  return { facts, offers: weighOffers(facts, settings, offers, 150, 1, nothing).weighed };
}

describe('offers', () => {
  it('are weighed by the best order of each: no neighbour of any costs less on the same paths', () => {
    const { offers } = weighed(1_000, 9);
    expect(offers).toHaveLength(2);
    expect(offers[0]?.best.costMinor).toBeLessThanOrEqual(offers[1]?.best.costMinor ?? 0);
    for (const { search, best, base } of offers) {
      for (const [days, packs] of [
        [0, 1],
        [0, -1],
        [1, 0],
        [-1, 0],
      ] as const) {
        const neighbour = { dayIndex: best.dayIndex + days, packs: best.packs + packs };
        if (neighbour.dayIndex < 0 || neighbour.packs < base.leastPacks) continue;
        expect(search.trials.of(neighbour, 1_000).costMinor).toBeGreaterThanOrEqual(best.costMinor - 1e-9);
      }
    }
  });

  it('are looked at on more paths only where so many cannot tell the best order from others', () => {
    const few = weighed(100, 1);
    const [offer] = few.offers;
    if (offer === undefined) throw new Error('There are offers.');
    expect(offer.search.isUncertain(offer.best)).toBe(true);
    const found = bestOrderOf(few.facts, offer);
    const { paths } = found.search.simulation.draws;
    expect(paths).toBeGreaterThan(100);
    expect(found.search.trials.candidates).toBeGreaterThanOrEqual(offer.search.trials.candidates);
    expect(found.best).toBe(found.search.trials.of(found.best, paths));
    // Nothing is drawn again once it is certain, or as many as there may be were drawn.
    const again = bestOrderOf(few.facts, found);
    expect(again.search.simulation.draws.paths).toBe(paths);
  });
});
