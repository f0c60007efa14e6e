import type { DecisionSettings, ItemOffer } from './decision-facts.js';
import type { DecisionAssumption } from './decision-notes.js';

/** Far above anything a studio pays. */
const mostMinor = 1_000_000_000;
const mostHoldingPerMille = 10_000;

/** Settings as they are reckoned with; what is out of range is brought to its edge, and each time it is said. */
export function settingsWithinBounds(settings: DecisionSettings): {
  settings: DecisionSettings;
  assumptions: DecisionAssumption[];
} {
  const assumptions: DecisionAssumption[] = [];
  const within = (setting: string, given: number, most: number, otherwise = 0): number => {
    const taken = Number.isFinite(given) ? Math.min(Math.max(given, 0), most) : otherwise;
    if (taken !== given) {
      assumptions.push({ code: 'setting out of range', setting, given: showable(given), taken });
    }
    return taken;
  };
  const { shortageCostMinor } = settings;
  return {
    settings: {
      serviceTargetPerMille: within('serviceTargetPerMille', settings.serviceTargetPerMille, 1_000, 950),
      shortageCostMinor:
        shortageCostMinor === null ? null : within('shortageCostMinor', shortageCostMinor, mostMinor),
      orderCostMinor: within('orderCostMinor', settings.orderCostMinor, mostMinor),
      holdingPerYearPerMille: within(
        'holdingPerYearPerMille',
        settings.holdingPerYearPerMille,
        mostHoldingPerMille,
      ),
      rangeChoice: settings.rangeChoice,
    },
    assumptions,
  };
}

/** An offer that can be reckoned with: at least one pack, container and unit, no negative price. */
export function offerWithinBounds(offer: ItemOffer): { offer: ItemOffer; assumptions: DecisionAssumption[] } {
  const assumptions: DecisionAssumption[] = [];
  const within = (setting: string, given: number, least: number, most: number): number => {
    const whole = Number.isFinite(given) ? Math.round(given) : least;
    const taken = Math.min(Math.max(whole, least), most);
    if (taken !== given) {
      assumptions.push({ code: 'setting out of range', setting, given: showable(given), taken });
    }
    return taken;
  };
  const { replenishment } = offer;
  const prices = replenishment.prices.map(({ fromPacks, packPriceMinor }) => ({
    fromPacks: within('fromPacks', fromPacks, 1, 1_000_000),
    packPriceMinor: within('packPriceMinor', packPriceMinor, 0, mostMinor),
  }));
  if (prices.length === 0) assumptions.push({ code: 'unit cost unknown' });
  return {
    offer: {
      ...offer,
      deliveryCostMinor: within('deliveryCostMinor', offer.deliveryCostMinor, 0, mostMinor),
      linesPerDelivery: Math.max(1, Number.isFinite(offer.linesPerDelivery) ? offer.linesPerDelivery : 1),
      replenishment: {
        ...replenishment,
        packContainers: within('packContainers', replenishment.packContainers, 1, 100_000),
        unitsEach: within('unitsEach', replenishment.unitsEach, 1, 1_000_000_000),
        minimumPacks: within('minimumPacks', replenishment.minimumPacks, 1, 100_000),
        prices: prices.length > 0 ? prices : [{ fromPacks: 1, packPriceMinor: 0 }],
      },
    },
    assumptions,
  };
}

function showable(given: number): number {
  return Number.isFinite(given) ? given : 0;
}
