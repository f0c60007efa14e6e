import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { productLabel } from '../../catalogue/product-label.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Config } from '../../platform/config.js';
import type { Read } from '../../platform/database/database.js';
import { isLateDelivery } from '../../stock/expected-deliveries/late-delivery.js';
import { writtenMoney } from '../written-money.js';
import {
  type ExpectedFacts,
  type OrderFacts,
  OrderFactsReader,
  offeredPackPrice,
} from './order-facts.service.js';
import { orderedPieces } from './order-receipt.js';
import { stepsOf } from './order-steps.js';
import { lineMinor } from './order-sums.js';
import { type OrderWarning, orderWarnings } from './order-warnings.js';
import type { PurchaseOrderMail } from './purchase-order.entity.js';
import type {
  PurchaseOrderDeliveryView,
  PurchaseOrderDifferenceView,
  PurchaseOrderExpectedView,
  PurchaseOrderLineView,
  PurchaseOrderMailView,
  PurchaseOrderView,
} from './purchase-orders.views.js';

/** Says of an order what is shown of it. No address of the supplier is in it, for answers to writes are kept. */
@Injectable()
export class OrderViews {
  constructor(
    private readonly reader: OrderFactsReader,
    private readonly config: Config,
  ) {}

  /**
   * @param now ISO 8601 instant, by which it is late
   * @throws Problem not-found
   */
  async of(read: Read, actor: Actor, orderId: string, now: string): Promise<PurchaseOrderView> {
    return this.view(await this.reader.of(read, actor.studioId, orderId), localDay(now, actor.timeZone));
  }

  /** Why an order cannot be sent by mail; null: it can. */
  mailObstacle({ terms }: OrderFacts): PurchaseOrderView['mailObstacle'] {
    if (this.config.mailServer === undefined || this.config.MAIL_FROM === undefined) return 'no mail server';
    return terms.mailAddress === null ? 'no mail address' : null;
  }

  private view(facts: OrderFacts, today: string): PurchaseOrderView {
    const { order, supplierName, sums, terms, expected, mail } = facts;
    const { studioId: _, chainId: __, deliveryCostMinor: ___, expectedDeliveryId: ____, ...row } = order;
    return {
      ...row,
      supplierName,
      steps: [...stepsOf(order.state)],
      lines: linesOf(facts),
      sums: { ...sums, minimumOrderMinor: terms.minimumOrderMinor },
      warnings: order.state === 'draft' ? warningsOf(facts, today) : [],
      mailObstacle: this.mailObstacle(facts),
      mail: mail && mailViewOf(mail),
      expected: expected && expectedViewOf(expected, today),
      deliveries: deliveriesOf(facts),
      differences: differencesOf(facts),
    };
  }
}

function expectedViewOf(
  { id, expectedOn, endedAs, version }: ExpectedFacts,
  today: string,
): PurchaseOrderExpectedView {
  return { id, expectedOn, endedAs, version, late: isLateDelivery(expectedOn, endedAs, today) };
}

/**
 * What should be looked at before the order is approved.
 * @param today the studio's local day, ISO `YYYY-MM-DD`
 */
export function warningsOf(
  { order, supplierName, lines, plan, sums, terms }: OrderFacts,
  today: string,
): OrderWarning[] {
  return orderWarnings({
    supplier: supplierName,
    lines: lines.map((line) => ({
      lineNumber: line.lineNumber,
      product: productLabel(line),
      archived: line.archivedAt !== null,
      packs: line.packs,
      packPriceMinor: line.packPriceMinor,
      offer: line.offer && {
        ended: line.offer.ended,
        minimumPacks: line.offer.minimumPacks,
        packPriceMinor: offeredPackPrice(line.offer, line.packs),
      },
      packPieces: orderedPieces({ ...line, packs: 1 }),
      planned: line.offerId === null ? null : (plan?.packOf(line.offerId, line.packs) ?? null),
    })),
    linesMinor: sums.linesMinor,
    minimumOrderMinor: terms.minimumOrderMinor,
    plan: plan && {
      ageDays: Temporal.PlainDate.from(plan.plannedOn).until(today, { largestUnit: 'days' }).days,
      wasLatest: plan.wasLatest,
    },
    money: (minor) => writtenMoney(minor, order.currency),
  });
}

function linesOf({ lines, receipt }: OrderFacts): PurchaseOrderLineView[] {
  return lines.map(({ offer: _, archivedAt, ...line }, index) => {
    const { orderedPieces = 0, receivedPieces = 0, outstandingPieces = 0 } = receipt.lines[index] ?? {};
    return {
      ...line,
      productArchived: archivedAt !== null,
      lineMinor: lineMinor(line),
      orderedPieces,
      receivedPieces,
      outstandingPieces,
    };
  });
}

function deliveriesOf({ arrived }: OrderFacts): PurchaseOrderDeliveryView[] {
  const deliveries = new Map(
    arrived.map(({ deliveryId, occurredAt, reference }) => [
      deliveryId,
      { deliveryId, occurredAt, reference },
    ]),
  );
  return [...deliveries.values()];
}

function differencesOf({ arrived, receipt }: OrderFacts): PurchaseOrderDifferenceView[] {
  const goods = new Map(arrived.map((line) => [line.deliveryLineId, line]));
  return receipt.differences.map(
    ({ kind, orderLineId, deliveryId, deliveryLineId, productId, pieces }): PurchaseOrderDifferenceView => {
      const { makerName = '', productName = '', shade = null } = goods.get(deliveryLineId) ?? {};
      return {
        kind,
        orderLineId,
        deliveryId,
        deliveryLineId,
        productId,
        makerName,
        productName,
        shade,
        pieces,
      };
    },
  );
}

function mailViewOf(mail: PurchaseOrderMail): PurchaseOrderMailView {
  const { id, state, attempts, lastError, nextAttemptAt, createdAt, settledAt } = mail;
  return {
    id,
    state,
    attempts,
    mayHaveArrivedTwice: mayHaveArrivedTwice(mail),
    lastError,
    nextAttemptAt: state === 'waiting' ? nextAttemptAt : null,
    createdAt,
    settledAt,
  };
}

/** More attempts were begun than ended before the one that ended it, or the one that is under way. */
function mayHaveArrivedTwice({ state, attempts, begun }: PurchaseOrderMail): boolean {
  return begun - attempts > (state === 'waiting' ? 1 : 0);
}
