import type { DeliveryView } from '../../../stock/deliveries.views.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import type { Texts } from '../../texts/en/english.js';
import { writtenDay } from '../../texts/written-dates.js';

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

const mostNamed = 3;

/** The first products of its lines, by which it is known again. */
export function productsOf({ lines }: DeliveryView): string {
  const names = [
    ...new Set(lines.map((line) => wordsOfProduct({ ...line, name: line.productName, notation: null }))),
  ];
  return names.slice(0, mostNamed).join(' · ') + (names.length > mostNamed ? ' …' : '');
}
