import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { orderReference } from './expected-arrival.js';

export const orderNotSent = 'order not sent';
const subjectKind = 'purchase order';
const kinds = [orderNotSent];

interface FailedRow {
  id: string;
  number: number;
  supplier: string;
  cause: string | null;
}

/** Approved orders whose mail was given up: whoever asked for it may have gone home. */
@Injectable()
export class OrderNotSentConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'purchase orders',
      kinds,
      evaluate: (transaction) => this.standing(transaction),
    });
  }

  /** Opens, refreshes or closes the alert of one order, in the transaction of its cause and under the studio's lock. */
  async reevaluate(transaction: Transaction, orderId: string): Promise<void> {
    await this.alerts.reconcile(
      transaction,
      { kinds, subjects: [{ kind: subjectKind, id: orderId }] },
      await this.standing(transaction, orderId),
    );
  }

  private async standing(transaction: Transaction, orderId?: string): Promise<OpenCondition[]> {
    const rows = await transaction.query<FailedRow>(
      `SELECT purchase_order.id, purchase_order.number, supplier.name AS supplier, mail.last_error AS cause
       FROM purchase_order
         JOIN supplier ON supplier.chain_id = purchase_order.chain_id AND supplier.id = purchase_order.supplier_id
         JOIN purchase_order_mail AS mail ON mail.studio_id = purchase_order.studio_id
           AND mail.order_id = purchase_order.id AND mail.state = 'failed'
       WHERE purchase_order.studio_id = $1 AND purchase_order.state = 'approved'
         AND NOT EXISTS (SELECT 1 FROM purchase_order_mail AS later
           WHERE later.studio_id = mail.studio_id AND later.order_id = mail.order_id
             AND (later.created_at, later.id) > (mail.created_at, mail.id))
         ${orderId === undefined ? '' : 'AND purchase_order.id = $2'}
       ORDER BY purchase_order.number`,
      [transaction.studioId, ...(orderId === undefined ? [] : [orderId])],
    );
    return rows.map(({ id, number, supplier, cause }) => ({
      kind: orderNotSent,
      subjectKind,
      subjectId: id,
      severity: 'warning',
      facts: { supplier, reference: orderReference(number), cause },
    }));
  }
}
