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
 * What stands in the way of sessions to come. Whoever plans, moves or ends one, or changes stock, only marks it; it is
 * judged shortly after by `ProspectJudge`, and what only time changes by the sweep.
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

  /**
   * Opens, refreshes and closes the alerts of all sessions: each takes from the same stock.
   * @param standing what was found and holds still, under the lock of the studio; left out: it is judged now
   */
  async reconcile(transaction: Transaction, standing?: readonly OpenCondition[]): Promise<void> {
    await transaction.lockStudio();
    const scope = { kinds: sessionConditionKinds, subjects: 'all' as const };
    await this.alerts.reconcile(transaction, scope, standing ?? (await this.inside(transaction)));
  }

  /** All that stands at an instant, by the studio's days. */
  async standing(
    read: Read,
    { studioId, chainId }: Pick<Actor, 'studioId' | 'chainId'>,
    now: string,
  ): Promise<OpenCondition[]> {
    // As it is written now: the zone may be what this transaction changes.
    const [studio] = await read<{ timeZone: string }>(
      'SELECT time_zone AS "timeZone" FROM studio WHERE id = $1',
      [studioId],
    );
    if (!studio) return [];
    const here = { studioId, chainId, timeZone: studio.timeZone };
    return [
      ...(await this.kits.standing(read, here, now)),
      ...(await this.touchUps.standing(read, here, now)),
    ];
  }

  private inside({ read, actor, recordedAt }: Transaction): Promise<OpenCondition[]> {
    return this.standing(read, actor, recordedAt);
  }
}
