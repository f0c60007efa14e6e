import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { SummaryLines } from '../../alerts/summaries/summary-lines.service.js';
import { localDay } from '../../identity/local-day.js';
import type { Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { type DueBasket, dueBaskets } from './due-baskets.js';
import type { PlanSummary } from './plan-content.interface.js';

export const orderDue = 'order due';
const subjectKind = 'supplier';
const mostProducts = 5_000;

interface LatestRow {
  id: string;
  plannedOn: string;
  askedAt: string;
  summary: string | null;
}

/** Orders that are due by the latest plan and that nobody has drafted yet: by supplier, each with its day. */
export async function ordersAhead(read: Read, studioId: string): Promise<DueBasket[]> {
  const [latest] = await read<LatestRow>(
    `SELECT plan.id, plan.planned_on AS "plannedOn", plan.asked_at AS "askedAt",
       coalesce(plan.summary, same.summary) AS summary
     FROM plan LEFT JOIN plan AS same ON same.studio_id = plan.studio_id AND same.id = plan.same_as_id
     WHERE plan.studio_id = $1 AND plan.purpose = 'plan' AND plan.state = 'done'
     ORDER BY plan.asked_at DESC, plan.id DESC LIMIT 1`,
    [studioId],
  );
  if (!latest || latest.summary === null) return [];
  const ordered = await read<{ productId: string }>(
    `SELECT DISTINCT line.product_id AS "productId"
     FROM purchase_order JOIN purchase_order_line AS line
       ON line.studio_id = purchase_order.studio_id AND line.order_id = purchase_order.id
     WHERE purchase_order.studio_id = $1 AND line.removed_at IS NULL
       AND (purchase_order.state = 'draft'
         OR (purchase_order.state <> 'called off'
           AND coalesce(purchase_order.approved_at, purchase_order.created_at) >= $2))
     ORDER BY line.product_id LIMIT ${mostProducts}`,
    [studioId, latest.askedAt],
  );
  const { baskets = [] } = JSON.parse(latest.summary) as Partial<PlanSummary>;
  return dueBaskets(
    baskets.map(({ supplierId, supplierName, on, lines }) => ({
      ...{ supplierId, supplierName, on },
      productIds: lines.map(({ productId }) => productId),
    })),
    latest,
    ordered.map(({ productId }) => productId),
  );
}

/** Opens an alert for each supplier at which something is to be ordered by today, and tells of it in the morning. */
@Injectable()
export class OrderDueConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
    private readonly summaryLines: SummaryLines,
  ) {}

  onModuleInit(): void {
    const name = 'plans';
    const kinds = [orderDue];
    this.evaluators.register({
      name,
      kinds,
      evaluate: (transaction, day) => this.standing(transaction, day),
    });
    this.summaryLines.register({ name, part: 'orders due', kinds, dayFacts: ['orderOn'] });
  }

  /** Opens, refreshes or closes the alerts of all suppliers. */
  async reevaluate(transaction: Transaction): Promise<void> {
    await transaction.lockStudio();
    const day = localDay(transaction.recordedAt, transaction.actor.timeZone);
    const standing = await this.standing(transaction, day);
    await this.alerts.reconcile(transaction, { kinds: [orderDue], subjects: 'all' }, standing);
  }

  private async standing(transaction: Transaction, day: string): Promise<OpenCondition[]> {
    const ahead = await ordersAhead(transaction.read, transaction.studioId);
    return ahead
      .filter(({ on }) => on <= day)
      .map(({ supplierId, supplierName, on, lines, planId }) => ({
        kind: orderDue,
        subjectKind,
        subjectId: supplierId,
        severity: 'notice',
        facts: { supplier: supplierName, orderOn: on, lines, planId },
      }));
  }
}
