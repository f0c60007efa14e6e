import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database, placeholders, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound } from '../platform/problem.js';
import type { PageDto } from '../platform/request.dto.js';
import type { DeliveryLineView, DeliveryPageView, DeliveryView } from './deliveries.views.js';

type DeliveryRow = Omit<DeliveryView, 'lines'>;
type LineRow = DeliveryLineView & { deliveryId: string };

const deliveryColumns = `delivery.id, delivery.origin, delivery.supplier_id AS "supplierId",
  supplier.name AS "supplierName", delivery.ordered_on AS "orderedOn", delivery.reference,
  delivery.occurred_at AS "occurredAt", delivery.recorded_at AS "recordedAt", delivery.person_id AS "personId"`;
const deliveryTables = `delivery LEFT JOIN supplier
  ON supplier.chain_id = delivery.chain_id AND supplier.id = delivery.supplier_id`;

/** What arrived, latest first. */
@Injectable()
export class Deliveries {
  constructor(private readonly database: Database) {}

  async list(actor: Actor, { limit = defaultPageSize, after }: PageDto): Promise<DeliveryPageView> {
    await refuseUnknownStart(this.database.read, 'delivery', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    let before = '';
    if (after !== undefined) {
      parameters.push(after);
      before = `AND (delivery.occurred_at, delivery.id) < (
        SELECT occurred_at, id FROM delivery AS last WHERE last.studio_id = $1 AND last.id = $2)`;
    }
    const rows = await this.database.read<DeliveryRow>(
      `SELECT ${deliveryColumns} FROM ${deliveryTables} WHERE delivery.studio_id = $1 ${before}
       ORDER BY delivery.occurred_at DESC, delivery.id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: await this.withLines(actor, shown), next };
  }

  async show(actor: Actor, deliveryId: string): Promise<DeliveryView> {
    const rows = await this.database.read<DeliveryRow>(
      `SELECT ${deliveryColumns} FROM ${deliveryTables} WHERE delivery.studio_id = $1 AND delivery.id = $2`,
      [actor.studioId, deliveryId],
    );
    const [delivery] = await this.withLines(actor, rows);
    if (!delivery) throw notFound('delivery', deliveryId);
    return delivery;
  }

  private async withLines(actor: Actor, deliveries: readonly DeliveryRow[]): Promise<DeliveryView[]> {
    if (deliveries.length === 0) return [];
    const lines = await this.database.read<LineRow>(
      `SELECT delivery_line.delivery_id AS "deliveryId", delivery_line.id,
         delivery_line.line_number AS "lineNumber", lot.product_id AS "productId", maker.name AS "makerName",
         product.name AS "productName", product.shade, lot.id AS "lotId", lot.code, lot.use_by AS "useBy",
         delivery_line.quantity_pieces AS "quantityPieces", delivery_line.unit_cost_minor AS "unitCostMinor",
         delivery_line.currency, delivery_line.order_line_id AS "orderLineId"
       FROM delivery_line
         JOIN lot ON lot.studio_id = delivery_line.studio_id AND lot.id = delivery_line.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE delivery_line.studio_id = $1
         AND delivery_line.delivery_id IN (${placeholders(deliveries)})
       ORDER BY delivery_line.delivery_id, delivery_line.line_number`,
      [actor.studioId, ...deliveries.map((delivery) => delivery.id)],
    );
    return deliveries.map((delivery) => ({
      ...delivery,
      lines: lines
        .filter((line) => line.deliveryId === delivery.id)
        .map(({ deliveryId: _, ...line }) => line),
    }));
  }
}
