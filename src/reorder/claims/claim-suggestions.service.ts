import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders, type SqlValue } from '../../platform/database/database.js';
import { notFound } from '../../platform/problem.js';
import {
  type ArrivedLine,
  type OrderedLine,
  orderedPieces,
  orderReceipt,
} from '../purchase-orders/order-receipt.js';
import {
  claimsOfDelivery,
  claimsOfDifference,
  claimsOfShortLine,
  costOfPieces,
  type Suggestion,
  suggestionKey,
} from './claim-suggestions.js';
import type { ClaimSuggestionsDto } from './claims.dto.js';
import type { ClaimedGoodsView, ClaimSuggestionsView, ClaimSuggestionView } from './claims.views.js';

const daysBack = 90;
const mostShown = 200;
/** The latest lines of deliveries that are looked at. */
const mostLines = 5_000;

/** A line of a delivery with all that a suggestion says of it. */
interface LineRow {
  deliveryLineId: string;
  deliveryId: string;
  occurredAt: string;
  supplierId: string | null;
  supplierName: string | null;
  orderLineId: string | null;
  orderId: string | null;
  orderNumber: number | null;
  lotId: string;
  lotCode: string | null;
  useBy: string | null;
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  pieces: number;
  unitCostMinor: number | null;
  currency: string | null;
  promisedLifeDays: number | null;
}

/** A line of an order with all that a suggestion says of it. */
interface OrderLineRow extends OrderedLine {
  orderId: string;
  orderNumber: number;
  endedAs: string | null;
  supplierId: string;
  supplierName: string;
  makerName: string;
  productName: string;
  shade: string | null;
  packPriceMinor: number | null;
  currency: string;
}

/** What the record gives reason to claim of suppliers: nothing is stored, it is asked each time. */
@Injectable()
export class ClaimSuggestions {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem not-found for a delivery of another studio */
  async list(actor: Actor, { deliveryId }: ClaimSuggestionsDto): Promise<ClaimSuggestionsView> {
    const { studioId } = actor;
    const since = Temporal.Instant.from(this.clock.now())
      .subtract({ hours: 24 * daysBack })
      .toString({ fractionalSecondDigits: 3 });
    if (deliveryId !== undefined) await this.requireDelivery(studioId, deliveryId);
    const lines = await this.deliveredLines(studioId, since, deliveryId);
    const faults = await this.faultyPieces(studioId, lines);
    const orderLines = await this.orderLines(studioId, lines, deliveryId === undefined ? since : null);
    const arrived = await this.arrived(studioId, orderLines);
    const claimed = await this.claimed(studioId, lines, orderLines);

    const byLine = new Map(lines.map((line) => [line.deliveryLineId, line]));
    const byOrderLine = new Map(orderLines.map((line) => [line.id, line]));
    const found: ClaimSuggestionView[] = [];
    const told = new Set(claimed);
    const add = (suggestion: Suggestion) => {
      const key = suggestionKey(suggestion);
      const view = viewOf(suggestion, byLine, byOrderLine);
      if (view === null || told.has(key)) return;
      told.add(key);
      found.push(view);
    };
    const differences = differencesOf(orderLines, arrived);
    for (const line of lines) {
      const { brokenSeals = 0, damagedPackages = 0 } = faults.get(line.deliveryLineId) ?? {};
      const arrivedOn = localDay(line.occurredAt, actor.timeZone);
      claimsOfDelivery({ ...line, arrivedOn, brokenSeals, damagedPackages }).forEach(add);
      for (const difference of differences.get(line.deliveryLineId) ?? []) {
        add(claimsOfDifference({ ...difference, lotId: line.lotId }));
      }
    }
    for (const short of shortLinesOf(orderLines, arrived)) add(claimsOfShortLine(short));
    return { items: found.slice(0, mostShown), more: found.length > mostShown };
  }

  private async requireDelivery(studioId: string, deliveryId: string): Promise<void> {
    const [delivery] = await this.database.read('SELECT id FROM delivery WHERE studio_id = $1 AND id = $2', [
      studioId,
      deliveryId,
    ]);
    if (!delivery) throw notFound('delivery', deliveryId);
  }

