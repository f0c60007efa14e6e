import { Injectable } from '@nestjs/common';
import type { SendFailure } from '../../alerts/channels/send-failure.js';
import { afterFailure, type BackoffLimits, leaseEnd } from '../../alerts/outbox/backoff.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Problem } from '../../platform/problem.js';
import { PurchaseOrderMail } from './purchase-order.entity.js';

const what = 'mail of an order';
const longestError = 300;

/** Three to six hours: a supplier who is not reached by then is told in another way. */
export const orderMailBackoff: BackoffLimits = {
  maximumAttempts: 16,
  firstWaitSeconds: 30,
  longestWaitSeconds: 1_800,
};

/**
 * The life of the mail of an order, always in the transaction of somebody else and under the studio's lock. Guarantees: an
 * attempt is written down as begun before it is made; it ends once, as sent, as failed with its cause, or withdrawn; one
 * that a stop cut off is made again, and is told to be one that may have arrived before.
 */
@Injectable()
export class OrderMailStates {
  async promise(
    transaction: Transaction,
    id: string,
    orderId: string,
    expectedOn: string | null,
  ): Promise<void> {
    const { studioId, recordedAt, actor } = transaction;
    await transaction.insert(PurchaseOrderMail, {
      ...{ studioId, id, orderId, expectedOn },
      state: 'waiting',
      attempts: 0,
      begun: 0,
      nextAttemptAt: recordedAt,
      lastError: null,
      personId: actor.personId,
      version: 1,
      createdAt: recordedAt,
      settledAt: null,
    });
  }

  /**
   * A mail that still waits is not tried any more.
   * @throws Problem wrong-state while an attempt is under way
   */
  async withdraw(transaction: Transaction, orderId: string): Promise<void> {
    if (await this.withdrawIdle(transaction, orderId)) return;
    throw new Problem(
      409,
      'wrong-state',
      'This order is being handed to the mail server just now. Look again in a few minutes.',
    );
  }

  /** The same, for what is recorded in any case. @returns false while an attempt is under way: it then goes on */
  async withdrawIdle(transaction: Transaction, orderId: string): Promise<boolean> {
    const { studioId, recordedAt, manager } = transaction;
    const mail = await manager.findOneBy(PurchaseOrderMail, { studioId, orderId, state: 'waiting' });
    if (!mail) return true;
    if (mail.begun > mail.attempts && mail.nextAttemptAt > recordedAt) return false;
    await this.change(transaction, mail, { state: 'withdrawn', settledAt: recordedAt });
    return true;
  }

  /**
   * Writes down that an attempt begins. One that was begun as often as it may be, and never ended, is given up: whatever
   * cuts it off would do so for ever, and each time the supplier may get it.
   * @returns it waits, or has failed; undefined: none is due
   */
  async begin(transaction: Transaction, id: string): Promise<PurchaseOrderMail | undefined> {
    const { studioId, recordedAt, manager } = transaction;
    const mail = await manager.findOneBy(PurchaseOrderMail, { studioId, id, state: 'waiting' });
    if (!mail || mail.nextAttemptAt > recordedAt) return undefined;
    if (mail.begun >= orderMailBackoff.maximumAttempts) {
      const lastError = `It was begun ${mail.begun} times, and cut off. Ask the supplier whether it came.`;
      return this.change(transaction, mail, { lastError, state: 'failed', settledAt: recordedAt });
    }
    const nextAttemptAt = leaseEnd(recordedAt, mail.begun - mail.attempts);
    return this.change(transaction, mail, { begun: mail.begun + 1, nextAttemptAt });
  }

  /**
   * Writes down how an attempt ended.
   * @param failure null: the mail server took it
   * @returns the mail; undefined when it is not this attempt's any more
   */
  async end(
    transaction: Transaction,
    { id, begun }: PurchaseOrderMail,
    failure: SendFailure | null,
  ): Promise<PurchaseOrderMail | undefined> {
    const { studioId, recordedAt, manager } = transaction;
    const mail = await manager.findOneBy(PurchaseOrderMail, { studioId, id, state: 'waiting', begun });
    if (!mail) return undefined;
    const attempts = mail.attempts + 1;
    if (failure === null) {
      return this.change(transaction, mail, {
        ...{ state: 'sent', attempts, lastError: null, settledAt: recordedAt },
      });
    }
    const { isLasting, retryAt, message } = failure;
    const lastError = message.slice(0, longestError);
    const next = afterFailure(attempts, recordedAt, Math.random(), orderMailBackoff, { isLasting, retryAt });
    return this.change(
      transaction,
      mail,
      next.state === 'pending'
        ? { attempts, lastError, nextAttemptAt: next.nextAttemptAt }
        : { attempts, lastError, state: 'failed', settledAt: recordedAt },
    );
  }

  private change(
    transaction: Transaction,
    { studioId, id, version }: PurchaseOrderMail,
    changes: Partial<PurchaseOrderMail>,
  ): Promise<PurchaseOrderMail> {
    return transaction.change(PurchaseOrderMail, what, { studioId, id }, version, changes);
  }
}
