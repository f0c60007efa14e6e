/** One line, as far as it costs something. */
export interface PricedLine {
  packs: number;
  /** Whole minor units; null: not known. */
  packPriceMinor: number | null;
}

/** What the supplier asks for bringing it, in whole minor units; null: not said. */
export interface DeliveryTerms {
  deliveryCostMinor: number | null;
  /** From this sum of the lines on it is brought for nothing. */
  freeDeliveryFromMinor: number | null;
}

/** All in whole minor units of the order's currency. */
export interface OrderSums {
  /** Of the lines whose price is known. */
  linesMinor: number;
  /** How many lines have no price. */
  unpricedLines: number;
  deliveryCostMinor: number | null;
  /** Who says it: a person, the supplier's terms, or, from the approval on, what was approved. */
  deliveryCostFrom: 'by hand' | 'terms' | 'approved' | 'not known';
  /** Lines and delivery; null while a price or the delivery cost is not known. */
  totalMinor: number | null;
}

/** What one line costs; null: its price is not known. */
export function lineMinor({ packs, packPriceMinor }: PricedLine): number | null {
  return packPriceMinor === null ? null : packs * packPriceMinor;
}

/**
 * Adds up an order.
 * @param writtenMinor what stands in the order as the cost of delivery; null: the supplier's terms say it
 * @param terms null: the order was approved, and what stands in it counts, whatever the terms say by now
 */
export function orderSums(
  lines: readonly PricedLine[],
  writtenMinor: number | null,
  terms: DeliveryTerms | null,
): OrderSums {
  const known = lines.flatMap((line) => lineMinor(line) ?? []);
  const linesMinor = known.reduce((sum, minor) => sum + minor, 0);
  const unpricedLines = lines.length - known.length;
  const asked = writtenMinor ?? (terms === null ? null : costByTerms(linesMinor, terms));
  return {
    linesMinor,
    unpricedLines,
    deliveryCostMinor: asked,
    deliveryCostFrom:
      asked === null
        ? 'not known'
        : terms === null
          ? 'approved'
          : writtenMinor === null
            ? 'terms'
            : 'by hand',
    totalMinor: unpricedLines > 0 || asked === null ? null : linesMinor + asked,
  };
}

/** What the supplier asks for bringing lines of so much. */
export function costByTerms(linesMinor: number, terms: DeliveryTerms): number | null {
  const { deliveryCostMinor, freeDeliveryFromMinor } = terms;
  if (freeDeliveryFromMinor !== null && linesMinor >= freeDeliveryFromMinor) return 0;
  return deliveryCostMinor;
}
