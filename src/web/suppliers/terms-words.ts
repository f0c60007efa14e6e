import type { SupplierTermsView } from '../../reorder/supply/supplier-terms.views.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import type { Texts } from '../texts/en/english.js';

/** `Mon, Thu`. @param days ISO weekdays, 1 Monday to 7 Sunday */
export function wordsOfWeekdays(
  days: readonly number[],
  language: string,
  weekday: 'short' | 'long',
): string[] {
  const format = new Intl.DateTimeFormat(language, { weekday, timeZone: 'UTC' });
  // 1 January 2024 was a Monday.
  return days.map((day) => format.format(new Date(Date.UTC(2024, 0, day))));
}

/** What is known of a supplier's terms, in a few words; how long orders take always. */
export function wordsOfTerms(terms: SupplierTermsView, texts: Texts): string {
  const words = texts.suppliers;
  const money = (minor: number) => writtenMoney(minor, terms.currency, texts.language);
  const { orderWeekdays, minimumOrderMinor, deliveryCostMinor, freeDeliveryFromMinor, leadTime } = terms;
  return [
    words.takes(leadTime.medianDays, leadTime.days95),
    orderWeekdays.length > 0 &&
      words.ordersOn(wordsOfWeekdays(orderWeekdays, texts.language, 'short').join(', ')),
    minimumOrderMinor !== null && words.minimumOf(money(minimumOrderMinor)),
    deliveryCostMinor !== null && words.deliveryOf(money(deliveryCostMinor)),
    freeDeliveryFromMinor !== null && words.freeFrom(money(freeDeliveryFromMinor)),
  ]
    .filter((part) => part !== false)
    .join(', ');
}
