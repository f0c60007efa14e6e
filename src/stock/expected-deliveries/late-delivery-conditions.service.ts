import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { localDay } from '../../identity/local-day.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { isLateDelivery } from './late-delivery.js';

const deliveryLate = 'delivery late';
const subjectKind = 'expected delivery';

interface ExpectedRow {
  id: string;
  supplier: string;
  reference: string | null;
  orderedOn: string | null;
  expectedOn: string;
}

/** Deliveries that should have come. */
@Injectable()
export class LateDeliveryConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'expected deliveries',
      kinds: [deliveryLate],
      evaluate: (transaction, day) => this.standing(transaction, day),
    });
  }

  /** Opens, refreshes or closes the alert of one expected delivery. */
  async reevaluate(transaction: Transaction, id: string): Promise<void> {
    const day = localDay(transaction.recordedAt, transaction.actor.timeZone);
    await this.alerts.reconcile(
      transaction,
      { kinds: [deliveryLate], subjects: [{ kind: subjectKind, id }] },
      await this.standing(transaction, day, id),
    );
  }

  private async standing(transaction: Transaction, day: string, id?: string): Promise<OpenCondition[]> {
    const rows = await transaction.query<ExpectedRow>(
      `SELECT expected_delivery.id, supplier.name AS supplier, expected_delivery.reference,
         expected_delivery.ordered_on AS "orderedOn", expected_delivery.expected_on AS "expectedOn"
       FROM expected_delivery JOIN supplier
         ON supplier.chain_id = expected_delivery.chain_id AND supplier.id = expected_delivery.supplier_id
       WHERE expected_delivery.studio_id = $1 AND expected_delivery.ended_at IS NULL
         AND expected_delivery.expected_on < $2 ${id === undefined ? '' : 'AND expected_delivery.id = $3'}
       ORDER BY expected_delivery.expected_on, expected_delivery.id`,
      [transaction.studioId, day, ...(id === undefined ? [] : [id])],
    );
    return rows
      .filter(({ expectedOn }) => isLateDelivery(expectedOn, null, day))
      .map(({ id: subjectId, ...facts }) => ({
        kind: deliveryLate,
        subjectKind,
        subjectId,
        severity: 'warning',
        facts: { ...facts },
      }));
  }
}
