import { describe, expect, it } from 'vitest';
import { NEVER } from '../projection/item-facts.js';
import { orderBetween, positionOf, usualLevels } from './fixed-levels.js';

const terms = {
  ...{ packContainers: 10, unitsEach: 1, packMinor: 1_000, leadTimeDays: 6, lifeDays: NEVER },
  ...{ orderMinor: 500, shortageMinor: 2_000, holdingMinorPerUnitDay: 0.5, reviewEveryDays: 7 },
};
const morning = (here: number, coming: number, lastDay = 100) => ({
  day: -10,
  batches: [{ containers: here, unitsEach: 1, lastDay, opened: false, costEachMinor: null }],
  onTheWay: [{ units: coming, containers: coming, arrivesOn: 2 }],
  needs: [],
});

describe('fixed levels', () => {
  it('order up to the maximum in whole packs once the minimum is reached', () => {
    const decide = orderBetween({ minimumUnits: 20, maximumUnits: 45 }, terms);
    expect(decide(morning(15, 6))).toBe(0);
    expect(decide(morning(15, 5))).toBe(3);
    expect(decide(morning(0, 0))).toBe(5);
  });

  it('do not count what may not be used any more', () => {
    expect(positionOf(morning(15, 5, -1))).toBe(5);
  });

  it('are set by what was needed before', () => {
    expect(usualLevels(2, terms)).toEqual({ minimumUnits: 39, maximumUnits: 99 });
    expect(usualLevels(0, terms)).toEqual({ minimumUnits: 0, maximumUnits: 10 });
  });
});
