import type { OrderArrival } from './lead-time.js';

/** A line of a delivery, as far as it tells how long an order took. */
export interface ArrivedLine {
  deliveryId: string;
  orderId: string;
  supplierId: string | null;
  productId: string;
  orderedOn: string | null;
  arrivedOn: string;
}

/**
 * The arrivals of a supplier's orders: each delivery of an order once, however many lines it had. What nobody knows the
 * order day of is passed over.
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
    const { orderId, orderedOn, arrivedOn } = line;
    if (line.supplierId !== supplierId || orderedOn === null) continue;
    if (productId !== undefined && line.productId !== productId) continue;
    arrivals.set(`${orderId} ${line.deliveryId}`, { orderId, orderedOn, arrivedOn });
  }
  return [...arrivals.values()];
}
