import type { PlanningSettingsView } from '../../../reorder/settings/planning-settings.views.js';
import { majorText, minorUnits } from '../../plans/figures/minor-units.js';
import type { PlanningContent } from './planning.requests.js';

/** How the studio plans, as it is written: shares in per cent, money in whole units; empty where it is assumed. */
export interface PlanningDraft {
  serviceTargetPerMille: string;
  orderCostMinor: string;
  holdingPerYearPerMille: string;
  returnPerMille: string;
}

export function draftOfPlanning(settings: PlanningSettingsView, language: string): PlanningDraft {
  const percent = ({ value, assumed }: { value: number; assumed: boolean }) =>
    assumed ? '' : String(value / 10);
  const { orderCostMinor } = settings;
  return {
    serviceTargetPerMille: percent(settings.serviceTargetPerMille),
    orderCostMinor: orderCostMinor.assumed
      ? ''
      : majorText(orderCostMinor.value, settings.currency, language),
    holdingPerYearPerMille: percent(settings.holdingPerYearPerMille),
    returnPerMille: percent(settings.returnPerMille),
  };
}

/** As it is handed in; undefined when the cost of an order is no amount of the currency. */
export function contentOfPlanning(
  draft: PlanningDraft,
  currency: string,
  version: number | null,
): PlanningContent | undefined {
  const orderCostMinor = minorUnits(draft.orderCostMinor, currency);
  if (orderCostMinor === undefined) return undefined;
  return {
    serviceTargetPerMille: perMille(draft.serviceTargetPerMille),
    orderCostMinor,
    holdingPerYearPerMille: perMille(draft.holdingPerYearPerMille),
    returnPerMille: perMille(draft.returnPerMille),
    ...(version !== null && { version }),
  };
}

function perMille(percent: string): number | null {
  return percent === '' ? null : Math.round(Number(percent) * 10);
}
