import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { notFound, Problem, staleVersion } from '../../platform/problem.js';
import { OrderNotSentConditions } from './order-not-sent-conditions.service.js';
import { type OrderStep, stepsOf } from './order-steps.js';
import { OrderViews } from './order-views.service.js';
import { PurchaseOrder } from './purchase-order.entity.js';
import type { PurchaseOrderView } from './purchase-orders.views.js';

const what = 'purchase order';

/** Writes orders, one write of a studio at a time: what is decided on an order is read under the studio's lock. */
@Injectable()
export class OrderRegister {
  constructor(
    private readonly transactions: Transactions,
    private readonly views: OrderViews,
    private readonly notSent: OrderNotSentConditions,
  ) {}

  /** @param dto its id is that of the request */
  write(
    actor: Actor,
    verb: string,
    orderId: string,
    dto: { id: string },
    work: (transaction: Transaction) => Promise<void>,
  ): Promise<PurchaseOrderView> {
    const request = {
      id: dto.id,
      action: `orders.${verb}`,
      subject: { kind: what, id: orderId },
      content: { ...dto, orderId },
    };
    return this.transactions.write(actor, request, async (transaction) => {
      await transaction.lockStudio();
      await work(transaction);
      await this.notSent.reevaluate(transaction, orderId);
      return this.views.of(transaction.read, actor, orderId, transaction.recordedAt);
    });
  }

  /**
   * The order, if a step may be taken with it.
   * @throws Problem not-found, stale-version, wrong-state
   */
  async forStep(
    transaction: Transaction,
    orderId: string,
    step: OrderStep,
    version: number,
  ): Promise<PurchaseOrder> {
    const key = { studioId: transaction.studioId, id: orderId };
    const order = await transaction.manager.findOneBy(PurchaseOrder, key);
    if (!order) throw notFound(what, orderId);
    if (order.version !== version) throw staleVersion(what, order.version);
    const steps = stepsOf(order.state);
    if (steps.includes(step)) return order;
    const possible = steps.length === 0 ? 'nothing more' : steps.join(', ');
    throw new Problem(
      409,
      'wrong-state',
      `Order ${order.number} is ${order.state}; what is possible now: ${possible}.`,
    );
  }

  change(
    transaction: Transaction,
    order: PurchaseOrder,
    changes: Partial<PurchaseOrder>,
  ): Promise<PurchaseOrder> {
    const { studioId, id, version } = order;
    return transaction.change(PurchaseOrder, what, { studioId, id }, version, changes);
  }
}
