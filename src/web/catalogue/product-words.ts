import { productLabel } from '../../catalogue/product-label.js';
import type { ProductView } from '../../catalogue/products.views.js';

/** A product as it is called on the shelf: maker, name, and shade or notation. */
export function wordsOfProduct({
  makerName,
  name,
  shade,
  notation,
}: Pick<ProductView, 'makerName' | 'name' | 'shade' | 'notation'>): string {
  const label = productLabel({ makerName, productName: name, shade });
  return notation === null || label.includes(notation) ? label : `${label} ${notation}`;
}
