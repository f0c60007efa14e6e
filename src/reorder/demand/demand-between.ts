import type { DemandModel, ExpectedUse } from './demand-model.js';

/**
 * The part of a demand that falls on some of its days.
 *
 * @param from the first of them
 * @param until the first one that is no more of them
 */
export function demandBetween(model: DemandModel, from: number, until: number): DemandModel {
  const { days, expected, unforeseen } = model;
  if (from <= 0 && until >= days) return model;
  const isWithin = (day: number) => day >= from && day < until;
  return {
    days,
    expected: expected.flatMap((use): ExpectedUse[] => {
      const weights = use.dayWeights.map((weight, index) => (isWithin(use.firstDay + index) ? weight : 0));
      const share = weights.reduce((sum, weight) => sum + weight, 0);
      if (!(share > 1e-9)) return [];
      const chance = Math.min(1, use.chance * share);
      return [{ ...use, chance, dayWeights: weights.map((weight) => weight / share) }];
    }),
    unforeseen: unforeseen
      .map((use) => ({
        ...use,
        unknownShares: use.unknownShares.map((share, day) => (isWithin(day) ? share : 0)),
      }))
      .filter(({ unknownShares }) => unknownShares.some((share) => share > 0)),
  };
}
