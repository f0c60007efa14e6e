import { Temporal } from 'temporal-polyfill';
import { localDay } from '../../identity/local-day.js';
import type { Read, SqlValue } from '../../platform/database/database.js';

/** Goods that came longer ago say little of a supplier. */
const yearsSeen = 3;
/** The latest lines of deliveries that are looked at. */
const mostLines = 20_000;

const supplierOfDelivery = 'coalesce(delivery.supplier_id, purchase_order.supplier_id)';

/** A line of a delivery that was bought, and what is known of its order. */
export interface ObservedArrival {
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
  /** The last day of its lot; null: none is printed. */
  useBy: string | null;
  unitCostMinor: number | null;
  currency: string | null;
}

interface Row {
  deliveryId: string;
  supplierId: string | null;
  occurredAt: string;
  orderedOn: string | null;
  productId: string;
  pieces: number;
  orderedProductId: string | null;
  useBy: string | null;
  unitCostMinor: number | null;
  currency: string | null;
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
     FROM delivery
     JOIN delivery_line ON delivery_line.studio_id = delivery.studio_id AND delivery_line.delivery_id = delivery.id
     JOIN lot ON lot.studio_id = delivery_line.studio_id AND lot.id = delivery_line.lot_id
     LEFT JOIN purchase_order_line ON purchase_order_line.studio_id = delivery_line.studio_id
       AND purchase_order_line.id = delivery_line.order_line_id
     LEFT JOIN purchase_order ON purchase_order.studio_id = purchase_order_line.studio_id
       AND purchase_order.id = purchase_order_line.order_id
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
