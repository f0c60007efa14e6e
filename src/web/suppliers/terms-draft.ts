import type { SupplierTermsView } from '../../reorder/supply/supplier-terms.views.js';
import { majorText, minorUnits } from '../plans/figures/minor-units.js';
import type { TermsContent } from './suppliers.requests.js';

/** ISO weekdays, from Monday. */
export const weekdays = [1, 2, 3, 4, 5, 6, 7] as const;
type Weekday = (typeof weekdays)[number];

/** Terms as they are written: numbers and amounts as typed, empty where nothing is known. */
export type TermsDraft = { [Day in Weekday as `weekday${Day}`]: boolean } & {
  quotedLeadTimeDays: string;
  minimumOrderMinor: string;
  deliveryCostMinor: string;
  freeDeliveryFromMinor: string;
  mailAddress: string;
  customerNumber: string;
};

export type AmountField = 'minimumOrderMinor' | 'deliveryCostMinor' | 'freeDeliveryFromMinor';

export function draftOfTerms(terms: SupplierTermsView, currency: string, language: string): TermsDraft {
  // What is in another currency than the studio's by now has to be written anew.
  const amount = (minor: number | null) =>
    minor === null || terms.currency !== currency ? '' : majorText(minor, currency, language);
  const on = (day: Weekday) => terms.orderWeekdays.includes(day);
  return {
    quotedLeadTimeDays: terms.quotedLeadTimeDays === null ? '' : String(terms.quotedLeadTimeDays),
    ...{ weekday1: on(1), weekday2: on(2), weekday3: on(3), weekday4: on(4), weekday5: on(5) },
    ...{ weekday6: on(6), weekday7: on(7) },
    minimumOrderMinor: amount(terms.minimumOrderMinor),
    deliveryCostMinor: amount(terms.deliveryCostMinor),
    freeDeliveryFromMinor: amount(terms.freeDeliveryFromMinor),
    mailAddress: terms.contact?.mailAddress ?? '',
    customerNumber: terms.contact?.customerNumber ?? '',
  };
}

/**
 * As they are handed in. Where orders are sent is left out unless it was changed.
 * @returns the amounts that are none of this currency, when there are any
 */
export function termsOfDraft(
  draft: TermsDraft,
  currency: string,
  version: number | null,
  changes: Partial<TermsDraft>,
): TermsContent | { unreadable: AmountField[] } {
  const amounts = {
    minimumOrderMinor: minorUnits(draft.minimumOrderMinor, currency),
    deliveryCostMinor: minorUnits(draft.deliveryCostMinor, currency),
    freeDeliveryFromMinor: minorUnits(draft.freeDeliveryFromMinor, currency),
  };
  const unreadable = (Object.keys(amounts) as AmountField[]).filter((field) => amounts[field] === undefined);
  if (unreadable.length > 0) return { unreadable };
  const text = (written: string) => (written.trim() === '' ? null : written.trim());
  return {
    quotedLeadTimeDays: draft.quotedLeadTimeDays === '' ? null : Number(draft.quotedLeadTimeDays),
    orderWeekdays: weekdays.filter((day) => draft[`weekday${day}`]),
    minimumOrderMinor: amounts.minimumOrderMinor ?? null,
    deliveryCostMinor: amounts.deliveryCostMinor ?? null,
    freeDeliveryFromMinor: amounts.freeDeliveryFromMinor ?? null,
    ...((changes.mailAddress !== undefined || changes.customerNumber !== undefined) && {
      contact: { mailAddress: text(draft.mailAddress), customerNumber: text(draft.customerNumber) },
    }),
    ...(version !== null && { version }),
  };
}
