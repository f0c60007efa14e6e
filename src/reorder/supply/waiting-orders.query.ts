import { localDay } from '../../identity/local-day.js';
import type { Read, SqlValue } from '../../platform/database/database.js';
import type { WaitingOrder } from './lead-time.js';

const mostOrders = 1_000;

/**
 * Orders of which nothing came yet, and since when they are waited for: the latest first.
 *
 * @param suppliers only of these; left out: of all
 */
export async function waitingOrders(
  read: Read,
  { studioId, timeZone }: { studioId: string; timeZone: string },
  now: string,
  suppliers?: readonly string[],
): Promise<(WaitingOrder & { supplierId: string })[]> {
  if (suppliers?.length === 0) return [];
  const parameters: SqlValue[] = [studioId];
  const named = (suppliers ?? []).map((id) => `$${parameters.push(id)}`).join(', ');
  const rows = await read<{ supplierId: string; sentAt: string }>(
    `SELECT supplier_id AS "supplierId", sent_at AS "sentAt" FROM purchase_order
     WHERE studio_id = $1 AND state = 'sent' AND sent_at IS NOT NULL
       ${suppliers === undefined ? '' : `AND supplier_id IN (${named})`}
     ORDER BY sent_at DESC, id LIMIT ${mostOrders}`,
    parameters,
  );
  const today = localDay(now, timeZone);
  return rows.map(({ supplierId, sentAt }) => ({ supplierId, orderedOn: localDay(sentAt, timeZone), today }));
}
