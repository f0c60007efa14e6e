/** Where a supplier takes orders. */
export class SupplierContactView {
  mailAddress: string | null;
  customerNumber: string | null;
}

/** How long orders take, by what the supplier says and what was seen. */
export class LeadTimeView {
  basis: 'quoted' | 'learnt' | 'quoted and learnt' | 'assumed';
  /** Half of the orders arrive within so many calendar days. */
  medianDays: number;
  /** 95 of 100 arrive within so many. */
  days95: number;
  /** Orders that were counted. */
  orders: number;
  /** Arrivals that were not: before their order, or later than a year after it. */
  leftOut: number;
}

/** On what terms a supplier delivers to the studio; what is null is not known. */
export class SupplierTermsView {
  supplierId: string;
  supplierName: string;
  quotedLeadTimeDays: number | null;
  /** 1 Monday to 7 Sunday, rising; none: orders are placed on any day. */
  orderWeekdays: number[];
  /** In minor units of `currency`, as all amounts. */
  minimumOrderMinor: number | null;
  deliveryCostMinor: number | null;
  freeDeliveryFromMinor: number | null;
  /** Of the terms; of the studio when none are set. */
  currency: string;
  hasContact: boolean;
  /** Null in the answer to a write, which is kept, to who may not place orders, and when nothing is known. */
  contact: SupplierContactView | null;
  leadTime: LeadTimeView;
  /** Products the supplier offers now. */
  offers: number;
  /** Null: no terms are set. */
  version: number | null;
}

export class SupplierTermsPageView {
  items: SupplierTermsView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}
