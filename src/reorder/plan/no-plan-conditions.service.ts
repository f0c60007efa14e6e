import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { mostAttempts } from './nightly-step.js';

export const noPlanMade = 'no plan made';
const kinds = [noPlanMade];

interface FailedDay {
  day: string;
  /** What the last of them failed of. */
  cause: string | null;
}

/** A day's plan that failed until it was tried no more: nobody watches at night, and the plan that is shown is an old one. */
@Injectable()
export class NoPlanConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'making plans',
      kinds,
      evaluate: (transaction) => this.standing(transaction),
    });
  }

  /** Opens, refreshes or closes the alert, in the transaction in which a plan fails or is done. */
  async reevaluate(transaction: Transaction): Promise<void> {
    await transaction.lockStudio();
    await this.alerts.reconcile(transaction, { kinds, subjects: 'all' }, await this.standing(transaction));
  }

  /** It stands until a plan is done. */
  private async standing(transaction: Transaction): Promise<OpenCondition[]> {
    const { studioId } = transaction;
    const [failed] = await transaction.query<FailedDay>(
      `SELECT failed.planned_on AS day, failed.failure AS cause FROM plan AS failed
       WHERE failed.studio_id = $1 AND failed.purpose = 'plan' AND failed.state = 'failed'
         AND NOT EXISTS (SELECT 1 FROM plan AS later
           WHERE later.studio_id = $1 AND later.purpose = 'plan' AND later.state = 'done'
             AND later.ended_at >= failed.ended_at)
         AND (SELECT count(*) FROM plan AS other
           WHERE other.studio_id = $1 AND other.purpose = 'plan' AND other.state = 'failed'
             AND other.planned_on = failed.planned_on) >= ${mostAttempts}
       ORDER BY failed.ended_at DESC, failed.id DESC LIMIT 1`,
      [studioId],
    );
    if (!failed) return [];
    return [
      {
        kind: noPlanMade,
        subjectKind: 'studio',
        subjectId: studioId,
        severity: 'warning',
        facts: { ...failed },
      },
    ];
  }
}
