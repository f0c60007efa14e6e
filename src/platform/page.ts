import type { Read } from './database/database.js';
import { invalidField } from './problem.js';

/** How many rows a page holds when nothing is said. */
export const defaultPageSize = 50;

/**
 * One page of rows that were looked up with one more than the limit.
 * @param idOf what the next page is asked for with
 */
export function pageOf<Row>(
  rows: readonly Row[],
  limit: number,
  idOf: (row: Row) => string,
): { shown: Row[]; next: string | null } {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  return { shown, next: rows.length > limit && last !== undefined ? idOf(last) : null };
}

/** The lists that are paged, with the column that says whose a row is. */
const owners = {
  alert: 'studio_id',
  alert_destination: 'studio_id',
  blend: 'studio_id',
  client: 'studio_id',
  client_access: 'studio_id',
  container: 'studio_id',
  delivery: 'studio_id',
  erasure_request: 'studio_id',
  expected_delivery: 'studio_id',
  hold: 'studio_id',
  lot: 'studio_id',
  morning_summary: 'studio_id',
  movement: 'studio_id',
  offer: 'studio_id',
  outbox: 'studio_id',
  plan: 'studio_id',
  product: 'chain_id',
  purchase_order: 'studio_id',
  recall: 'studio_id',
  recall_contact: 'studio_id',
  recall_notice: 'studio_id',
  session: 'studio_id',
  session_use: 'studio_id',
  supplier_claim: 'studio_id',
  training_course: 'studio_id',
};

/**
 * Refuses a page asked for after a row that is not there: an empty page would look like the end of the list.
 * @param ownerId id of the studio, or of the chain for what is the chain's
 * @throws Problem invalid-fields
 */
export async function refuseUnknownStart(
  read: Read,
  table: keyof typeof owners,
  ownerId: string,
  after: string | undefined,
): Promise<void> {
  if (after === undefined) return;
  const rows = await read(`SELECT id FROM ${table} WHERE ${owners[table]} = $1 AND id = $2`, [
    ownerId,
    after,
  ]);
  if (rows.length > 0) return;
  throw invalidField(
    'after',
    `There is no ${table.replaceAll('_', ' ')} with the id ${after} to go on from. Give the "next" of the page before, or leave it out.`,
  );
}
