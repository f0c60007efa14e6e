import { Injectable, type OnModuleInit } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../../identity/local-day.js';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { ExpectedDeliveries } from '../../stock/expected-deliveries/expected-deliveries.service.js';
import {
  type ArrivingDelivery,
  type OrderFollower,
  OrderFollowers,
  type RecordedDelivery,
} from '../../stock/order-followers.service.js';
import { expectedRest, orderReference } from './expected-arrival.js';
import { type OrderFacts, OrderFactsReader } from './order-facts.service.js';
import { OrderMailStates } from './order-mail-states.service.js';
import { OrderNotSentConditions } from './order-not-sent-conditions.service.js';
import { answeredLines } from './order-receipt.js';
import { OrderRegister } from './order-register.service.js';
import type { PurchaseOrderState } from './order-states.js';
import { afterReceipt, isUnderway } from './order-steps.js';

/**
 * Follows what arrives of orders, in the transaction of the delivery: how much came, whether the order is closed, and by
 * when the rest is expected. It never refuses a delivery.
 */
@Injectable()
export class OrderReceipts implements OrderFollower, OnModuleInit {
  constructor(
    private readonly followers: OrderFollowers,
    private readonly reader: OrderFactsReader,
    private readonly register: OrderRegister,
    private readonly mails: OrderMailStates,
    private readonly notSent: OrderNotSentConditions,
    private readonly expected: ExpectedDeliveries,
  ) {}

  onModuleInit(): void {
    this.followers.register(this);
  }

  async answered(
    { read, studioId }: Transaction,
    { expectedDeliveryId, lines }: ArrivingDelivery,
  ): Promise<(string | null)[]> {
    const said = lines.map(({ orderLineId }) => orderLineId ?? null);
    if (expectedDeliveryId === null || lines.every(({ orderLineId }) => orderLineId !== undefined))
      return said;
    const [order] = await read<{ id: string }>(
      'SELECT id FROM purchase_order WHERE studio_id = $1 AND expected_delivery_id = $2',
      [studioId, expectedDeliveryId],
    );
    if (!order) return said;
    const facts = await this.reader.of(read, studioId, order.id);
    return answeredLines(
      facts.lines,
      facts.receipt.lines,
      lines.map(({ orderLineId: named, ...goods }) => ({ ...goods, named })),
    );
  }

  async awaiting({ read, studioId }: Transaction, expectedDeliveryId: string): Promise<string | null> {
    const [order] = await read<{ number: number; state: PurchaseOrderState }>(
      'SELECT number, state FROM purchase_order WHERE studio_id = $1 AND expected_delivery_id = $2',
      [studioId, expectedDeliveryId],
    );
    return order && isUnderway(order.state) ? orderReference(order.number) : null;
  }

  async received(transaction: Transaction, delivery: RecordedDelivery): Promise<void> {
    const { expectedDeliveryId } = delivery;
    const ids = [...new Set(delivery.orderLineIds)];
    if (ids.length === 0 && expectedDeliveryId === null) return;
    await transaction.lockStudio();
    // What names no line of the studio's own orders is somebody else's number, and none of ours to follow.
    const orders = await transaction.query<{ orderId: string }>(
      `SELECT id AS "orderId" FROM purchase_order
       WHERE studio_id = $1 AND (expected_delivery_id = $2
         ${ids.length === 0 ? '' : `OR id IN (SELECT order_id FROM purchase_order_line WHERE studio_id = $1 AND id IN (${placeholders(ids, 3)}))`})
       ORDER BY id`,
      [transaction.studioId, expectedDeliveryId, ...ids],
    );
    for (const { orderId } of orders) {
      await this.follow(
        transaction,
        await this.reader.of(transaction.read, transaction.studioId, orderId),
        delivery,
      );
    }
  }

  private async follow(
    transaction: Transaction,
    facts: OrderFacts,
    delivery: RecordedDelivery,
  ): Promise<void> {
    const { order, receipt, expected } = facts;
    const state = afterReceipt(order.state, receipt);
    // What came may be none of what was ordered: all of it is then awaited still.
    const underway = isUnderway(state);
    if (order.state === 'approved') await this.mails.withdrawIdle(transaction, order.id);
    if (order.expectedDeliveryId !== null && expected?.endedAs !== 'called off') {
      await this.expected.cameWith(transaction, order.expectedDeliveryId, delivery.id);
    }
    const awaited = underway ? await this.expectRest(transaction, facts, delivery) : null;
    if (state === order.state && awaited === null) return;
    await this.register.change(transaction, order, {
      state,
      ...(awaited !== null && { expectedDeliveryId: awaited }),
      ...(state === 'closed' &&
        order.state !== 'closed' && { endedAt: transaction.recordedAt, endedAs: 'received whole' }),
    });
    if (order.state === 'approved') await this.notSent.reevaluate(transaction, order.id);
  }

  /** @returns the id of what is expected now */
  private async expectRest(
    transaction: Transaction,
    facts: OrderFacts,
    { occurredAt }: RecordedDelivery,
  ): Promise<string> {
    const { order, expected } = facts;
    const { actor, recordedAt, read } = transaction;
    const leadTimes = await this.reader.leadTimes(read, actor, facts, recordedAt);
    const id = uuidv7();
    const orderedOn = order.sentAt === null ? null : localDay(order.sentAt, actor.timeZone);
    const arrivedOn = localDay(occurredAt, actor.timeZone);
    // What came before the order was sent, or is recorded so, is recorded all the same.
    const from = orderedOn !== null && orderedOn > arrivedOn ? orderedOn : arrivedOn;
    await this.expected.expectInside(transaction, {
      id,
      supplierId: order.supplierId,
      reference: orderReference(order.number),
      orderedOn,
      ...expectedRest(from, expected, leadTimes),
    });
    return id;
  }
}
