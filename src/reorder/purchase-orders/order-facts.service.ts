import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { placeholders, type Read } from '../../platform/database/database.js';
import { notFound } from '../../platform/problem.js';
import { awaitedLines } from '../supply/awaited-lines.query.js';
import type { LeadTime } from '../supply/lead-time.js';
import { leadTimeOfProduct, leadTimeOfSupplier } from '../supply/learnt-lead-time.js';
import { observedArrivals } from '../supply/observed-arrivals.query.js';
import { packPriceMinor } from '../supply/pack-cost.js';
import type { PackPrice } from '../supply/pack-price.js';
import { SupplierContacts } from '../supply/supplier-contacts.service.js';
import type { ExpectedDay } from './expected-arrival.js';
import { type PlanOfOrder, planOfOrder } from './order-plan.query.js';
import { type ArrivedLine, type OrderReceipt, orderReceipt } from './order-receipt.js';
import { type OrderSums, orderSums } from './order-sums.js';
import type { PurchaseOrder, PurchaseOrderMail } from './purchase-order.entity.js';

/** A line with what it names. */
export interface OrderLineFacts {
  id: string;
  lineNumber: number;
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  archivedAt: string | null;
  offerId: string | null;
  orderCode: string | null;
  packs: number;
  packContainers: number;
  containerPieces: number;
  packPriceMinor: number | null;
  /** Null: it was written by hand. */
  offer: OfferOfLine | null;
}

export interface OfferOfLine {
  ended: boolean;
  minimumPacks: number;
  prices: PackPrice[];
  /** Whether its prices are in the currency of the order. */
  sameCurrency: boolean;
  leadTimeDays: number | null;
}

/** A line of a delivery, with what came in it. */
export interface ArrivedGoods extends ArrivedLine {
  makerName: string;
  productName: string;
  shade: string | null;
  occurredAt: string;
  reference: string | null;
}

export interface ExpectedFacts extends ExpectedDay {
  id: string;
  endedAs: 'received' | 'called off' | null;
  version: number;
}

/** What the supplier's terms say, as far as they are in the currency of the order. */
export interface TermsOfOrder {
  quotedLeadTimeDays: number | null;
  minimumOrderMinor: number | null;
  deliveryCostMinor: number | null;
  freeDeliveryFromMinor: number | null;
  mailAddress: string | null;
  customerNumber: string | null;
}

/** An order with all that is decided and shown of it. */
export interface OrderFacts {
  order: PurchaseOrder;
  supplierName: string;
  /** Those that stand, by their number. */
  lines: OrderLineFacts[];
  /** Of a draft; null: it was drafted from none. */
  plan: PlanOfOrder | null;
  terms: TermsOfOrder;
  sums: OrderSums;
  arrived: ArrivedGoods[];
  receipt: OrderReceipt;
  expected: ExpectedFacts | null;
  /** The latest; null: none was asked for. */
  mail: PurchaseOrderMail | null;
}

type OrderRow = PurchaseOrder & {
  supplierName: string;
  termsCurrency: string | null;
  quotedLeadTimeDays: number | null;
  minimumOrderMinor: number | null;
  termsDeliveryCostMinor: number | null;
  freeDeliveryFromMinor: number | null;
};

type LineRow = Omit<OrderLineFacts, 'offer'> & {
  offerEndedAt: string | null;
  minimumPacks: number | null;
  prices: string | null;
  offerCurrency: string | null;
  offerLeadTimeDays: number | null;
};

const columnsOfOrder = `purchase_order.studio_id AS "studioId", purchase_order.id,
  purchase_order.chain_id AS "chainId", purchase_order.number, purchase_order.supplier_id AS "supplierId",
  purchase_order.state, purchase_order.plan_id AS "planId", purchase_order.currency,
  purchase_order.delivery_cost_minor AS "deliveryCostMinor", purchase_order.approved_by AS "approvedBy",
  purchase_order.approved_at AS "approvedAt", purchase_order.sent_as AS "sentAs",
  purchase_order.sent_at AS "sentAt", purchase_order.expected_delivery_id AS "expectedDeliveryId",
  purchase_order.ended_at AS "endedAt", purchase_order.ended_as AS "endedAs", purchase_order.version,
  purchase_order.created_at AS "createdAt"`;

/** Loads an order whole, in a fixed number of queries. */
@Injectable()
export class OrderFactsReader {
  constructor(private readonly contacts: SupplierContacts) {}

