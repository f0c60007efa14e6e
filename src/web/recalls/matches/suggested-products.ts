import { productLabel } from '../../../catalogue/product-label.js';
import type { MatchedLotView } from '../../../recalls/recalls.views.js';

export interface SuggestedProduct {
  id: string;
  name: string;
}

/** More to choose from would be no help; the register can be searched. */
const mostSuggested = 4;

/** Products of the register whose lots an item of a scope meets, in the order in which they are met. */
export function suggestedProducts(
  lots: readonly Pick<MatchedLotView, 'itemIndex' | 'productId' | 'makerName' | 'productName' | 'shade'>[],
  itemIndex: number,
): SuggestedProduct[] {
  const found = new Map<string, string>();
  for (const lot of lots) {
    if (lot.itemIndex === itemIndex && !found.has(lot.productId)) found.set(lot.productId, productLabel(lot));
  }
  return [...found].slice(0, mostSuggested).map(([id, name]) => ({ id, name }));
}
