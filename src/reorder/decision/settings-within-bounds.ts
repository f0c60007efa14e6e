import type { DecisionSettings, ItemOffer } from './decision-facts.js';
import type { DecisionAssumption } from './decision-notes.js';

/** Far above anything a studio pays. */
const mostMinor = 1_000_000_000;
const mostHoldingPerMille = 10_000;
const mostPacks = 100_000;
/** Containers of an order, and units of a container: more does not fit where it is counted. */
const mostCounted = 1_000_000_000;

/** Settings as they are reckoned with; what is out of range is brought to its edge, and each time it is said. */
export function settingsWithinBounds(settings: DecisionSettings): {
  settings: DecisionSettings;
  assumptions: DecisionAssumption[];
} {
  const assumptions: DecisionAssumption[] = [];
  const within = boundsOf(assumptions);
  const { shortageCostMinor } = settings;
  return {
    settings: {
      serviceTargetPerMille: within('serviceTargetPerMille', settings.serviceTargetPerMille, 0, 1_000, 950),
      shortageCostMinor:
        shortageCostMinor === null ? null : within('shortageCostMinor', shortageCostMinor, 0, mostMinor),
      orderCostMinor: within('orderCostMinor', settings.orderCostMinor, 0, mostMinor),
      holdingPerYearPerMille: within(
        'holdingPerYearPerMille',
        settings.holdingPerYearPerMille,
        0,
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
  const within = boundsOf(assumptions);
  const whole = boundsOf(assumptions, Math.round);
  const { replenishment } = offer;
  const prices = replenishment.prices.map(({ fromPacks, packPriceMinor }) => ({
    fromPacks: whole('fromPacks', fromPacks, 1, 1_000_000),
    packPriceMinor: whole('packPriceMinor', packPriceMinor, 0, mostMinor),
  }));
  if (prices.length === 0) assumptions.push({ code: 'unit cost unknown' });
  const packContainers = whole('packContainers', replenishment.packContainers, 1, mostPacks);
  return {
    offer: {
      ...offer,
      deliveryCostMinor: whole('deliveryCostMinor', offer.deliveryCostMinor, 0, mostMinor),
      linesPerDelivery: within('linesPerDelivery', offer.linesPerDelivery, 1, mostPacks),
      replenishment: {
        ...replenishment,
        packContainers,
        unitsEach: whole('unitsEach', replenishment.unitsEach, 1, mostCounted),
        minimumPacks: whole(
          'minimumPacks',
          replenishment.minimumPacks,
          1,
          Math.min(mostPacks, Math.floor(mostCounted / packContainers)),
        ),
        prices: prices.length > 0 ? prices : [{ fromPacks: 1, packPriceMinor: 0 }],
      },
    },
    assumptions,
  };
}

type Within = (setting: string, given: number, least: number, most: number, otherwise?: number) => number;

/**
 * Brings a number to the nearer edge, and what is none to the last argument, else to the least; each time it is said.
 *
 * @param counted how one within bounds is made one that can be counted with
 */
function boundsOf(
  assumptions: DecisionAssumption[],
  counted: (given: number) => number = (given) => given,
): Within {
  return (setting, given, least, most, otherwise = least) => {
    const isNumber = Number.isFinite(given);
    const taken = isNumber ? Math.min(Math.max(counted(given), least), most) : otherwise;
    if (taken !== given) {
      assumptions.push({ code: 'setting out of range', setting, given: isNumber ? given : 0, taken });
    }
    return taken;
  };
}
