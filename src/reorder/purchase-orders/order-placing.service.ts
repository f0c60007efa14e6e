import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { faultsProblem, Problem } from '../../platform/problem.js';
import { expectedDaysFaults } from '../../stock/expected-deliveries/expected-days.js';
import { ExpectedDeliveries } from '../../stock/expected-deliveries/expected-deliveries.service.js';
import { expectedArrival, orderReference } from './expected-arrival.js';
import { type OrderFacts, OrderFactsReader } from './order-facts.service.js';
import { OrderMailStates } from './order-mail-states.service.js';
import { OrderRegister } from './order-register.service.js';
import type { OrderWay } from './order-states.js';
import { endingOf } from './order-steps.js';
import { costByTerms } from './order-sums.js';
import { OrderViews, warningsOf } from './order-views.service.js';
import type { PurchaseOrder } from './purchase-order.entity.js';
import type { ApproveOrderDto, OrderStepDto, SendOrderDto } from './purchase-orders.dto.js';
import type { PurchaseOrderView } from './purchase-orders.views.js';

/**
 * Approves, sends and ends orders. Guarantees: an order is sent once, and in the same transaction it is expected; what was
 * sent by mail is promised in a row of its own before anything is handed to a mail server.
 */
@Injectable()
export class OrderPlacing {
  constructor(
    private readonly register: OrderRegister,
    private readonly reader: OrderFactsReader,
    private readonly views: OrderViews,
    private readonly mails: OrderMailStates,
    private readonly expected: ExpectedDeliveries,
  ) {}

  /** @throws Problem decision-needed with the warnings that were not confirmed; wrong-state; stale-version; not-found */
  approve(actor: Actor, orderId: string, dto: ApproveOrderDto): Promise<PurchaseOrderView> {
    return this.register.write(actor, 'approve', orderId, dto, async (transaction) => {
      const order = await this.register.forStep(transaction, orderId, 'approve', dto.version);
      const facts = await this.reader.of(transaction.read, actor.studioId, orderId);
      if (facts.lines.length === 0) {
        throw new Problem(
          409,
          'wrong-state',
          'This order is empty. Add what is to be ordered, then approve it.',
        );
      }
      const warnings = warningsOf(facts, localDay(transaction.recordedAt, actor.timeZone));
      const open = warnings.filter(({ code }) => !dto.confirmed?.includes(code));
      if (open.length > 0) {
        const said = open.map(({ message }) => message).join(' ');
        throw new Problem(
          409,
          'decision-needed',
          `${said} Change the order, or confirm what was said.`.slice(0, 2_000),
          { warnings: open },
        );
      }
      await this.register.change(transaction, order, {
        state: 'approved',
        deliveryCostMinor: facts.sums.deliveryCostMinor,
        approvedBy: actor.personId,
        approvedAt: transaction.recordedAt,
      });
      transaction.note({ confirmed: [...new Set(warnings.map(({ code }) => code))] });
    });
  }

  /** @throws Problem wrong-state, stale-version, not-found */
  draftAgain(actor: Actor, orderId: string, dto: OrderStepDto): Promise<PurchaseOrderView> {
    return this.register.write(actor, 'draft-again', orderId, dto, async (transaction) => {
      const order = await this.register.forStep(transaction, orderId, 'draft again', dto.version);
      await this.mails.withdraw(transaction, orderId);
      const { sums, terms } = await this.reader.of(transaction.read, actor.studioId, orderId);
      const byTerms = costByTerms(sums.linesMinor, terms);
      await this.register.change(transaction, order, {
        state: 'draft',
        // What the terms say is not written down again as if somebody had.
        deliveryCostMinor: order.deliveryCostMinor === byTerms ? null : order.deliveryCostMinor,
        approvedBy: null,
        approvedAt: null,
      });
    });
  }

