import type { OrderArrival } from './lead-time.js';

/** A line of a delivery, as far as it tells how long an order took. */
export interface ArrivedLine {
  deliveryId: string;
  /** The purchase order it answers, else the delivery itself. */
  orderId: string;
  /** The one the delivery names, else the one its order went to. */
  supplierId: string | null;
  productId: string;
  pieces: number;
  /** The product its order asked for; null: no order names it. */
  orderedProductId: string | null;
  /** The studio's local days, ISO `YYYY-MM-DD`; null: nobody wrote down when it was ordered. */
  orderedOn: string | null;
  arrivedOn: string;
}

/**
 * The arrivals of a supplier's orders: each delivery of an order once, with the pieces of all its lines. What nobody knows
 * the order day of is passed over, and so is another product than was ordered: what was ordered has not come with it.
 *
 * @param productId only those that brought it; left out: all
 */
export function orderArrivals(
  lines: readonly ArrivedLine[],
  supplierId: string,
  productId?: string,
): OrderArrival[] {
  const arrivals = new Map<string, OrderArrival>();
  for (const line of lines) {
    const { orderId, orderedOn, arrivedOn, pieces } = line;
    if (line.supplierId !== supplierId || orderedOn === null) continue;
    if (productId !== undefined && line.productId !== productId) continue;
    if (line.orderedProductId !== null && line.orderedProductId !== line.productId) continue;
    const key = `${orderId} ${line.deliveryId}`;
    const before = arrivals.get(key)?.pieces ?? 0;
    arrivals.set(key, { orderId, orderedOn, arrivedOn, pieces: before + pieces });
  }
  return [...arrivals.values()];
}
