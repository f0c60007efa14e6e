/** Days of warning for one product; what is null is the studio's. */
export class DateThresholdView {
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  /** Sealed stock is near its use-by when this many local days or fewer are left. */
  useByNearDays: number | null;
  /** The same for what is open. */
  openedLifeEndingDays: number | null;
  version: number;
}

export class DateThresholdPageView {
  items: DateThresholdView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}
