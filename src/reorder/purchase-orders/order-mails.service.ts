import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { handOverMail } from '../../alerts/channels/mail/hand-over.service.js';
import { SendFailure } from '../../alerts/channels/send-failure.js';
import { Schedules } from '../../alerts/schedule/schedules.service.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { OrderFactsReader } from './order-facts.service.js';
import { OrderMailStates } from './order-mail-states.service.js';
import { orderMailText } from './order-mail-text.js';
import { OrderNotSentConditions } from './order-not-sent-conditions.service.js';
import { OrderPapers } from './order-papers.service.js';
import { OrderPlacing } from './order-placing.service.js';
import { PurchaseOrder, type PurchaseOrderMail } from './purchase-order.entity.js';

const mailsPerLook = 20;

/** Another process has begun the attempt, or it is due no more: nothing is written. */
class NothingDue extends Error {}

/** Hands orders to the mail server that somebody asked to be sent by mail. What is due is found in the record. */
@Injectable()
export class OrderMails implements OnModuleInit {
  private readonly logger = new Logger('orders');
  private looking: Promise<void> | undefined;
  private lookAgain = false;

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly config: Config,
    private readonly role: ProcessRole,
    private readonly schedules: Schedules,
    private readonly studioActors: StudioActors,
    private readonly reader: OrderFactsReader,
    private readonly states: OrderMailStates,
    private readonly papers: OrderPapers,
    private readonly placing: OrderPlacing,
    private readonly notSent: OrderNotSentConditions,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose: 'mails of orders', look: () => this.look() });
    const { serving, working } = this.role;
    // Where workers do what is due, they find it at their next look.
    if (!working && !(serving && !this.config.hasWorkers)) return;
    this.transactions.follow('purchase_order_mail', () => {
      this.look().catch((error: unknown) =>
        this.logger.error(`Looking for orders to mail failed: ${String(error)}`),
      );
    });
  }

  /** One look at a time; whoever asks meanwhile is looked for once more. */
  private look(): Promise<void> {
    if (this.looking) {
      this.lookAgain = true;
      return this.looking;
    }
    this.looking = this.lookAll().finally(() => {
      this.looking = undefined;
    });
    return this.looking;
  }

  private async lookAll(): Promise<void> {
    do {
      this.lookAgain = false;
      if (this.role.ending) return;
      const due = await this.database.read<{ studioId: string; id: string }>(
        `SELECT studio_id AS "studioId", id FROM purchase_order_mail
         WHERE state = 'waiting' AND next_attempt_at <= $1 ORDER BY next_attempt_at, id LIMIT ${mailsPerLook}`,
        [this.clock.now()],
      );
      for (const { studioId, id } of due) {
        const actor = await this.studioActors.of(studioId);
        if (actor && !this.role.ending) await this.attempt(actor, id);
      }
    } while (this.lookAgain);
  }

  private async attempt(actor: Actor, id: string): Promise<void> {
    const begun = await this.begin(actor, id);
    if (begun?.state !== 'waiting') return;
    const failure = await this.handOver(actor, begun);
    try {
      await this.end(actor, begun, failure);
    } catch (error) {
      // Left waiting, it would be mailed again and again.
      const message = error instanceof Error ? error.message : String(error);
      const taken =
        failure === null
          ? 'The mail server took it; do not send it again, but mark it as sent by hand. '
          : `${failure.message} `;
      await this.end(actor, begun, new SendFailure(`${taken}It could not be recorded: ${message}`, true));
      throw error;
    }
    if (failure !== null) {
      this.logger.warn(
        `The mail ${id} of an order was not taken: ${failure.message} It stands in the order.`,
      );
    }
  }

  /** @param failure null: the mail server took it, and in the same transaction the order is sent */
  private async end(actor: Actor, begun: PurchaseOrderMail, failure: SendFailure | null): Promise<void> {
    await this.transactions.write(
      actor,
      {
        id: null,
        action: 'orders.end-mail',
        subject: { kind: 'purchase order', id: begun.orderId },
        content: null,
      },
      async (transaction) => {
        await transaction.lockStudio();
        const ended = await this.states.end(transaction, begun, failure);
        if (!ended)
          throw new Error(`The mail ${begun.id} was ended by somebody else while it was handed over.`);
        if (failure === null) {
          const { studioId, manager, read } = transaction;
          const order = await manager.findOneByOrFail(PurchaseOrder, { studioId, id: begun.orderId });
          const facts = await this.reader.of(read, studioId, order.id);
          await this.placing.sent(transaction, facts, order, 'mail', begun.expectedOn);
        }
        await this.notSent.reevaluate(transaction, begun.orderId);
        transaction.note({ mailId: begun.id, mailState: ended.state });
      },
    );
  }

  private async begin(actor: Actor, id: string): Promise<PurchaseOrderMail | undefined> {
    const request = {
      id: null,
      action: 'orders.begin-mail',
      subject: { kind: 'mail of an order', id },
      content: null,
    };
    try {
      return await this.transactions.write(actor, request, async (transaction) => {
        await transaction.lockStudio();
        const mail = await this.states.begin(transaction, id);
        if (!mail) throw new NothingDue();
        if (mail.state === 'failed') await this.notSent.reevaluate(transaction, mail.orderId);
        return mail;
      });
    } catch (error) {
      if (error instanceof NothingDue) return undefined;
      throw error;
    }
  }

  /** @returns null when the mail server took it */
  private async handOver(actor: Actor, mail: PurchaseOrderMail): Promise<SendFailure | null> {
    try {
      const { mailServer, MAIL_FROM: from } = this.config;
      if (mailServer === undefined || from === undefined) {
        throw new SendFailure('No mail server is set: whoever runs the service sets SMTP_URL and MAIL_FROM.');
      }
      const facts = await this.reader.of(this.database.read, actor.studioId, mail.orderId);
      const { mailAddress } = facts.terms;
      if (mailAddress === null) {
        throw new SendFailure(
          `No mail address for orders is written in the terms of ${facts.supplierName}.`,
          true,
        );
      }
      const paper = await this.papers.of(actor, facts, this.clock.now());
      // The attempt under way counts as begun; what is beyond it was cut off.
      const mayHaveCome = mail.begun - mail.attempts > 1;
      await handOverMail(
        {
          id: mail.id,
          fromName: paper.studio.name,
          ...orderMailText(paper, mayHaveCome),
          attachments: await this.papers.attachments(actor, facts, paper),
        },
        mailAddress,
        from,
        mailServer,
      );
      return null;
    } catch (error) {
      if (error instanceof SendFailure) return error;
      return new SendFailure(error instanceof Error ? error.message : String(error));
    }
  }
}
