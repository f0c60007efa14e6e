/**
 * A drop of a water-like liquid, counted where nothing is known of the product: about 20 drops a millilitre [C].
 * Dropper tips give 20 to 70 µL [S], and glycerin's drop is about 62 % of water's [S].
 */
export const ASSUMED_DROP_MICROLITRES = 50;
/** Fewer bottles run empty than this say more about one pair of hands than about the product. */
export const LEAST_EMPTIED_BOTTLES = 3;
/** A drop outside these is not believed: drops or bottles were not all recorded. */
export const LEAST_DROP_MICROLITRES = 10;
export const MOST_DROP_MICROLITRES = 150;
/** No session drops more than this of one bottle. */
export const MOST_DROPS = 10_000;

/** The drop size of a product, whole microlitres, and where it comes from. */
export interface DropSize {
  dropMicrolitres: number;
  from: 'learnt' | 'label';
}

export interface DropEstimate {
  drops: number;
  quantityMicrolitres: number;
  /** Always: a volume reckoned from drops is never measured. */
  estimate: true;
  dropMicrolitres: number;
  dropSizeFrom: DropSize['from'] | 'assumed';
  /** What was assumed, in words for a person. */
  assumption: string;
}

/** What the emptied bottles of one product add up to. */
export interface EmptiedBottles {
  /** Labelled contents of all the emptied bottles together. */
  labelledMicrolitres: number;
  /** Drops recorded from all of them together, from full to empty. */
  dropsUsedUntilEmpty: number;
  emptiedBottles: number;
}

/**
 * Estimates the volume of a number of drops.
 *
 * @param drops whole drops, 0 to 10,000
 * @param dropSize the product's own drop size, or null when none is known
 * @throws RangeError when the number of drops or the drop size is not allowed
 */
export function dropsToMicrolitres(drops: number, dropSize: DropSize | null): DropEstimate {
  if (!Number.isInteger(drops) || drops < 0 || drops > MOST_DROPS) {
    throw new RangeError(
      `${drops} drops were given. Allowed are whole drops from 0 to ${MOST_DROPS}. Count again.`,
    );
  }
  return estimate(drops, drops * sizeOf(dropSize), dropSize);
}

/**
 * Estimates the number of whole drops nearest to a volume; a half counts up, and a volume above nothing is at
 * least one drop.
 *
 * @param quantityMicrolitres whole microlitres, 0 or more, of at most 10,000 drops
 * @throws RangeError when the volume or the drop size is not allowed
 */
export function microlitresToDrops(quantityMicrolitres: number, dropSize: DropSize | null): DropEstimate {
  const most = MOST_DROPS * sizeOf(dropSize);
  if (!Number.isInteger(quantityMicrolitres) || quantityMicrolitres < 0 || quantityMicrolitres > most) {
    throw new RangeError(
      `${quantityMicrolitres} µL were given. Allowed are whole microlitres from 0 to ${most}. Check the quantity.`,
    );
  }
  const nearest = Math.round(quantityMicrolitres / sizeOf(dropSize));
  return estimate(quantityMicrolitres > 0 ? Math.max(1, nearest) : 0, quantityMicrolitres, dropSize);
}

/**
 * Learns the drop size of a product from bottles run empty.
 *
 * @returns whole microlitres, or null while fewer than three bottles were emptied or when the result is not
 *   between 10 and 150 µL: a drop beyond that means that not everything was recorded, and the nearest limit would
 *   be no truer
 */
export function learnDropSize(emptied: EmptiedBottles): number | null {
  const { labelledMicrolitres, dropsUsedUntilEmpty, emptiedBottles } = emptied;
  if (emptiedBottles < LEAST_EMPTIED_BOTTLES) return null;
  // No drops at all give no finite size, which is not believed either.
  const dropMicrolitres = Math.round(labelledMicrolitres / dropsUsedUntilEmpty);
  return believed(dropMicrolitres) ? dropMicrolitres : null;
}

function estimate(drops: number, quantityMicrolitres: number, dropSize: DropSize | null): DropEstimate {
  const dropMicrolitres = sizeOf(dropSize);
  return {
    drops,
    quantityMicrolitres,
    estimate: true,
    dropMicrolitres,
    dropSizeFrom: dropSize?.from ?? 'assumed',
    assumption: assumptionFor(dropMicrolitres, dropSize),
  };
}

function assumptionFor(dropMicrolitres: number, dropSize: DropSize | null): string {
  if (dropSize === null) {
    return `Estimate at ${dropMicrolitres} µL a drop, assumed for a water-like liquid; dropper tips give 20 to 70 µL.`;
  }
  return dropSize.from === 'label'
    ? `Estimate at ${dropMicrolitres} µL a drop, from the label.`
    : `Estimate at ${dropMicrolitres} µL a drop, learnt from emptied bottles of this product.`;
}

function sizeOf(dropSize: DropSize | null): number {
  if (dropSize === null) return ASSUMED_DROP_MICROLITRES;
  if (believed(dropSize.dropMicrolitres)) return dropSize.dropMicrolitres;
  throw new RangeError(
    `A drop of ${dropSize.dropMicrolitres} µL was given. Allowed are whole microlitres from ` +
      `${LEAST_DROP_MICROLITRES} to ${MOST_DROP_MICROLITRES}. Check the drop size of the product.`,
  );
}

function believed(dropMicrolitres: number): boolean {
  return (
    Number.isInteger(dropMicrolitres) &&
    dropMicrolitres >= LEAST_DROP_MICROLITRES &&
    dropMicrolitres <= MOST_DROP_MICROLITRES
  );
}
