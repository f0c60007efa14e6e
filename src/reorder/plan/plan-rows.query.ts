import type { Read } from '../../platform/database/database.js';
import type { VisitKind } from '../../sessions/vocabulary.js';
import type { LotScope } from '../../stock/lot-matching/lot-scope.js';
import { orderedPieces, receivedPieces } from '../supply/received-pieces.sql.js';
import type { PlannableProduct } from './planned-items.js';

/*
 * What a plan asks of the record: a fixed number of look-ups for the whole studio, each with a limit.
 */

export const mostProducts = 5_000;
export const mostSessions = 50_000;
export const mostUses = 1_000_000;
const mostRows = 50_000;
/** Expected ones, each of which is told of. */
const mostDeliveries = 200;

export interface StudioRow {
  currency: string;
  assumedOpenedLife: string | null;
}

export async function studioRow(read: Read, studioId: string): Promise<StudioRow> {
  const [row] = await read<StudioRow>(
    'SELECT currency, assumed_opened_life AS "assumedOpenedLife" FROM studio WHERE id = $1',
    [studioId],
  );
  if (!row) throw new Error(`There is no studio ${studioId}.`);
  return row;
}

/** The register, those still offered first. */
export async function productRows(read: Read, chainId: string): Promise<PlannableProduct[]> {
  const rows = await read<Omit<PlannableProduct, 'archived'> & { archivedAt: string | null }>(
    `SELECT product.id AS "productId", product.kind, product.name AS "productName", product.shade,
       maker.name AS "makerName", product.stock_form AS "stockForm",
       product.volume_microlitres AS "volumeMicrolitres", product.opened_life AS "openedLife",
       product.archived_at AS "archivedAt"
     FROM product JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
     WHERE product.chain_id = $1
     ORDER BY CASE WHEN product.archived_at IS NULL THEN 0 ELSE 1 END, product.id LIMIT ${mostProducts}`,
    [chainId],
  );
  return rows.map(({ archivedAt, ...row }) => ({ ...row, archived: archivedAt !== null }));
}

export interface SessionRow {
  id: string;
  procedureId: string;
  visitKind: VisitKind;
  artistId: string;
  state: 'planned' | 'in setup' | 'completed' | 'cancelled' | 'not attended';
  bookedAt: string | null;
  plannedStart: string | null;
  plannedAt: string;
  completedAt: string | null;
  cancelledAt: string | null;
  followsSessionId: string | null;
  recordedFrom: 'tray' | 'late' | 'paper';
}

/** Sessions that took place, or should have, since an instant, and all that are planned; never a client. */
export function sessionRows(read: Read, studioId: string, since: string): Promise<SessionRow[]> {
  return read<SessionRow>(
    `SELECT id, procedure_id AS "procedureId", visit_kind AS "visitKind", artist_id AS "artistId", state,
       booked_at AS "bookedAt", planned_start AS "plannedStart", planned_at AS "plannedAt",
       completed_at AS "completedAt", cancelled_at AS "cancelledAt", follows_session_id AS "followsSessionId",
       recorded_from AS "recordedFrom"
     FROM session
     WHERE studio_id = $1
       AND (state IN ('planned', 'in setup') OR coalesce(completed_at, planned_start, planned_at) >= $2)
     ORDER BY coalesce(completed_at, planned_start, planned_at) DESC, id LIMIT ${mostSessions}`,
    [studioId, since],
  );
}

export interface UseRow {
  sessionId: string;
  productId: string;
  pieces: number;
  microlitres: number;
}

/** What sessions used, by product, without what was taken back. */
export function useRows(read: Read, studioId: string, since: string): Promise<UseRow[]> {
  return read<UseRow>(
    `SELECT session_use.session_id AS "sessionId", lot.product_id AS "productId",
       sum(session_use.pieces) AS pieces, sum(session_use.microlitres) AS microlitres
     FROM session_use
       JOIN lot ON lot.studio_id = session_use.studio_id AND lot.id = session_use.lot_id
     WHERE session_use.studio_id = $1 AND session_use.occurred_at >= $2
       AND NOT EXISTS (SELECT 1 FROM session_use_reversal AS reversal
         WHERE reversal.studio_id = session_use.studio_id AND reversal.use_id = session_use.id)
     GROUP BY session_use.session_id, lot.product_id
     ORDER BY session_use.session_id, lot.product_id LIMIT ${mostUses}`,
    [studioId, since],
  );
}

