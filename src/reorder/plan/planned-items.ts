import { type ProductName, productLabel } from '../../catalogue/product-label.js';
import type { Item } from '../item.js';

/** A product as planning looks at it. */
export interface PlannableProduct extends ProductName {
  productId: string;
  kind: 'pigment' | 'cartridge' | 'consumable';
  stockForm: 'container' | 'pieces';
  volumeMicrolitres: number | null;
  /** ISO 8601; null: the label gives none. */
  openedLife: string | null;
  archived: boolean;
}

/** Cartridges that stand for each other. */
export interface Pool {
  productIds: readonly string[];
  poolKeys: readonly string[];
}

export interface PlannedItem extends Item {
  /** As people call it. */
  label: string;
  /** All that it is known by, its own key first: the product, or every configuration that is pooled. */
  keys: readonly string[];
  products: PlannableProduct[];
}

/** What names an item among all. */
export function itemName({ kind, key }: Pick<Item, 'kind' | 'key'>): string {
  return `${kind} ${key}`;
}

/**
 * What is planned: cartridges of one configuration together, everything else product by product. An item is left out
 * that nobody used, has, offers, ordered or lists.
 *
 * @param concerned products, and keys of configurations, that somebody has to do with
 */
export function plannedItems(
  products: readonly PlannableProduct[],
  pools: readonly Pool[],
  concerned: ReadonlySet<string>,
): { items: PlannedItem[]; leftOut: number } {
  const byId = new Map(products.map((product) => [product.productId, product]));
  const pooled = new Set<string>();
  const items: PlannedItem[] = [];
  let leftOut = 0;
  const add = (item: PlannedItem, isConcerned: boolean) => {
    if (isConcerned) items.push(item);
    else leftOut += 1;
  };
  for (const { productIds, poolKeys } of pools) {
    const [key] = poolKeys;
    const members = productIds.flatMap((id) => byId.get(id) ?? []);
    if (key === undefined || members.length === 0) continue;
    for (const { productId } of members) pooled.add(productId);
    const isConcerned =
      poolKeys.some((each) => concerned.has(each)) ||
      members.some(({ productId }) => concerned.has(productId));
    add(
      { kind: 'configuration', key, unit: 'pieces', label: key, keys: poolKeys, products: members },
      isConcerned,
    );
  }
  for (const product of products) {
    const { productId, stockForm, volumeMicrolitres } = product;
    if (pooled.has(productId)) continue;
    // Of a container whose volume nobody knows only the containers can be counted.
    const unit = stockForm === 'container' && volumeMicrolitres !== null ? 'microlitres' : 'pieces';
    const label = productLabel(product);
    add(
      { kind: 'product', key: productId, unit, label, keys: [productId], products: [product] },
      concerned.has(productId),
    );
  }
  return { items, leftOut };
}
