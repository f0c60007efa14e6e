import { recallLots, recallReach } from '../recall-lots.query.js';

/** `reached_lot (lot_id, affected)`: each lot in which a lot of the recall `$2` is, 1 where any of these is surely affected. */
export const reachedLotsOfRecall = `${recallLots}, ${recallReach},
  reached_lot (lot_id, affected) AS (
    SELECT lot_id, max(CASE WHEN standing = 'affected' THEN 1 ELSE 0 END) FROM recall_reach GROUP BY lot_id)`;

const columns = `session_use.id, session_use.session_id, session_use.client_id, session_use.occurred_at,
      CASE WHEN session_use.movement_id IS NULL THEN 1 ELSE 0 END`;

/**
 * Every use in the studio `$1` by which a lot of the recall `$2` touched a client, or may have, as `exposed_use (id,
 * session_id, client_id, occurred_at, unknown_amount, certain, by_open_lot)`; those recorded by mistake are in
 * `reversed_exposure (id)` instead. SQLite keeps the order of cross joins: from the few lots to their uses.
 *
 * @param timesAtHand placeholders of product, first instant and the instant after the last, by `timesOfProducts`: what was
 * picked from a list in these times may have been another lot than it was recorded as
 * @param client placeholder of the one client who is asked about; undefined: all
 */
export function exposedUses(
  timesAtHand: readonly (readonly [product: string, from: string, before: string])[],
  client?: string,
): string {
  const ofClient = client === undefined ? '' : ` AND session_use.client_id = ${client}`;
  const byOpenLots =
    timesAtHand.length === 0
      ? ''
      : `
    UNION ALL
    SELECT ${columns}, 0, 1
    FROM time_at_hand CROSS JOIN lot CROSS JOIN session_use
    WHERE lot.studio_id = $1 AND lot.product_id = time_at_hand.product_id
      AND lot.id NOT IN (SELECT lot_id FROM reached_lot)
      AND session_use.studio_id = $1 AND session_use.lot_id = lot.id
      AND session_use.known_by = 'picked from a list'
      AND session_use.occurred_at >= time_at_hand.from_at AND session_use.occurred_at < time_at_hand.before_at${ofClient}`;
  const times = timesAtHand.map(
    ([product, from, before]) => `(CAST(${product} AS TEXT), CAST(${from} AS TEXT), CAST(${before} AS TEXT))`,
  );
  const timesTable =
    times.length === 0
      ? ''
      : `time_at_hand (product_id, from_at, before_at) AS (VALUES ${times.join(', ')}),`;
  return `${reachedLotsOfRecall}, ${timesTable}
  touching (id, session_id, client_id, occurred_at, unknown_amount, certain, by_open_lot) AS (
    SELECT ${columns},
      CASE WHEN reached_lot.affected = 1 AND session_use.known_by <> 'picked from a list' THEN 1 ELSE 0 END, 0
    FROM reached_lot CROSS JOIN session_use
    WHERE session_use.studio_id = $1 AND session_use.lot_id = reached_lot.lot_id${ofClient}${byOpenLots}),
  judged AS (
    SELECT touching.*, session_use_reversal.use_id AS reversed_id
    FROM touching LEFT JOIN session_use_reversal
      ON session_use_reversal.studio_id = $1 AND session_use_reversal.use_id = touching.id),
  reversed_exposure (id) AS (SELECT id FROM judged WHERE reversed_id IS NOT NULL),
  exposed_use AS (SELECT * FROM judged WHERE reversed_id IS NULL)`;
}
