import { localDay } from '../../identity/local-day.js';
import type { Read, SqlValue } from '../../platform/database/database.js';
import type { AwaitedLine } from './awaited-orders.js';
import { orderedPieces, receivedPieces } from './received-pieces.sql.js';

const mostLines = 20_000;

/**
 * What was ordered and has not come, of orders that are still awaited: the latest first.
 *
 * @param suppliers only of these; left out: of all
 */
export async function awaitedLines(
  read: Read,
  { studioId, timeZone }: { studioId: string; timeZone: string },
  now: string,
  suppliers?: readonly string[],
): Promise<AwaitedLine[]> {
  if (suppliers?.length === 0) return [];
  const parameters: SqlValue[] = [studioId];
  const named = (suppliers ?? []).map((id) => `$${parameters.push(id)}`).join(', ');
  const rows = await read<Omit<AwaitedLine, 'orderedOn' | 'today'> & { sentAt: string }>(
    `SELECT purchase_order.id AS "orderId", purchase_order.supplier_id AS "supplierId",
       purchase_order_line.product_id AS "productId", purchase_order.sent_at AS "sentAt",
       ${orderedPieces} - ${receivedPieces} AS "missingPieces"
     FROM purchase_order
       JOIN purchase_order_line ON purchase_order_line.studio_id = purchase_order.studio_id
         AND purchase_order_line.order_id = purchase_order.id AND purchase_order_line.removed_at IS NULL
     WHERE purchase_order.studio_id = $1 AND purchase_order.state IN ('sent', 'received in part')
       AND purchase_order.sent_at IS NOT NULL
       ${suppliers === undefined ? '' : `AND purchase_order.supplier_id IN (${named})`}
     ORDER BY purchase_order.sent_at DESC, purchase_order.id, purchase_order_line.line_number LIMIT ${mostLines}`,
    parameters,
  );
  const today = localDay(now, timeZone);
  return rows
    .filter(({ missingPieces }) => missingPieces > 0)
    .map(({ sentAt, ...row }) => ({ ...row, orderedOn: localDay(sentAt, timeZone), today }));
}
