import type { Read } from '../../platform/database/database.js';
import type { ContainerForm } from '../../stock/vocabulary.js';
import { deliveredLines } from '../supply/delivered-lines.sql.js';

/*
 * What a replay asks of the record beside what a plan asks: a fixed number of look-ups, each with a limit.
 */

const mostRows = 100_000;

export interface StockThenRow {
  productId: string;
  lotId: string;
  form: ContainerForm;
  useBy: string | null;
  openedAt: string | null;
  usableThrough: string | null;
  pieces: number;
  microlitres: number;
}

/** What stood on the shelf just before an instant, by what has been moved until then; container by container. */
export function stockThenRows(read: Read, studioId: string, instant: string): Promise<StockThenRow[]> {
  return read<StockThenRow>(
    `SELECT lot.product_id AS "productId", lot.id AS "lotId", container.form, lot.use_by AS "useBy",
       container.opened_at AS "openedAt", container.usable_through AS "usableThrough",
       sum(movement.pieces) AS pieces, sum(movement.microlitres) AS microlitres
     FROM movement
       JOIN container ON container.studio_id = movement.studio_id AND container.id = movement.container_id
       JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
     WHERE movement.studio_id = $1 AND movement.occurred_at < $2
     GROUP BY container.id, lot.product_id, lot.id, container.form, lot.use_by, container.opened_at,
       container.usable_through
     HAVING sum(movement.pieces) > 0
     ORDER BY container.id LIMIT ${mostRows}`,
    [studioId, instant],
  );
}

export interface ReceivedRow {
  deliveryId: string;
  /** The purchase order it answers; null: none was written. */
  purchaseOrderId: string | null;
  origin: 'purchase' | 'gift or sample' | 'opening stock';
  occurredAt: string;
  /** When it was ordered: an instant, or an ISO day, whichever is known. */
  sentAt: string | null;
  orderedOn: string | null;
  productId: string;
  useBy: string | null;
  pieces: number;
  /** Of one piece, in the studio's currency; null: unknown. */
  unitCostMinor: number | null;
}

/** What was delivered since an instant, line by line. */
export function receivedRows(
  read: Read,
  studioId: string,
  since: string,
  currency: string,
): Promise<ReceivedRow[]> {
  return read<ReceivedRow>(
    `SELECT delivery.id AS "deliveryId", purchase_order.id AS "purchaseOrderId", delivery.origin,
       delivery.occurred_at AS "occurredAt", purchase_order.sent_at AS "sentAt",
       delivery.ordered_on AS "orderedOn", lot.product_id AS "productId", lot.use_by AS "useBy",
       delivery_line.quantity_pieces AS pieces,
       CASE WHEN delivery_line.currency = $3 THEN delivery_line.unit_cost_minor END AS "unitCostMinor"
     FROM ${deliveredLines}
     WHERE delivery.studio_id = $1 AND delivery.occurred_at >= $2
     ORDER BY delivery.occurred_at, delivery.id, delivery_line.line_number LIMIT ${mostRows}`,
    [studioId, since, currency],
  );
}

export interface LevelRow {
  subjectKind: 'product' | 'configuration';
  subjectId: string;
  minimumPieces: number;
}

/** Minima that somebody set by hand; those taken from a plan would compare the plan with itself. */
export function levelsByHandRows(read: Read, studioId: string): Promise<LevelRow[]> {
  return read<LevelRow>(
    `SELECT subject_kind AS "subjectKind", subject_id AS "subjectId", minimum_pieces AS "minimumPieces"
     FROM stock_level WHERE studio_id = $1 AND plan_id IS NULL
     ORDER BY subject_kind, subject_id LIMIT ${mostRows}`,
    [studioId],
  );
}