  /** Lines of what was bought, the latest delivery first. */
  private deliveredLines(
    studioId: string,
    since: string,
    deliveryId: string | undefined,
  ): Promise<LineRow[]> {
    return this.database.read<LineRow>(
      `SELECT delivery_line.id AS "deliveryLineId", delivery.id AS "deliveryId",
         delivery.occurred_at AS "occurredAt", supplier.id AS "supplierId", supplier.name AS "supplierName",
         line.id AS "orderLineId", purchase_order.id AS "orderId", purchase_order.number AS "orderNumber",
         lot.id AS "lotId", lot.code AS "lotCode", lot.use_by AS "useBy", product.id AS "productId",
         maker.name AS "makerName", product.name AS "productName", product.shade,
         delivery_line.quantity_pieces AS pieces, delivery_line.unit_cost_minor AS "unitCostMinor",
         delivery_line.currency,
         COALESCE(ordered_offer.life_on_arrival_days, (
           SELECT MIN(offer.life_on_arrival_days) FROM offer
           WHERE offer.studio_id = delivery.studio_id AND offer.product_id = lot.product_id
             AND offer.supplier_id = supplier.id AND offer.ended_at IS NULL)) AS "promisedLifeDays"
       FROM delivery
         JOIN delivery_line ON delivery_line.studio_id = delivery.studio_id
           AND delivery_line.delivery_id = delivery.id
         JOIN lot ON lot.studio_id = delivery_line.studio_id AND lot.id = delivery_line.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         LEFT JOIN purchase_order_line AS line ON line.studio_id = delivery_line.studio_id
           AND line.id = delivery_line.order_line_id
         LEFT JOIN purchase_order ON purchase_order.studio_id = line.studio_id AND purchase_order.id = line.order_id
         LEFT JOIN offer AS ordered_offer ON ordered_offer.studio_id = line.studio_id
           AND ordered_offer.id = line.offer_id AND ordered_offer.product_id = lot.product_id
         LEFT JOIN supplier ON supplier.chain_id = delivery.chain_id
           AND supplier.id = COALESCE(delivery.supplier_id, purchase_order.supplier_id)
       WHERE delivery.studio_id = $1 AND delivery.origin = 'purchase'
         AND ${deliveryId === undefined ? 'delivery.occurred_at >= $2' : 'delivery.id = $2'}
       ORDER BY delivery.occurred_at DESC, delivery.id, delivery_line.line_number LIMIT ${mostLines}`,
      [studioId, deliveryId ?? since],
    );
  }

  /** Pieces put aside by what was wrong with their package, by the line that brought them. */
  private async faultyPieces(
    studioId: string,
    lines: readonly LineRow[],
  ): Promise<Map<string, { brokenSeals: number; damagedPackages: number }>> {
    const faults = new Map<string, { brokenSeals: number; damagedPackages: number }>();
    const earliest = lines.at(-1)?.occurredAt;
    if (earliest === undefined) return faults;
    // A container does not say by which line it came; its lot and the instant of its arrival do.
    const rows = await this.database.read<{
      lotId: string;
      receivedAt: string;
      reason: string;
      pieces: number;
    }>(
      `SELECT container.lot_id AS "lotId", container.received_at AS "receivedAt", hold.reason,
         SUM(movement.pieces) AS pieces
       FROM hold
         JOIN container ON container.studio_id = hold.studio_id AND container.id = hold.container_id
         JOIN movement ON movement.studio_id = container.studio_id AND movement.container_id = container.id
           AND movement.kind = 'received' AND movement.reverses_id IS NULL
       WHERE hold.studio_id = $1 AND hold.reason IN ('broken seal', 'damaged package')
         AND container.received_at >= $2
       GROUP BY container.lot_id, container.received_at, hold.reason`,
      [studioId, earliest],
    );
    for (const { lotId, receivedAt, reason, pieces } of rows) {
      const line = lines.find((one) => one.lotId === lotId && one.occurredAt === receivedAt);
      if (!line) continue;
      const sofar = faults.get(line.deliveryLineId) ?? { brokenSeals: 0, damagedPackages: 0 };
      if (reason === 'broken seal') sofar.brokenSeals = Number(pieces);
      else sofar.damagedPackages = Number(pieces);
      faults.set(line.deliveryLineId, sofar);
    }
    return faults;
  }

