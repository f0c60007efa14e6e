import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import type { Actor } from '../../platform/actor.js';
import type { Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { KitProspects, kitCannotBeFilled } from './kit-prospects.service.js';
import { mixOutOfDate, TouchUpProspects } from './touch-up-prospects.service.js';

export const sessionConditionKinds: readonly string[] = [kitCannotBeFilled, mixOutOfDate];

/**
 * What stands in the way of sessions to come. Whoever plans, moves or ends one calls `reevaluate` at the end of their
 * transaction; what follows from stock is judged shortly after by `ProspectJudge`, and what only time changes by the sweep.
 */
@Injectable()
export class SessionConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
    private readonly kits: KitProspects,
    private readonly touchUps: TouchUpProspects,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'sessions',
      kinds: sessionConditionKinds,
      evaluate: (transaction) => this.inside(transaction),
    });
  }

  /** Opens, refreshes and closes the alerts of all sessions: each takes from the same stock. */
  async reevaluate(transaction: Transaction): Promise<void> {
    await transaction.lockStudio();
    const scope = { kinds: sessionConditionKinds, subjects: 'all' as const };
    await this.alerts.reconcile(transaction, scope, await this.inside(transaction));
  }

  /** All that stands at an instant, by the studio's days. */
  async standing(read: Read, actor: Actor, now: string): Promise<OpenCondition[]> {
    return [
      ...(await this.kits.standing(read, actor, now)),
      ...(await this.touchUps.standing(read, actor, now)),
    ];
  }

  private async inside(transaction: Transaction): Promise<OpenCondition[]> {
    const { studioId, actor, recordedAt } = transaction;
    // As it is written now: the zone may be what this transaction changes.
    const [studio] = await transaction.query<{ timeZone: string }>(
      'SELECT time_zone AS "timeZone" FROM studio WHERE id = $1',
      [studioId],
    );
    const timeZone = studio?.timeZone ?? actor.timeZone;
    return this.standing(transaction.read, { ...actor, timeZone }, recordedAt);
  }
}
