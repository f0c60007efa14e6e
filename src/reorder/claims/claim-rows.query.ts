import type { Read, SqlValue } from '../../platform/database/database.js';
import { claimStepsOf } from './claim-steps.js';
import type { ClaimedGoodsView, ClaimView } from './claims.views.js';

/** A claim with all it names. */
export interface ClaimRow extends Omit<ClaimView, 'goods' | 'steps' | 'hasNote'>, ClaimedGoodsView {
  dataKeyId: string | null;
  noteSealed: string | null;
  useBy: string | null;
  orderCode: string | null;
  deliveryReference: string | null;
}

/**
 * Claims of a studio, the latest first.
 * @param further conditions and limit after that of the studio, whose id is `$1`
 */
export function claimRows(read: Read, further: string, parameters: readonly SqlValue[]): Promise<ClaimRow[]> {
  return read<ClaimRow>(
    `SELECT claim.id, claim.supplier_id AS "supplierId", supplier.name AS "supplierName",
       claim.order_line_id AS "orderLineId", claim.delivery_line_id AS "deliveryLineId", claim.lot_id AS "lotId",
       claim.reason, claim.pieces, claim.amount_minor AS "amountMinor", claim.currency, claim.state,
       claim.settled_minor AS "settledMinor", claim.data_key_id AS "dataKeyId", claim.note_sealed AS "noteSealed",
       claim.version, claim.created_at AS "createdAt", claim.sent_at AS "sentAt", claim.ended_at AS "endedAt",
       product.id AS "productId", maker.name AS "makerName", product.name AS "productName", product.shade,
       lot.code AS "lotCode", lot.use_by AS "useBy", purchase_order.number AS "orderNumber",
       purchase_order.id AS "orderId", line.order_code AS "orderCode", delivery.id AS "deliveryId",
       delivery.occurred_at AS "deliveredAt", delivery.reference AS "deliveryReference"
     FROM supplier_claim AS claim
       JOIN supplier ON supplier.chain_id = claim.chain_id AND supplier.id = claim.supplier_id
       LEFT JOIN delivery_line ON delivery_line.studio_id = claim.studio_id
         AND delivery_line.id = claim.delivery_line_id
       LEFT JOIN delivery ON delivery.studio_id = delivery_line.studio_id AND delivery.id = delivery_line.delivery_id
       LEFT JOIN purchase_order_line AS line ON line.studio_id = claim.studio_id
         AND line.id = COALESCE(claim.order_line_id, delivery_line.order_line_id)
       LEFT JOIN purchase_order ON purchase_order.studio_id = line.studio_id AND purchase_order.id = line.order_id
       LEFT JOIN lot ON lot.studio_id = claim.studio_id AND lot.id = COALESCE(claim.lot_id, delivery_line.lot_id)
       LEFT JOIN product ON product.chain_id = claim.chain_id
         AND product.id = COALESCE(lot.product_id, line.product_id)
       LEFT JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
     WHERE claim.studio_id = $1 ${further}`,
    parameters,
  );
}

/** What is shown of a claim without its note, for answers to writes are kept. */
export function viewOfClaim(row: ClaimRow): ClaimView {
  const { productId, makerName, productName, shade, lotCode, orderNumber, orderId, deliveryId, deliveredAt } =
    row;
  return {
    id: row.id,
    supplierId: row.supplierId,
    supplierName: row.supplierName,
    orderLineId: row.orderLineId,
    deliveryLineId: row.deliveryLineId,
    lotId: row.lotId,
    goods: {
      productId,
      makerName,
      productName,
      shade,
      lotCode,
      orderNumber,
      orderId,
      deliveryId,
      deliveredAt,
    },
    reason: row.reason,
    pieces: row.pieces,
    amountMinor: row.amountMinor,
    currency: row.currency,
    state: row.state,
    steps: [...claimStepsOf(row.state)],
    settledMinor: row.settledMinor,
    hasNote: row.noteSealed !== null,
    version: row.version,
    createdAt: row.createdAt,
    sentAt: row.sentAt,
    endedAt: row.endedAt,
  };
}
