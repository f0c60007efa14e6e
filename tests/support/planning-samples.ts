import type { ItemDecisionFacts, ItemOffer } from '../../src/reorder/decision/decision-facts.js';
import type { DemandModel } from '../../src/reorder/demand/demand-model.js';
import { drawDemand } from '../../src/reorder/projection/demand-draws.js';
import { type Batch, NEVER, type Replenishment } from '../../src/reorder/projection/item-facts.js';

/** What a sample says of itself; the rest is usual: a needle used every day but on closed days, ordered any day. */
export interface SampleItem {
  unit?: 'pieces' | 'microlitres';
  plannedOn?: string;
  days?: number;
  horizonDays?: number;
  usesPerWeek?: number;
  dispersion?: number;
  amounts?: { amounts: number[]; weights: number[] };
  /** Share of needs that is not known so many days ahead; by day, the last one for all later days. */
  unknownShares?: number[];
  expected?: DemandModel['expected'];
  batches?: Batch[];
  onTheWay?: ItemDecisionFacts['stock']['onTheWay'];
  openedLifeDays?: number;
  onHoldUnits?: number;
  offers?: ItemOffer[];
  settings?: Partial<ItemDecisionFacts['settings']>;
  paths?: number;
  seed?: number;
}

export function demandOf(sample: SampleItem): DemandModel {
  const { days = 240, usesPerWeek = 7, dispersion = 1, unknownShares = [1] } = sample;
  const amount = sample.amounts ?? { amounts: [1], weights: [1] };
  return {
    days,
    expected: sample.expected ?? [],
    unforeseen:
      usesPerWeek > 0
        ? [
            {
              components: [
                {
                  method: 'simple smoothing',
                  weight: 1,
                  kind: 'negative binomial',
                  mean: usesPerWeek,
                  dispersion,
                },
              ],
              periodDays: 7,
              dayShares: new Float64Array(days).fill(1 / 7),
              unknownShares: Float64Array.from(
                { length: days },
                (_, day) => unknownShares[Math.min(day, unknownShares.length - 1)] ?? 1,
              ),
              amount,
            },
          ]
        : [],
  };
}

export function replenishmentOf(given: Partial<Replenishment> & { days?: number } = {}): Replenishment {
  const { days = 1_200, ...rest } = given;
  return {
    packContainers: 20,
    unitsEach: 1,
    minimumPacks: 1,
    prices: [{ fromPacks: 1, packPriceMinor: 3_000 }],
    leadTime: { days: [3, 5, 8], weights: [0.2, 0.5, 0.3] },
    nextOrderDay: Int32Array.from({ length: days }, (_, day) => day),
    lifeDays: NEVER,
    ...rest,
  };
}

export function offerOf(given: Partial<Replenishment> = {}, name = 'first'): ItemOffer {
  return {
    offerId: `offer-${name}`,
    productId: `product-${name}`,
    supplierId: `supplier-${name}`,
    replenishment: replenishmentOf(given),
    deliveryCostMinor: 900,
    linesPerDelivery: 3,
  };
}

/** Order days only on some weekdays; day 0 is a Thursday in the usual sample. */
export function orderDaysEvery(step: number, first = 0, days = 1_200): Int32Array {
  return Int32Array.from({ length: days }, (_, day) => {
    if (day <= first) return first;
    return first + Math.ceil((day - first) / step) * step;
  });
}

export function itemFacts(sample: SampleItem = {}): ItemDecisionFacts {
  const demand = demandOf(sample);
  const { paths = 600, seed = 7, horizonDays = 120 } = sample;
  return {
    item: { kind: 'product', key: 'sample', unit: sample.unit ?? 'pieces' },
    plannedOn: sample.plannedOn ?? '2026-11-26',
    stock: {
      batches: sample.batches ?? [],
      onTheWay: sample.onTheWay ?? [],
      openedLifeDays: sample.openedLifeDays ?? NEVER,
    },
    onHoldUnits: sample.onHoldUnits ?? 0,
    offers: sample.offers ?? [offerOf()],
    settings: {
      serviceTargetPerMille: 950,
      shortageCostMinor: null,
      orderCostMinor: 500,
      holdingPerYearPerMille: 100,
      rangeChoice: null,
      ...sample.settings,
    },
    demand,
    draws: drawDemand(demand, { paths, seed }),
    horizonDays,
  };
}

export function sealed(containers: number, unitsEach: number, lastDay: number = NEVER): Batch {
  return { containers, unitsEach, lastDay, opened: false, costEachMinor: null };
}
