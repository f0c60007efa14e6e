import { type RangeChoice, rangeChoices } from '../../../reorder/decision/range-choice.js';
import type { ItemPlanningView } from '../../../reorder/settings/planning-settings.views.js';
import { majorText, minorUnits } from '../figures/minor-units.js';

/** How an item is planned, as it is written; empty: as the studio plans. */
export interface ItemPlanningDraft {
  /** Per cent. */
  serviceTarget: string;
  /** In whole units of the currency, as `250` or `12.50`. */
  shortageCost: string;
  rangeChoice: string;
}

type Settings = Pick<ItemPlanningView, 'serviceTargetPerMille' | 'shortageCostMinor' | 'rangeChoice'>;

export function draftOfPlanning(
  planning: Settings | null,
  currency: string,
  language: string,
): ItemPlanningDraft {
  const { serviceTargetPerMille = null, shortageCostMinor = null, rangeChoice = null } = planning ?? {};
  return {
    serviceTarget: serviceTargetPerMille === null ? '' : String(serviceTargetPerMille / 10),
    shortageCost: shortageCostMinor === null ? '' : majorText(shortageCostMinor, currency, language),
    rangeChoice: rangeChoice ?? '',
  };
}

/** What would be saved; undefined where a field says no amount that can be. */
export function planningOfDraft(draft: ItemPlanningDraft, currency: string): Settings | undefined {
  const target = perMille(draft.serviceTarget);
  const shortage = minorUnits(draft.shortageCost, currency);
  if (target === undefined || shortage === undefined) return undefined;
  return {
    serviceTargetPerMille: target,
    shortageCostMinor: shortage,
    rangeChoice: rangeChoices.find((choice): choice is RangeChoice => choice === draft.rangeChoice) ?? null,
  };
}

/** @returns null for nothing, undefined for what is no share */
function perMille(percent: string): number | null | undefined {
  const text = percent.trim().replace(',', '.');
  if (text === '') return null;
  const number = Math.round(Number(text) * 10);
  return Number.isFinite(number) && number >= 0 && number <= 1000 ? number : undefined;
}