  /** @throws Problem not-found */
  async of(read: Read, studioId: string, orderId: string): Promise<OrderFacts> {
    const [row] = await read<OrderRow>(
      `SELECT ${columnsOfOrder}, supplier.name AS "supplierName", supplier_terms.currency AS "termsCurrency",
         supplier_terms.quoted_lead_time_days AS "quotedLeadTimeDays",
         supplier_terms.minimum_order_minor AS "minimumOrderMinor",
         supplier_terms.delivery_cost_minor AS "termsDeliveryCostMinor",
         supplier_terms.free_delivery_from_minor AS "freeDeliveryFromMinor"
       FROM purchase_order
         JOIN supplier ON supplier.chain_id = purchase_order.chain_id AND supplier.id = purchase_order.supplier_id
         LEFT JOIN supplier_terms ON supplier_terms.studio_id = purchase_order.studio_id
           AND supplier_terms.supplier_id = purchase_order.supplier_id
       WHERE purchase_order.studio_id = $1 AND purchase_order.id = $2`,
      [studioId, orderId],
    );
    if (!row) throw notFound('purchase order', orderId);
    const { supplierName, termsCurrency, quotedLeadTimeDays, ...rest } = row;
    const { minimumOrderMinor, termsDeliveryCostMinor, freeDeliveryFromMinor, ...order } = rest;
    const lines = await linesOf(read, studioId, orderId, order.currency);
    const arrived = await arrivedOf(read, studioId, orderId);
    const contact = await this.contacts.of(read, studioId, order.supplierId);
    const offerIds = lines.flatMap(({ offerId }) => offerId ?? []);
    // Amounts of another currency say nothing here.
    const sameCurrency = termsCurrency === order.currency;
    const terms: TermsOfOrder = {
      quotedLeadTimeDays,
      minimumOrderMinor: sameCurrency ? minimumOrderMinor : null,
      deliveryCostMinor: sameCurrency ? termsDeliveryCostMinor : null,
      freeDeliveryFromMinor: sameCurrency ? freeDeliveryFromMinor : null,
      mailAddress: contact?.mailAddress ?? null,
      customerNumber: contact?.customerNumber ?? null,
    };
    return {
      order,
      supplierName,
      lines,
      plan: order.state === 'draft' ? await planOfOrder(read, order, offerIds) : null,
      terms,
      // What was approved stands, whatever the terms say by now.
      sums: orderSums(lines, order.deliveryCostMinor, order.approvedAt === null ? terms : null),
      arrived,
      receipt: orderReceipt(lines, arrived),
      expected: await expectedOf(read, studioId, order.expectedDeliveryId),
      mail: await latestMail(read, studioId, orderId),
    };
  }

  /** How long the lines of an order take to come, by what was seen of the supplier and what is said. */
  async leadTimes(
    read: Read,
    { studioId, timeZone }: Actor,
    { order, lines, terms }: OrderFacts,
    now: string,
  ): Promise<LeadTime[]> {
    const { supplierId } = order;
    const record = {
      arrivals: await observedArrivals(read, { studioId, timeZone }, now, [supplierId]),
      awaited: await awaitedLines(read, { studioId, timeZone }, now, [supplierId]),
    };
    const own = lines.flatMap(({ productId, offer }) => {
      const days = offer?.leadTimeDays ?? null;
      return days === null ? [] : [leadTimeOfProduct(record, supplierId, productId, days)];
    });
    if (own.length > 0 && own.length === lines.length) return own;
    return [...own, leadTimeOfSupplier(record, supplierId, terms.quotedLeadTimeDays)];
  }
}

/** What the offer asks for one pack of so many; null: there is none, or in another currency. */
export function offeredPackPrice(offer: OfferOfLine | null, packs: number): number | null {
  return offer?.sameCurrency && offer.prices.length > 0 ? packPriceMinor(offer.prices, packs) : null;
}

async function linesOf(
  read: Read,
  studioId: string,
  orderId: string,
  currency: string,
): Promise<OrderLineFacts[]> {
  const rows = await read<LineRow>(
    `SELECT line.id, line.line_number AS "lineNumber", line.product_id AS "productId",
       maker.name AS "makerName", product.name AS "productName", product.shade,
       product.archived_at AS "archivedAt", line.offer_id AS "offerId", line.order_code AS "orderCode",
       line.packs, line.pack_containers AS "packContainers", line.container_pieces AS "containerPieces",
       line.pack_price_minor AS "packPriceMinor", offer.ended_at AS "offerEndedAt",
       offer.minimum_packs AS "minimumPacks", offer.prices, offer.currency AS "offerCurrency",
       offer.lead_time_days AS "offerLeadTimeDays"
     FROM purchase_order_line AS line
       JOIN product ON product.chain_id = line.chain_id AND product.id = line.product_id
       JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       LEFT JOIN offer ON offer.studio_id = line.studio_id AND offer.id = line.offer_id
     WHERE line.studio_id = $1 AND line.order_id = $2 AND line.removed_at IS NULL
     ORDER BY line.line_number`,
    [studioId, orderId],
  );
  return rows.map(
    ({ offerEndedAt, minimumPacks, prices, offerCurrency, offerLeadTimeDays, ...line }): OrderLineFacts => ({
      ...line,
      offer:
        minimumPacks === null
          ? null
          : {
              ended: offerEndedAt !== null,
              minimumPacks,
              prices: JSON.parse(prices ?? '[]') as PackPrice[],
              sameCurrency: offerCurrency === currency,
              leadTimeDays: offerLeadTimeDays,
            },
    }),
  );
}

