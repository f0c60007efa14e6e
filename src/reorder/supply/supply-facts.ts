import type { LeadTime } from './lead-time.js';
import type { LifeOnArrival } from './life-on-arrival.js';
import type { PackPrice } from './pack-price.js';

/** All that a plan is told of how goods can be had. Amounts of money are in minor units of the studio's currency. */
export interface SupplyFacts {
  currency: string;
  /** Every supplier with terms, an offer, or goods that came of late, by id. */
  suppliers: SupplierFacts[];
  /** What can be ordered, by id. */
  offers: OfferFacts[];
  /** Offers that stand but cannot be used, by id. */
  unusableOffers: UnusableOffer[];
  /** What was paid last for a piece of a product, by product id. */
  lastPrices: LastPrice[];
  /** How long products still kept when they came, whoever brought them, by product id. */
  lives: ProductLife[];
}

export interface SupplierFacts {
  supplierId: string;
  name: string;
  /** ISO weekdays on which orders are placed, rising; none: any day. */
  orderWeekdays: number[];
  minimumOrderMinor: number | null;
  /** Null: nothing is known, and an assumption stands. */
  deliveryCostMinor: number | null;
  freeDeliveryFromMinor: number | null;
  /** Whether its terms were left out since they are in another currency than the studio's. */
  otherCurrency: boolean;
  leadTime: LeadTime;
}

export interface OfferFacts {
  offerId: string;
  supplierId: string;
  productId: string;
  orderCode: string | null;
  packContainers: number;
  /** 1 for a bottle. */
  containerPieces: number;
  minimumPacks: number;
  prices: PackPrice[];
  leadTime: LeadTime;
  lifeOnArrival: LifeOnArrival;
}

export interface UnusableOffer {
  offerId: string;
  supplierId: string;
  productId: string;
  reason: 'other currency' | 'product archived';
}

export interface LastPrice {
  productId: string;
  /** Of one piece: a bottle, or a piece in a box. */
  unitCostMinor: number;
  /** The studio's local day, ISO `YYYY-MM-DD`. */
  paidOn: string;
  supplierId: string | null;
}

export interface ProductLife {
  productId: string;
  lifeOnArrival: LifeOnArrival;
}