  /**
   * The lines of the orders that these deliveries brought something of, and of those that were closed short of late.
   * @param since null: only the former
   */
  private orderLines(
    studioId: string,
    lines: readonly LineRow[],
    since: string | null,
  ): Promise<OrderLineRow[]> {
    const orderIds = [...new Set(lines.flatMap(({ orderId }) => orderId ?? []))];
    const parameters: SqlValue[] = [studioId, ...orderIds];
    const conditions = [
      ...(orderIds.length > 0 ? [`purchase_order.id IN (${placeholders(orderIds)})`] : []),
      ...(since === null
        ? []
        : [
            `(purchase_order.ended_as = 'closed short' AND purchase_order.ended_at >= $${parameters.push(since)})`,
          ]),
    ];
    if (conditions.length === 0) return Promise.resolve([]);
    return this.database.read<OrderLineRow>(
      `SELECT line.id, line.product_id AS "productId", line.packs, line.pack_containers AS "packContainers",
         line.container_pieces AS "containerPieces", purchase_order.id AS "orderId",
         purchase_order.number AS "orderNumber", purchase_order.ended_as AS "endedAs",
         purchase_order.supplier_id AS "supplierId", supplier.name AS "supplierName",
         maker.name AS "makerName", product.name AS "productName", product.shade,
         line.pack_price_minor AS "packPriceMinor", purchase_order.currency
       FROM purchase_order
         JOIN purchase_order_line AS line ON line.studio_id = purchase_order.studio_id
           AND line.order_id = purchase_order.id AND line.removed_at IS NULL
         JOIN supplier ON supplier.chain_id = purchase_order.chain_id AND supplier.id = purchase_order.supplier_id
         JOIN product ON product.chain_id = line.chain_id AND product.id = line.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE purchase_order.studio_id = $1 AND (${conditions.join(' OR ')})
       ORDER BY purchase_order.number DESC, line.line_number LIMIT ${mostLines}`,
      parameters,
    );
  }

  /** All that ever came of these orders, and beside them, by order. */
  private async arrived(
    studioId: string,
    orderLines: readonly OrderLineRow[],
  ): Promise<Map<string, ArrivedLine[]>> {
    const orderIds = [...new Set(orderLines.map(({ orderId }) => orderId))];
    const arrived = new Map<string, ArrivedLine[]>();
    if (orderIds.length === 0) return arrived;
    const rows = await this.database.read<ArrivedLine & { orderId: string }>(
      `SELECT brought.order_id AS "orderId", delivery.id AS "deliveryId", delivery_line.id AS "deliveryLineId",
         delivery_line.order_line_id AS "orderLineId", lot.product_id AS "productId",
         delivery_line.quantity_pieces AS pieces
       FROM (SELECT DISTINCT line.order_id, named.delivery_id FROM purchase_order_line AS line
           JOIN delivery_line AS named ON named.studio_id = line.studio_id AND named.order_line_id = line.id
         WHERE line.studio_id = $1 AND line.order_id IN (${placeholders(orderIds)})) AS brought
         JOIN delivery ON delivery.studio_id = $1 AND delivery.id = brought.delivery_id
         JOIN delivery_line ON delivery_line.studio_id = $1 AND delivery_line.delivery_id = delivery.id
         JOIN lot ON lot.studio_id = delivery_line.studio_id AND lot.id = delivery_line.lot_id
         LEFT JOIN purchase_order_line AS answered ON answered.studio_id = $1
           AND answered.id = delivery_line.order_line_id
       WHERE answered.order_id IS NULL OR answered.order_id = brought.order_id
       ORDER BY delivery.occurred_at, delivery.id, delivery_line.line_number LIMIT ${4 * mostLines}`,
      [studioId, ...orderIds],
    );
    for (const { orderId, ...line } of rows) {
      const ofOrder = arrived.get(orderId);
      if (ofOrder) ofOrder.push(line);
      else arrived.set(orderId, [line]);
    }
    return arrived;
  }

