import { type AwaitedLine, awaitedOrders } from './awaited-orders.js';
import { type LeadTime, leadTimeOf } from './lead-time.js';
import { type ArrivedLine, orderArrivals } from './order-arrivals.js';

/** What a lead time is learnt from: what came of orders, and what is missing of them. */
export interface SupplyRecord {
  arrivals: readonly ArrivedLine[];
  awaited: readonly AwaitedLine[];
}

/** @param quotedDays what the terms of the supplier say; null: nothing */
export function leadTimeOfSupplier(
  { arrivals, awaited }: SupplyRecord,
  supplierId: string,
  quotedDays: number | null,
): LeadTime {
  return leadTimeOf(orderArrivals(arrivals, supplierId), quotedDays, awaitedOrders(awaited, supplierId));
}

/** Of a product with a lead time of its own: it learns it only from orders that asked for it. */
export function leadTimeOfProduct(
  { arrivals, awaited }: SupplyRecord,
  supplierId: string,
  productId: string,
  ownDays: number,
): LeadTime {
  return leadTimeOf(
    orderArrivals(arrivals, supplierId, productId),
    ownDays,
    awaitedOrders(awaited, supplierId, productId),
  );
}
