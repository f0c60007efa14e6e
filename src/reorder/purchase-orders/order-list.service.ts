import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders, type Read, type SqlValue } from '../../platform/database/database.js';
import { grouped } from '../../platform/grouped.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { isLateDelivery } from '../../stock/expected-deliveries/late-delivery.js';
import { type PurchaseOrderState, purchaseOrderStates } from './order-states.js';
import { OrderViews } from './order-views.service.js';
import type { PurchaseOrderPageDto } from './purchase-orders.dto.js';
import type {
  PurchaseOrderPageView,
  PurchaseOrderSummaryView,
  PurchaseOrderView,
} from './purchase-orders.views.js';

type SummaryRow = Omit<
  PurchaseOrderSummaryView,
  'late' | 'lines' | 'productIds' | 'linesMinor' | 'unpricedLines'
> & {
  expectedEndedAs: string | null;
};

interface LineRow {
  orderId: string;
  productId: string;
  packs: number;
  packPriceMinor: number | null;
}

const groups: Record<'open' | 'ended' | 'all', readonly PurchaseOrderState[]> = {
  open: ['draft', 'approved', 'sent', 'received in part'],
  ended: ['closed', 'called off'],
  all: purchaseOrderStates,
};

/** Purchase orders as they stand. */
@Injectable()
export class OrderList {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly views: OrderViews,
  ) {}

  async list(
    actor: Actor,
    { state = 'open', supplierId, limit = defaultPageSize, after }: PurchaseOrderPageDto,
  ): Promise<PurchaseOrderPageView> {
    await refuseUnknownStart(this.database.read, 'purchase_order', actor.studioId, after);
    const states = state === 'open' || state === 'ended' || state === 'all' ? groups[state] : [state];
    const parameters: SqlValue[] = [actor.studioId, ...states];
    let further = '';
    if (supplierId !== undefined) {
      further += ` AND purchase_order.supplier_id = $${parameters.push(supplierId)}`;
    }
    if (after !== undefined) {
      further += ` AND purchase_order.number < (SELECT number FROM purchase_order AS last
        WHERE last.studio_id = $1 AND last.id = $${parameters.push(after)})`;
    }
    const rows = await this.database.read<SummaryRow>(
      `SELECT purchase_order.id, purchase_order.number, purchase_order.supplier_id AS "supplierId",
         supplier.name AS "supplierName", purchase_order.state, purchase_order.plan_id AS "planId",
         purchase_order.currency, purchase_order.sent_at AS "sentAt",
         purchase_order.expected_delivery_id AS "expectedDeliveryId",
         expected_delivery.expected_on AS "expectedOn", expected_delivery.ended_as AS "expectedEndedAs",
         (SELECT mail.state FROM purchase_order_mail AS mail
          WHERE mail.studio_id = purchase_order.studio_id AND mail.order_id = purchase_order.id
          ORDER BY mail.created_at DESC, mail.id DESC LIMIT 1) AS "mailState",
         purchase_order.ended_as AS "endedAs", purchase_order.version, purchase_order.created_at AS "createdAt"
       FROM purchase_order
         JOIN supplier ON supplier.chain_id = purchase_order.chain_id AND supplier.id = purchase_order.supplier_id
         LEFT JOIN expected_delivery ON expected_delivery.studio_id = purchase_order.studio_id
           AND expected_delivery.id = purchase_order.expected_delivery_id
       WHERE purchase_order.studio_id = $1 AND purchase_order.state IN (${placeholders(states)}) ${further}
       ORDER BY purchase_order.number DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const lines = await linesOf(
      this.database.read,
      actor.studioId,
      shown.map(({ id }) => id),
    );
    const today = localDay(this.clock.now(), actor.timeZone);
    return { items: shown.map((row) => summaryOf(row, lines.get(row.id) ?? [], today)), next };
  }

  /** @throws Problem not-found */
  show(actor: Actor, id: string): Promise<PurchaseOrderView> {
    return this.views.of(this.database.read, actor, id, this.clock.now());
  }
}

/** @returns the lines of some orders that were not taken off, by order */
async function linesOf(
  read: Read,
  studioId: string,
  orderIds: readonly string[],
): Promise<Map<string, LineRow[]>> {
  if (orderIds.length === 0) return new Map();
  const rows = await read<LineRow>(
    `SELECT order_id AS "orderId", product_id AS "productId", packs, pack_price_minor AS "packPriceMinor"
     FROM purchase_order_line
     WHERE studio_id = $1 AND order_id IN (${placeholders(orderIds)}) AND removed_at IS NULL
     ORDER BY order_id, line_number`,
    [studioId, ...orderIds],
  );
  return grouped(rows, ({ orderId }) => orderId);
}

function summaryOf(
  { expectedEndedAs, ...row }: SummaryRow,
  lines: readonly LineRow[],
  today: string,
): PurchaseOrderSummaryView {
  const stillExpected = row.expectedOn !== null && expectedEndedAs === null;
  return {
    ...row,
    lines: lines.length,
    productIds: [...new Set(lines.map(({ productId }) => productId))],
    linesMinor: lines.reduce((sum, { packs, packPriceMinor }) => sum + packs * (packPriceMinor ?? 0), 0),
    unpricedLines: lines.filter(({ packPriceMinor }) => packPriceMinor === null).length,
    expectedOn: stillExpected ? row.expectedOn : null,
    late: row.expectedOn !== null && isLateDelivery(row.expectedOn, expectedEndedAs, today),
  };
}
