import type { DeliveryView } from '../../../stock/deliveries.views.js';
import type { Texts } from '../../texts/en/english.js';
import { writtenDay, writtenInstant } from '../../texts/written-dates.js';

/** By when it came: there may be neither a supplier nor a number. */
export function nameOfDelivery({ occurredAt }: DeliveryView, { language }: Texts): string {
  return writtenInstant(occurredAt, language);
}

export function factsOfDelivery(
  { origin, supplierName, reference, orderedOn }: DeliveryView,
  { receiving: { origins }, deliveries: words, language }: Texts,
): string[] {
  return [
    origins[origin],
    supplierName !== null && words.from(supplierName),
    reference !== null && words.reference(reference),
    orderedOn !== null && words.orderedOn(writtenDay(orderedOn, language)),
  ].filter((fact) => fact !== false);
}
