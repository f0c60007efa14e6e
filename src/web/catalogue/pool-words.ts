import type { PooledProductView } from '../../catalogue/configurations.views.js';
import { wordsOfProduct } from './product-words.js';

export function nameInPool(product: Pick<PooledProductView, 'makerName' | 'name' | 'notation'>): string {
  return wordsOfProduct({ ...product, shade: null });
}