/** What was opened for a session and thrown away: it was needed as well. */
export function sessionWasteRows(read: Read, studioId: string, since: string): Promise<UseRow[]> {
  return read<UseRow>(
    `SELECT movement.session_id AS "sessionId", lot.product_id AS "productId",
       -sum(movement.pieces) AS pieces, -sum(movement.microlitres) AS microlitres
     FROM movement JOIN lot ON lot.studio_id = movement.studio_id AND lot.id = movement.lot_id
     WHERE movement.studio_id = $1 AND movement.session_id IS NOT NULL AND movement.kind = 'wasted'
       AND movement.occurred_at >= $2
     GROUP BY movement.session_id, lot.product_id
     ORDER BY movement.session_id, lot.product_id LIMIT ${mostUses}`,
    [studioId, since],
  );
}

export interface OtherUseRow {
  occurredAt: string;
  productId: string;
  microlitres: number;
}

/** What went into house blends. */
export function blendedRows(read: Read, studioId: string, since: string): Promise<OtherUseRow[]> {
  return read<OtherUseRow>(
    `SELECT movement.occurred_at AS "occurredAt", lot.product_id AS "productId",
       -movement.microlitres AS microlitres
     FROM movement JOIN lot ON lot.studio_id = movement.studio_id AND lot.id = movement.lot_id
     WHERE movement.studio_id = $1 AND movement.kind = 'blended' AND movement.microlitres < 0
       AND movement.occurred_at >= $2
       AND NOT EXISTS (SELECT 1 FROM movement AS reversal
         WHERE reversal.studio_id = movement.studio_id AND reversal.reverses_id = movement.id)
     ORDER BY movement.occurred_at DESC, movement.id LIMIT ${mostRows}`,
    [studioId, since],
  );
}

/** What was wanted at setup when none was left. */
export function refusalRows(
  read: Read,
  studioId: string,
  since: string,
): Promise<{ sessionId: string; productId: string; occurredAt: string }[]> {
  return read(
    `SELECT session_id AS "sessionId", product_id AS "productId", min(occurred_at) AS "occurredAt"
     FROM unmet_demand WHERE studio_id = $1 AND occurred_at >= $2
     GROUP BY session_id, product_id ORDER BY session_id, product_id LIMIT ${mostRows}`,
    [studioId, since],
  );
}

export interface KitListRow {
  procedureId: string;
  artistId: string | null;
  items: { productId: string | null; configuration: string | null; quantity: number }[];
}

export async function kitListRows(read: Read, studioId: string): Promise<KitListRow[]> {
  const rows = await read<Omit<KitListRow, 'items'> & { items: string }>(
    `SELECT procedure_id AS "procedureId", artist_id AS "artistId", items FROM kit_list
     WHERE studio_id = $1 ORDER BY id LIMIT ${mostRows}`,
    [studioId],
  );
  return rows.map((row) => ({ ...row, items: JSON.parse(row.items) as KitListRow['items'] }));
}

export function procedureRows(
  read: Read,
  studioId: string,
): Promise<{ id: string; fromDays: number; toDays: number }[]> {
  return read(
    `SELECT id, touch_up_from_days AS "fromDays", touch_up_to_days AS "toDays" FROM procedure
     WHERE studio_id = $1 ORDER BY id LIMIT ${mostRows}`,
    [studioId],
  );
}

export function courseRows(
  read: Read,
  studioId: string,
  from: string,
): Promise<{ procedureId: string; heldOn: string; trainees: number }[]> {
  return read(
    `SELECT procedure_id AS "procedureId", held_on AS "heldOn", trainees FROM training_course
     WHERE studio_id = $1 AND cancelled_at IS NULL AND held_on >= $2 ORDER BY held_on, id LIMIT ${mostRows}`,
    [studioId, from],
  );
}

