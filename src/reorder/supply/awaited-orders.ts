import type { AwaitedOrder } from './lead-time.js';

/** What of a line of an order has not come. */
export interface AwaitedLine extends AwaitedOrder {
  supplierId: string;
  productId: string;
}

/**
 * What is awaited of a supplier: each order once, with all that is missing of it.
 *
 * @param productId only what is missing of it; left out: of all
 */
export function awaitedOrders(
  lines: readonly AwaitedLine[],
  supplierId: string,
  productId?: string,
): AwaitedOrder[] {
  const orders = new Map<string, AwaitedOrder>();
  for (const { orderId, orderedOn, today, missingPieces, ...line } of lines) {
    if (line.supplierId !== supplierId) continue;
    if (productId !== undefined && line.productId !== productId) continue;
    const before = orders.get(orderId)?.missingPieces ?? 0;
    orders.set(orderId, { orderId, orderedOn, today, missingPieces: before + missingPieces });
  }
  return [...orders.values()];
}
