import { Temporal } from 'temporal-polyfill';
import { localDay } from '../../identity/local-day.js';
import type { Read, SqlValue } from '../../platform/database/database.js';
import { deliveredLines } from './delivered-lines.sql.js';
import type { ArrivedLine } from './order-arrivals.js';

/** Goods that came longer ago say little of a supplier. */
const yearsSeen = 3;
/** The latest lines of deliveries that are looked at. */
const mostLines = 20_000;

const supplierOfDelivery = 'coalesce(delivery.supplier_id, purchase_order.supplier_id)';

/** A line of a delivery that was bought, and what is known of its order. */
export interface ObservedArrival extends ArrivedLine {
  /** The last day of its lot; null: none is printed. */
  useBy: string | null;
  unitCostMinor: number | null;
  currency: string | null;
}

interface Row extends Omit<ObservedArrival, 'orderId' | 'arrivedOn'> {
  occurredAt: string;
  purchaseOrderId: string | null;
  sentAt: string | null;
}

/**
 * What came of late, the latest first. When it was ordered is the day its purchase order was sent, else the day written in
 * the delivery, else the one of what was expected and came with it.
 *
 * @param suppliers only of these; left out: of all
 */
export async function observedArrivals(
  read: Read,
  { studioId, timeZone }: { studioId: string; timeZone: string },
  now: string,
  suppliers?: readonly string[],
): Promise<ObservedArrival[]> {
  if (suppliers?.length === 0) return [];
  const since = Temporal.Instant.from(now)
    .subtract({ hours: 24 * 365 * yearsSeen })
    .toString({ fractionalSecondDigits: 3 });
  const parameters: SqlValue[] = [studioId, since];
  const named = (suppliers ?? []).map((id) => `$${parameters.push(id)}`).join(', ');
  const ofSuppliers = suppliers === undefined ? '' : `AND ${supplierOfDelivery} IN (${named})`;
  const rows = await read<Row>(
    `SELECT delivery.id AS "deliveryId", ${supplierOfDelivery} AS "supplierId", delivery.occurred_at AS "occurredAt",
       delivery.ordered_on AS "orderedOn", lot.product_id AS "productId", lot.use_by AS "useBy",
       delivery_line.quantity_pieces AS pieces, purchase_order_line.product_id AS "orderedProductId",
       delivery_line.unit_cost_minor AS "unitCostMinor", delivery_line.currency,
       purchase_order.id AS "purchaseOrderId", purchase_order.sent_at AS "sentAt"
     FROM ${deliveredLines}
     WHERE delivery.studio_id = $1 AND delivery.origin = 'purchase' AND delivery.occurred_at >= $2 ${ofSuppliers}
     ORDER BY delivery.occurred_at DESC, delivery.id, delivery_line.line_number LIMIT ${mostLines}`,
    parameters,
  );
  const expected = await read<{ deliveryId: string; orderedOn: string }>(
    `SELECT delivery_id AS "deliveryId", min(ordered_on) AS "orderedOn" FROM expected_delivery
     WHERE studio_id = $1 AND delivery_id IS NOT NULL AND ordered_on IS NOT NULL
     GROUP BY delivery_id LIMIT ${mostLines}`,
    [studioId],
  );
  const expectedOn = new Map(expected.map(({ deliveryId, orderedOn }) => [deliveryId, orderedOn]));
  return rows.map(({ occurredAt, purchaseOrderId, sentAt, orderedOn, ...row }) => ({
    ...row,
    orderId: purchaseOrderId ?? row.deliveryId,
    orderedOn:
      (sentAt === null ? null : localDay(sentAt, timeZone)) ??
      orderedOn ??
      expectedOn.get(row.deliveryId) ??
      null,
    arrivedOn: localDay(occurredAt, timeZone),
  }));
}
