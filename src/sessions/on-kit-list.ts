/** Whether something is on the kit list of a procedure. */
export type OnKitList = 'yes' | 'no' | 'there is no kit list';

/**
 * Whether a product is on a kit list: it is named itself, or a configuration in whose pool it stands is.
 *
 * @param lines of the kit list, each naming a product or a configuration by its key; null: there is no list
 * @param poolKeys the keys of the configuration pool in which the product stands; empty when it stands in none
 */
export function onKitList(
  lines: readonly { productId: string | null; configuration: string | null }[] | null,
  productId: string,
  poolKeys: readonly string[],
): OnKitList {
  if (lines === null) return 'there is no kit list';
  const named = lines.some(
    (line) =>
      line.productId === productId || (line.configuration !== null && poolKeys.includes(line.configuration)),
  );
  return named ? 'yes' : 'no';
}