  /** @throws Problem wrong-state, stale-version, not-found, unusable-date */
  send(actor: Actor, orderId: string, dto: SendOrderDto): Promise<PurchaseOrderView> {
    const { as, version, expectedOn = null } = dto;
    return this.register.write(actor, 'send', orderId, dto, async (transaction) => {
      const order = await this.register.forStep(transaction, orderId, 'send', version);
      const today = localDay(transaction.recordedAt, actor.timeZone);
      if (expectedOn !== null) refuseUnusableDay(expectedOn, today);
      const facts = await this.reader.of(transaction.read, actor.studioId, orderId);
      await this.mails.withdraw(transaction, orderId);
      if (as === 'by hand') return this.sent(transaction, facts, order, as, expectedOn);
      this.refuseUnsendable(facts);
      await this.mails.promise(transaction, dto.id, orderId, expectedOn);
      await this.register.change(transaction, order, {});
    });
  }

  /** @throws Problem wrong-state, stale-version, not-found */
  end(
    actor: Actor,
    orderId: string,
    step: 'call off' | 'close',
    dto: OrderStepDto,
  ): Promise<PurchaseOrderView> {
    return this.register.write(actor, step.replace(' ', '-'), orderId, dto, async (transaction) => {
      const order = await this.register.forStep(transaction, orderId, step, dto.version);
      const { receipt } = await this.reader.of(transaction.read, actor.studioId, orderId);
      await this.mails.withdraw(transaction, orderId);
      if (order.expectedDeliveryId !== null) {
        await this.expected.callOffInside(transaction, order.expectedDeliveryId);
      }
      await this.register.change(transaction, order, {
        ...endingOf(step, receipt.receivedPieces),
        endedAt: transaction.recordedAt,
      });
    });
  }

  /**
   * In the caller's transaction, under the studio's lock: the order was sent, and from now on it is expected; unless goods
   * came before it was known to be sent.
   */
  async sent(
    transaction: Transaction,
    facts: OrderFacts,
    order: PurchaseOrder,
    sentAs: OrderWay,
    saidOn: string | null,
  ): Promise<void> {
    const { actor, recordedAt } = transaction;
    if (order.state !== 'approved') {
      await this.register.change(transaction, order, { sentAs, sentAt: recordedAt });
      return;
    }
    const sentOn = localDay(recordedAt, actor.timeZone);
    // A mail that waited for days may be sent after the day that was hoped for.
    const hopedFor = saidOn !== null && saidOn < sentOn ? sentOn : saidOn;
    const leadTimes = await this.reader.leadTimes(transaction.read, actor, facts, recordedAt);
    const { expectedOn, basis } = expectedArrival(sentOn, hopedFor, leadTimes);
    const expectedDeliveryId = uuidv7();
    await this.expected.expectInside(transaction, {
      id: expectedDeliveryId,
      supplierId: order.supplierId,
      reference: orderReference(order.number),
      orderedOn: sentOn,
      expectedOn,
      daySaid: basis === 'said by a person' ? 1 : 0,
    });
    await this.register.change(transaction, order, {
      state: 'sent',
      sentAs,
      sentAt: recordedAt,
      expectedDeliveryId,
    });
    transaction.note({ expectedOn, expectedBy: basis });
  }

  /** @throws Problem wrong-state */
  private refuseUnsendable(facts: OrderFacts): void {
    const obstacle = this.views.mailObstacle(facts);
    if (obstacle === null) return;
    const why =
      obstacle === 'no mail server'
        ? 'No mail server is set: whoever runs the service sets SMTP_URL and MAIL_FROM.'
        : `No mail address for orders is written in the terms of ${facts.supplierName}.`;
    throw new Problem(
      409,
      'wrong-state',
      `${why} Until then send it by hand: download it, send it your way, and mark it as sent by hand.`,
    );
  }
}

/** @throws Problem unusable-date */
function refuseUnusableDay(expectedOn: string, today: string): void {
  const faults = expectedDaysFaults({ orderedOn: today, expectedOn }, today);
  if (faults.length === 0) return;
  throw faultsProblem(faults.map((fault) => ({ ...fault, code: 'unusable-date' })));
}