/** What a piece of a lot cost, as its deliveries say in the studio's currency; of several prices, the highest. */
export function lotCostRows(
  read: Read,
  studioId: string,
  currency: string,
): Promise<{ lotId: string; unitCostMinor: number }[]> {
  return read(
    `SELECT delivery_line.lot_id AS "lotId", max(delivery_line.unit_cost_minor) AS "unitCostMinor"
     FROM delivery_line JOIN balance
       ON balance.studio_id = delivery_line.studio_id AND balance.lot_id = delivery_line.lot_id AND balance.pieces > 0
     WHERE delivery_line.studio_id = $1 AND delivery_line.unit_cost_minor IS NOT NULL AND delivery_line.currency = $2
     GROUP BY delivery_line.lot_id ORDER BY delivery_line.lot_id LIMIT ${mostRows}`,
    [studioId, currency],
  );
}

/** When the first container of a product came. */
export function firstReceiptRows(
  read: Read,
  studioId: string,
): Promise<{ productId: string; receivedAt: string }[]> {
  return read(
    `SELECT lot.product_id AS "productId", min(container.received_at) AS "receivedAt"
     FROM container JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
     WHERE container.studio_id = $1 GROUP BY lot.product_id ORDER BY lot.product_id LIMIT ${mostRows}`,
    [studioId],
  );
}

/** A line of a purchase order. */
interface OrderLineRow {
  orderNumber: number;
  supplierId: string;
  productId: string;
  offerId: string | null;
  orderedPieces: number;
}

export interface OrderedRow extends OrderLineRow {
  /** Of the product that was ordered. */
  receivedPieces: number;
  /** Null: it is approved and about to be sent. */
  sentAt: string | null;
  sentAs: 'mail' | 'by hand' | null;
  /** When the part of the order came that came last; null: none did. */
  lastArrivedAt: string | null;
  expectedOn: string | null;
  /** 1: a person named that day; 0: it follows from the lead time; null: of a time when nobody noted that. */
  daySaid: 0 | 1 | null;
  /** Somebody changed what is expected. */
  dayChanged: 0 | 1;
  /** The day that was written when it was mailed; null: none was. */
  saidInMail: string | null;
}

const orderLineColumns = `purchase_order.number AS "orderNumber", purchase_order.supplier_id AS "supplierId",
  purchase_order_line.product_id AS "productId", purchase_order_line.offer_id AS "offerId",
  ${orderedPieces} AS "orderedPieces"`;

/** Lines of purchase orders that were approved or sent and are not received whole. */
export function orderedRows(read: Read, studioId: string): Promise<OrderedRow[]> {
  return read<OrderedRow>(
    `SELECT ${orderLineColumns},
       ${receivedPieces} AS "receivedPieces",
       purchase_order.sent_at AS "sentAt", purchase_order.sent_as AS "sentAs",
       (SELECT max(delivery.occurred_at) FROM purchase_order_line AS other
           JOIN delivery_line ON delivery_line.studio_id = other.studio_id AND delivery_line.order_line_id = other.id
           JOIN delivery ON delivery.studio_id = delivery_line.studio_id AND delivery.id = delivery_line.delivery_id
         WHERE other.studio_id = purchase_order.studio_id AND other.order_id = purchase_order.id) AS "lastArrivedAt",
       expected_delivery.expected_on AS "expectedOn", expected_delivery.day_said AS "daySaid",
       CASE WHEN expected_delivery.version > 1 THEN 1 ELSE 0 END AS "dayChanged",
       (SELECT max(mail.expected_on) FROM purchase_order_mail AS mail
         WHERE mail.studio_id = purchase_order.studio_id AND mail.order_id = purchase_order.id
           AND mail.state IN ('waiting', 'sent')) AS "saidInMail"
     FROM purchase_order
       JOIN purchase_order_line ON purchase_order_line.studio_id = purchase_order.studio_id
         AND purchase_order_line.order_id = purchase_order.id
       LEFT JOIN expected_delivery ON expected_delivery.studio_id = purchase_order.studio_id
         AND expected_delivery.id = purchase_order.expected_delivery_id AND expected_delivery.ended_at IS NULL
     WHERE purchase_order.studio_id = $1 AND purchase_order.state IN ('approved', 'sent', 'received in part')
       AND purchase_order_line.removed_at IS NULL
     ORDER BY purchase_order.number, purchase_order_line.line_number LIMIT ${mostRows}`,
    [studioId],
  );
}

