import type { ExpectedCost, Outlook } from '../decision/item-decision-result.js';
import type { ComputedItem } from './item-line.js';

/**
 * What a line holds whose item could not be computed: nothing is known of it and nothing ordered, so that the others are
 * there.
 *
 * @param plannedOn ISO day
 */
export function uncomputedItem(plannedOn: string): ComputedItem {
  const outlook: Outlook = {
    until: plannedOn,
    shortChance: 0,
    shortOn: { early: null, middle: null, late: null },
    expectedUnmetUnits: 0,
    expectedWasteUnits: 0,
    expectedWasteMinor: 0,
    coverDays: 0,
  };
  const cost: ExpectedCost = {
    totalMinor: 0,
    wasteMinor: 0,
    shortageMinor: 0,
    orderMinor: 0,
    holdingMinor: 0,
    priceMinor: 0,
    leftMinor: 0,
    standardErrorMinor: 0,
  };
  return {
    decision: {
      decision: 'cannot be ordered',
      order: null,
      without: outlook,
      after: outlook,
      costs: { chosen: cost, neighbours: [], nothing: cost },
      offers: [],
      basketFigures: null,
      range: null,
      reorderPoint: null,
      shortage: {
        from: 'service target',
        minorPerUnit: 0,
        minorPerNeed: 0,
        usualUnitsPerNeed: 0,
        oneTooMany: null,
      },
      effort: { candidates: 0, coarsePaths: 0, paths: 0, horizonDays: 0, tailDays: 0 },
      notes: [],
      assumptions: [],
      reasons: [],
      policy: null,
    },
    demand: { weeks: [], class: 'no demand', adi: null, cv2: null, methods: [], origins: 0, unitsOfUse: 0 },
    demandAssumptions: [],
    fanWithout: null,
    fanAfter: null,
  };
}