/** Every line of the deliveries that brought something of the order, in the order in which they came. */
async function arrivedOf(read: Read, studioId: string, orderId: string): Promise<ArrivedGoods[]> {
  return read<ArrivedGoods>(
    `SELECT delivery.id AS "deliveryId", delivery_line.id AS "deliveryLineId",
       delivery_line.order_line_id AS "orderLineId", lot.product_id AS "productId",
       delivery_line.quantity_pieces AS pieces, maker.name AS "makerName", product.name AS "productName",
       product.shade, delivery.occurred_at AS "occurredAt", delivery.reference
     FROM delivery_line
       JOIN delivery ON delivery.studio_id = delivery_line.studio_id AND delivery.id = delivery_line.delivery_id
       JOIN lot ON lot.studio_id = delivery_line.studio_id AND lot.id = delivery_line.lot_id
       JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
       JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
     WHERE delivery_line.studio_id = $1 AND delivery_line.delivery_id IN (
       SELECT named.delivery_id FROM purchase_order_line AS line
         JOIN delivery_line AS named ON named.studio_id = line.studio_id AND named.order_line_id = line.id
       WHERE line.studio_id = $1 AND line.order_id = $2)
       -- What answers another order came with this one, and is no difference here.
       AND (delivery_line.order_line_id IS NULL OR NOT EXISTS (
         SELECT 1 FROM purchase_order_line AS other
         WHERE other.studio_id = delivery_line.studio_id AND other.id = delivery_line.order_line_id
           AND other.order_id <> $2))
     ORDER BY delivery.occurred_at, delivery.id, delivery_line.line_number`,
    [studioId, orderId],
  );
}

async function expectedOf(read: Read, studioId: string, id: string | null): Promise<ExpectedFacts | null> {
  if (id === null) return null;
  const [row] = await read<ExpectedFacts>(
    `SELECT id, expected_on AS "expectedOn", day_said AS "daySaid", ended_as AS "endedAs", version FROM expected_delivery
     WHERE studio_id = $1 AND id = $2`,
    [studioId, id],
  );
  return row ?? null;
}

async function latestMail(read: Read, studioId: string, orderId: string): Promise<PurchaseOrderMail | null> {
  const [row] = await read<PurchaseOrderMail>(
    `SELECT studio_id AS "studioId", id, order_id AS "orderId", state, expected_on AS "expectedOn", attempts, begun,
       next_attempt_at AS "nextAttemptAt", last_error AS "lastError", person_id AS "personId", version,
       created_at AS "createdAt", settled_at AS "settledAt"
     FROM purchase_order_mail WHERE studio_id = $1 AND order_id = $2 ORDER BY created_at DESC, id DESC LIMIT 1`,
    [studioId, orderId],
  );
  return row ?? null;
}

/**
 * The orders in which products stand already, by product: those drafted from these plans that were not called off, and all
 * that are not sent yet, for no plan counts them as on the way.
 */
export async function orderedProducts(
  read: Read,
  studioId: string,
  planIds: readonly string[],
): Promise<Map<string, { orderId: string; number: number }>> {
  const rows = await read<{ productId: string; orderId: string; number: number }>(
    `SELECT line.product_id AS "productId", purchase_order.id AS "orderId", purchase_order.number
     FROM purchase_order JOIN purchase_order_line AS line
       ON line.studio_id = purchase_order.studio_id AND line.order_id = purchase_order.id
     WHERE purchase_order.studio_id = $1 AND line.removed_at IS NULL
       AND (purchase_order.state IN ('draft', 'approved')
         OR (purchase_order.plan_id IN (${placeholders(planIds)}) AND purchase_order.state <> 'called off'))
     ORDER BY purchase_order.number`,
    [studioId, ...planIds],
  );
  return new Map(rows.map(({ productId, ...order }) => [productId, order]));
}
