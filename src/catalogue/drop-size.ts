/** A drop outside these is a slip: dropper tips give 20 to 70 µL [S], and glycerin's drop is about 62 % of water's [S]. */
export const leastDropMicrolitres = 5;
export const mostDropMicrolitres = 200;

/** A drop of a water-like liquid, counted where nothing is known of the product: about 20 drops a millilitre [C]. */
const assumedDropMicrolitres = 50;

/** How much liquid a person names: by volume, in drops, or not at all. A negative amount is taken back. */
export interface LiquidAmount {
  drops?: number | null;
  microlitres?: number | null;
}

/**
 * The volume of an amount: as it is said, else reckoned from drops, which is an estimate. It never refuses, for what
 * happened is recorded; the limits of a drop are held where a product's drop size comes in.
 *
 * @param dropMicrolitres the product's own drop size; null: not known, so the assumed one is counted
 * @returns whole microlitres, negative for what is taken back; null when no amount is said
 */
export function microlitresOf(
  { drops, microlitres }: LiquidAmount,
  dropMicrolitres: number | null,
): number | null {
  if (microlitres != null) return microlitres;
  return drops == null ? null : drops * (dropMicrolitres ?? assumedDropMicrolitres);
}
