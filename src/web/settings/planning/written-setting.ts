import type { PlanningAssumptionView } from '../../../reorder/settings/planning-settings.views.js';
import { writtenPerMille } from '../../plans/figures/written-chance.js';
import { writtenMoney } from '../../plans/figures/written-money.js';
import type { Texts } from '../../texts/en/english.js';

/** A value of planning as it is read: a share in per cent, money, or days. */
export function writtenSetting(
  { code, value }: Pick<PlanningAssumptionView, 'code' | 'value'>,
  currency: string,
  texts: Texts,
): string {
  switch (code) {
    case 'orderCostMinor':
    case 'deliveryCostMinor':
      return writtenMoney(value, currency, texts.language);
    case 'leadTimeDays':
    case 'lifeOnArrivalDays':
      return texts.suppliers.days(value);
    default:
      return writtenPerMille(value, texts.language);
  }
}