  /** What is claimed of these lines, whatever became of it. */
  private async claimed(
    studioId: string,
    lines: readonly LineRow[],
    orderLines: readonly OrderLineRow[],
  ): Promise<string[]> {
    const parameters: SqlValue[] = [studioId];
    const among = (column: string, ids: readonly string[]) =>
      ids.length === 0 ? [] : [`${column} IN (${ids.map((id) => `$${parameters.push(id)}`).join(', ')})`];
    const conditions = [
      ...among(
        'delivery_line_id',
        lines.map(({ deliveryLineId }) => deliveryLineId),
      ),
      ...among(
        'order_line_id',
        orderLines.map(({ id }) => id),
      ),
    ];
    if (conditions.length === 0) return [];
    const rows = await this.database.read<Parameters<typeof suggestionKey>[0]>(
      `SELECT DISTINCT reason, order_line_id AS "orderLineId", delivery_line_id AS "deliveryLineId"
       FROM supplier_claim WHERE studio_id = $1 AND (${conditions.join(' OR ')})`,
      parameters,
    );
    return rows.map(suggestionKey);
  }
}

function receiptsOf(orderLines: readonly OrderLineRow[], arrived: ReadonlyMap<string, ArrivedLine[]>) {
  const byOrder = new Map<string, OrderLineRow[]>();
  for (const line of orderLines) byOrder.set(line.orderId, [...(byOrder.get(line.orderId) ?? []), line]);
  return [...byOrder].map(([orderId, lines]) => ({
    endedAs: lines[0]?.endedAs ?? null,
    receipt: orderReceipt(lines, arrived.get(orderId) ?? []),
  }));
}

/** What came otherwise than it was ordered, by the line of the delivery. */
function differencesOf(orderLines: readonly OrderLineRow[], arrived: ReadonlyMap<string, ArrivedLine[]>) {
  const differences = new Map<string, ReturnType<typeof orderReceipt>['differences']>();
  for (const { receipt } of receiptsOf(orderLines, arrived)) {
    for (const one of receipt.differences) {
      differences.set(one.deliveryLineId, [...(differences.get(one.deliveryLineId) ?? []), one]);
    }
  }
  return differences;
}

function shortLinesOf(orderLines: readonly OrderLineRow[], arrived: ReadonlyMap<string, ArrivedLine[]>) {
  return receiptsOf(orderLines, arrived)
    .filter(({ endedAs }) => endedAs === 'closed short')
    .flatMap(({ receipt }) => receipt.lines)
    .filter(({ outstandingPieces }) => outstandingPieces > 0)
    .map(({ orderLineId, outstandingPieces }) => ({ orderLineId, missingPieces: outstandingPieces }));
}

/** Null: nobody is known whom it could be claimed of. */
function viewOf(
  { why, ...suggestion }: Suggestion,
  lines: ReadonlyMap<string, LineRow>,
  orderLines: ReadonlyMap<string, OrderLineRow>,
): ClaimSuggestionView | null {
  const line = lines.get(suggestion.deliveryLineId ?? '');
  const ordered = orderLines.get(suggestion.orderLineId ?? line?.orderLineId ?? '');
  const { supplierId = null, supplierName = null } = line ?? ordered ?? {};
  if (supplierId === null || supplierName === null) return null;
  const goods: ClaimedGoodsView = {
    productId: (line ?? ordered)?.productId ?? null,
    makerName: (line ?? ordered)?.makerName ?? null,
    productName: (line ?? ordered)?.productName ?? null,
    shade: (line ?? ordered)?.shade ?? null,
    lotCode: line?.lotCode ?? null,
    orderNumber: (ordered ?? line)?.orderNumber ?? null,
    orderId: (ordered ?? line)?.orderId ?? null,
    deliveryId: line?.deliveryId ?? null,
    deliveredAt: line?.occurredAt ?? null,
  };
  const { amountMinor, currency } = costOf(suggestion.pieces, line, ordered);
  return { ...suggestion, supplierId, supplierName, goods, amountMinor, currency, why };
}

/** By what was paid for a piece, else by what was ordered, where that is the same product. */
function costOf(
  pieces: number,
  line: LineRow | undefined,
  ordered: OrderLineRow | undefined,
): { amountMinor: number | null; currency: string | null } {
  if (line && line.unitCostMinor !== null) {
    return { amountMinor: line.unitCostMinor * pieces, currency: line.currency };
  }
  if (!ordered || ordered.packPriceMinor === null || (line && line.productId !== ordered.productId)) {
    return { amountMinor: null, currency: null };
  }
  const packPieces = orderedPieces({ ...ordered, packs: 1 });
  const amountMinor = costOfPieces(pieces, { minor: ordered.packPriceMinor, pieces: packPieces });
  return { amountMinor, currency: ordered.currency };
}