/** Lines of drafts: what they ask for is not ordered yet. */
export function draftedRows(read: Read, studioId: string): Promise<OrderLineRow[]> {
  return read<OrderLineRow>(
    `SELECT ${orderLineColumns}
     FROM purchase_order
       JOIN purchase_order_line ON purchase_order_line.studio_id = purchase_order.studio_id
         AND purchase_order_line.order_id = purchase_order.id
     WHERE purchase_order.studio_id = $1 AND purchase_order.state = 'draft'
       AND purchase_order_line.removed_at IS NULL
     ORDER BY purchase_order.number, purchase_order_line.line_number LIMIT ${mostRows}`,
    [studioId],
  );
}

/** Holds on lots that are yet to arrive and that nobody has ended. */
export async function standingScopes(read: Read, studioId: string): Promise<LotScope[]> {
  const rows = await read<{ scope: string }>(
    `SELECT scope FROM standing_hold WHERE studio_id = $1 AND NOT EXISTS (
       SELECT 1 FROM standing_hold_end
       WHERE standing_hold_end.studio_id = standing_hold.studio_id
         AND standing_hold_end.standing_hold_id = standing_hold.id)
     ORDER BY recorded_at, id LIMIT ${mostRows}`,
    [studioId],
  );
  return rows.map(({ scope }) => JSON.parse(scope) as LotScope);
}

/** Deliveries that somebody expects and that no purchase order is behind: nobody wrote down what comes. */
export function unknownDeliveryRows(
  read: Read,
  studioId: string,
): Promise<{ supplier: string; on: string }[]> {
  return read(
    `SELECT DISTINCT supplier.name AS supplier, expected_delivery.expected_on AS "on"
     FROM expected_delivery JOIN supplier ON supplier.chain_id = expected_delivery.chain_id
       AND supplier.id = expected_delivery.supplier_id
     WHERE expected_delivery.studio_id = $1 AND expected_delivery.ended_at IS NULL
       AND NOT EXISTS (SELECT 1 FROM purchase_order
         WHERE purchase_order.studio_id = expected_delivery.studio_id
           AND purchase_order.expected_delivery_id = expected_delivery.id)
     ORDER BY expected_delivery.expected_on, supplier.name LIMIT ${mostDeliveries}`,
    [studioId],
  );
}

/** How many lines a delivery of a supplier has, on average. */
export function linesPerDeliveryRows(
  read: Read,
  studioId: string,
): Promise<{ supplierId: string; lines: number; deliveries: number }[]> {
  return read(
    `SELECT delivery.supplier_id AS "supplierId", count(*) AS lines, count(DISTINCT delivery.id) AS deliveries
     FROM delivery JOIN delivery_line
       ON delivery_line.studio_id = delivery.studio_id AND delivery_line.delivery_id = delivery.id
     WHERE delivery.studio_id = $1 AND delivery.origin = 'purchase' AND delivery.supplier_id IS NOT NULL
     GROUP BY delivery.supplier_id ORDER BY delivery.supplier_id LIMIT ${mostRows}`,
    [studioId],
  );
}

/** Who owns containers, and until when they work here. */
export function ownerRows(
  read: Read,
  studioId: string,
): Promise<{ personId: string; hasLeft: 0 | 1; lastDay: string | null }[]> {
  return read(
    `SELECT person.id AS "personId", CASE WHEN person.state = 'left' THEN 1 ELSE 0 END AS "hasLeft",
       coalesce(planning.leaves_on, person.until) AS "lastDay"
     FROM person LEFT JOIN artist_planning AS planning
       ON planning.studio_id = person.studio_id AND planning.person_id = person.id
     WHERE person.studio_id = $1 AND EXISTS (SELECT 1 FROM container
       WHERE container.studio_id = person.studio_id AND container.owner_id = person.id)
     ORDER BY person.id LIMIT ${mostRows}`,
    [studioId],
  );
}
