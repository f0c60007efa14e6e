import type { PlanningAssumptionView } from '../../../reorder/settings/planning-settings.views.js';
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
      return writtenShare(value, texts.language);
  }
}

/** A share in per cent. @param perMille 1000: all */
export function writtenShare(perMille: number, language: string): string {
  return new Intl.NumberFormat(language, { style: 'percent', maximumFractionDigits: 1 }).format(
    perMille / 1000,
  );
}
