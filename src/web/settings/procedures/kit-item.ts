import type { ConfigurationView } from '../../../catalogue/configurations.views.js';
import type { KitItemView } from '../../../sessions/kit-lists.views.js';
import type { Texts } from '../../texts/en/english.js';

type Pool = Pick<ConfigurationView, 'keys' | 'products'>;

/** What a line of a kit list asks for, in words. */
export function wordsOfItem(
  { productName, configuration }: Pick<KitItemView, 'productName' | 'configuration'>,
  pools: readonly Pool[],
  texts: Texts,
): string {
  if (configuration === null) return productName ?? '';
  const pool = pools.find(({ keys }) => keys.includes(configuration));
  return texts.procedures.anyOf(pool === undefined ? configuration : nameOfPool(pool));
}

/** By the notation that its cartridges share, else by one of them. */
export function nameOfPool({ products }: Pick<ConfigurationView, 'products'>): string {
  const notations = [...new Set(products.flatMap(({ notation }) => notation ?? []))];
  return notations.length > 0 ? notations.join(', ') : (products[0]?.name ?? '');
}
