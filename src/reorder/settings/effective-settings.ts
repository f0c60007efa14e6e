import type { RangeChoice } from '../decision/range-choice.js';
import { planningAssumptions } from './planning-assumptions.js';

/** A value that is used, and whether somebody set it. */
export interface EffectiveNumber {
  value: number;
  assumed: boolean;
}

/** What the studio set; null: it is assumed. */
export interface StudioSettings {
  serviceTargetPerMille: number | null;
  orderCostMinor: number | null;
  holdingPerYearPerMille: number | null;
  returnPerMille: number | null;
}

export type EffectiveSettings = { [Name in keyof StudioSettings]: EffectiveNumber };

/** What was set for one item; null: as the studio plans. */
export interface ItemSettings {
  serviceTargetPerMille: number | null;
  shortageCostMinor: number | null;
  rangeChoice: RangeChoice | null;
  replacesProductId: string | null;
}

export interface EffectiveItemSettings {
  serviceTargetPerMille: EffectiveNumber;
  /** Cost of one need that is not met; null: it follows from the target. */
  shortageCostMinor: number | null;
  /** Null: the plan decides. */
  rangeChoice: RangeChoice | null;
  /** Null: it takes the place of nothing. */
  replacesProductId: string | null;
}

/** @param settings null: nothing was set yet */
export function effectiveSettings(settings: StudioSettings | null): EffectiveSettings {
  const effective = (name: keyof StudioSettings): EffectiveNumber => {
    const value = settings?.[name] ?? null;
    return value === null
      ? { value: planningAssumptions[name].value, assumed: true }
      : { value, assumed: false };
  };
  return {
    serviceTargetPerMille: effective('serviceTargetPerMille'),
    orderCostMinor: effective('orderCostMinor'),
    holdingPerYearPerMille: effective('holdingPerYearPerMille'),
    returnPerMille: effective('returnPerMille'),
  };
}

/** @param item null: nothing was set for it */
export function effectiveItemSettings(
  studio: EffectiveSettings,
  item: ItemSettings | null,
): EffectiveItemSettings {
  const target = item?.serviceTargetPerMille ?? null;
  return {
    serviceTargetPerMille: target === null ? studio.serviceTargetPerMille : { value: target, assumed: false },
    shortageCostMinor: item?.shortageCostMinor ?? null,
    rangeChoice: item?.rangeChoice ?? null,
    replacesProductId: item?.replacesProductId ?? null,
  };
}
