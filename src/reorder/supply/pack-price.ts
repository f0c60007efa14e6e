/** What one pack costs when at least so many are ordered. */
export interface PackPrice {
  fromPacks: number;
  /** Whole minor units of the offer's currency. */
  packPriceMinor: number;
}
