/**
 * Which products of the register an item of a notice means, where that is unmistakable: a person's choice is not
 * anticipated. Where products are chosen, names and GTINs decide nothing more, so that a doubtful choice would narrow.
 */
import { wordsOf } from './known-names.js';
import type { KnownProduct } from './notice-reading.js';

export interface ItemNames {
  makerName: string | null;
  productName: string | null;
  shade: string | null;
  gtins: readonly string[];
}

export interface MeantProducts {
  productIds: string[];
  /** A GTIN of the item that belongs to a product of another name. */
  disagreeingGtin: string | null;
}

/** Words beside a name that say nothing about which product it is. */
const sizes =
  /^(?:\d+(?:[.,]\d+)?(?:ml|g|oz|l|mg|mm|pcs)?|ml|g|oz|l|mm|bottle|bottles|box|boxes|of|the|all|shade|shades|colour|color|pigment|und|and)$/;

/** The products that are meant without doubt: by their GTINs, or by maker and name, and the shade where one is named. */
export function meantProducts(
  item: ItemNames,
  mentioned: readonly KnownProduct[],
  byGtin: ReadonlyMap<string, KnownProduct[]>,
): MeantProducts {
  const none: MeantProducts = { productIds: [], disagreeingGtin: null };
  const numbered = item.gtins.flatMap((gtin) => byGtin.get(gtin) ?? []);
  if (item.gtins.length > 0) {
    if (!item.gtins.every((gtin) => byGtin.has(gtin))) return none;
    const stranger = item.gtins.find((gtin) =>
      (byGtin.get(gtin) ?? []).every((product) => disagrees(item, product)),
    );
    if (stranger !== undefined) return { productIds: [], disagreeingGtin: stranger };
    return { productIds: idsOf(numbered), disagreeingGtin: null };
  }
  return { productIds: idsOf(mentioned.filter((product) => isNamed(item, product))), disagreeingGtin: null };
}

/** Whether the item names another product than the one its GTIN belongs to. */
function disagrees({ productName, shade }: ItemNames, product: KnownProduct): boolean {
  const words = new Set([...wordsOf(productName ?? ''), ...wordsOf(shade ?? '')]);
  if (words.size === 0) return false;
  const own = [
    ...wordsOf(product.makerName),
    ...wordsOf(product.productName),
    ...wordsOf(product.shade ?? ''),
  ];
  const named = productName !== null && !wordsOf(product.productName).every((word) => words.has(word));
  const otherShade =
    shade !== null && product.shade !== null && !wordsOf(shade).some((word) => own.includes(word));
  return named || otherShade;
}

/** Maker, name and shade are the product's, and no word of the item is left over. */
function isNamed({ makerName, productName, shade }: ItemNames, product: KnownProduct): boolean {
  if (makerName === null || productName === null) return false;
  const [maker, name, own] = [
    wordsOf(product.makerName),
    wordsOf(product.productName),
    wordsOf(product.shade ?? ''),
  ];
  const makerWords = wordsOf(makerName);
  if (!maker.every((word) => makerWords.includes(word))) return false;
  const words = wordsOf(productName);
  if (!name.every((word) => words.includes(word))) return false;
  const shadeWords = [
    ...wordsOf(shade ?? ''),
    ...words.filter((word) => own.includes(word) && !name.includes(word)),
  ];
  const saysShade =
    shade !== null ||
    words.some((word) => !name.includes(word) && !maker.includes(word) && !sizes.test(word));
  if (saysShade && (own.length === 0 || !own.every((word) => shadeWords.includes(word)))) return false;
  const allowed = new Set([...maker, ...name, ...own]);
  return [...words, ...wordsOf(shade ?? '')].every((word) => allowed.has(word) || sizes.test(word));
}

function idsOf(products: readonly KnownProduct[]): string[] {
  return [...new Set(products.map(({ productId }) => productId))];
}
