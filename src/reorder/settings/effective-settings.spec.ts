import { expect, it } from 'vitest';
import { effectiveItemSettings, effectiveSettings } from './effective-settings.js';
import { planningAssumptions, usedAssumption } from './planning-assumptions.js';

const nothing = {
  serviceTargetPerMille: null,
  orderCostMinor: null,
  holdingPerYearPerMille: null,
  returnPerMille: null,
};

it('assumes what nobody set, and says so', () => {
  const assumed = (value: number) => ({ value, assumed: true });
  const expected = {
    serviceTargetPerMille: assumed(950),
    orderCostMinor: assumed(planningAssumptions.orderCostMinor.value),
    holdingPerYearPerMille: assumed(100),
    returnPerMille: assumed(700),
  };
  expect(effectiveSettings(null)).toEqual(expected);
  expect(effectiveSettings(nothing)).toEqual(expected);
});

it('takes what was set, nothing and everything included', () => {
  const set = { ...nothing, serviceTargetPerMille: 0, returnPerMille: 1000, orderCostMinor: 0 };
  expect(effectiveSettings(set)).toMatchObject({
    serviceTargetPerMille: { value: 0, assumed: false },
    returnPerMille: { value: 1000, assumed: false },
    orderCostMinor: { value: 0, assumed: false },
    holdingPerYearPerMille: { assumed: true },
  });
});

it('plans an item as the studio where nothing else is said of it', () => {
  const studio = effectiveSettings(null);
  expect(effectiveItemSettings(studio, null)).toEqual({
    serviceTargetPerMille: { value: 950, assumed: true },
    shortageCostMinor: null,
    rangeChoice: null,
    replacesProductId: null,
  });
  const item = {
    serviceTargetPerMille: 1000,
    shortageCostMinor: 0,
    rangeChoice: 'let run out',
    replacesProductId: 'old',
  } as const;
  expect(effectiveItemSettings(studio, item)).toEqual({
    ...item,
    serviceTargetPerMille: { value: 1000, assumed: false },
  });
});

it('gives each assumption with why it is what it is', () => {
  expect(usedAssumption('serviceTargetPerMille')).toEqual({
    code: 'serviceTargetPerMille',
    value: 950,
    basis: 'common practice, no source',
  });
  for (const { value, basis } of Object.values(planningAssumptions)) {
    expect(Number.isSafeInteger(value)).toBe(true);
    expect(value).toBeGreaterThanOrEqual(0);
    expect(['common practice, no source', 'assumption']).toContain(basis);
  }
});
