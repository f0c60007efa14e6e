import type { StockForm } from '../../catalogue/vocabulary.js';

/** What one pack costs when at least so many are ordered. */
export class PackPriceView {
  fromPacks: number;
  /** In whole minor units of the offer's currency. */
  packPriceMinor: number;
}

/** A product as one supplier sells it: in packs of so many containers. */
export class OfferView {
  id: string;
  supplierId: string;
  supplierName: string;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  /** Bottles are kept one by one, and each is 1 piece. */
  stockForm: StockForm;
  /** The product is not used any more: nothing of it is planned. */
  productArchived: boolean;
  /** The supplier's own number of it. */
  orderCode: string | null;
  packContainers: number;
  /** Pieces in each container; 1 for a bottle. */
  containerPieces: number;
  minimumPacks: number;
  /** By rising number of packs; the first is from the minimum. */
  prices: PackPriceView[];
  currency: string;
  /** False: the studio counts in another currency now, and plans leave it out until its prices are written anew. */
  inStudioCurrency: boolean;
  /** Days an unopened container usually still keeps when it arrives; null: it is learnt, or assumed. */
  lifeOnArrivalDays: number | null;
  /** Where it differs from the supplier's. */
  leadTimeDays: number | null;
  version: number;
  createdAt: string;
  endedAt: string | null;
}

export class OfferPageView {
  items: OfferView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}
