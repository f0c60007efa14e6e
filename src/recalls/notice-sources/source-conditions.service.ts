import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import { Config } from '../../platform/config.js';
import { Database, type Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { withoutQuery } from '../../platform/notice-sources-setting.js';
import { isFailing } from './source-state.js';
import { SourceStates, sourceId } from './source-states.service.js';

const noticeSourceFailing = 'notice source failing';

/** Tells every studio of the service that notices are not fetched any more: silence would look like safety. */
@Injectable()
export class SourceConditions implements OnModuleInit {
  constructor(
    private readonly config: Config,
    private readonly states: SourceStates,
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly studioActors: StudioActors,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'notice sources',
      kinds: [noticeSourceFailing],
      evaluate: (transaction) => this.standing(transaction.read),
    });
  }

  /** Judges anew after a source was asked. Studios for which nothing changes are left alone. */
  async judge(): Promise<void> {
    const standing = await this.standing(this.database.read);
    const open = await this.database.read<{ studioId: string; subjectId: string }>(
      `SELECT studio_id AS "studioId", subject_id AS "subjectId" FROM alert WHERE kind = '${noticeSourceFailing}'
         AND (closed_at IS NULL OR (closed_by IS NOT NULL AND ended_at IS NULL))`,
    );
    const failing = standing
      .map(({ subjectId }) => subjectId)
      .sort()
      .join();
    for (const actor of await this.studioActors.all()) {
      const { studioId } = actor;
      const told = open.filter((alert) => alert.studioId === studioId).map(({ subjectId }) => subjectId);
      if (told.sort().join() === failing) continue;
      await this.transactions.write(
        actor,
        {
          id: null,
          action: 'recalls.judge-sources',
          subject: { kind: 'studio', id: studioId },
          content: null,
        },
        async (transaction) => {
          await transaction.lockStudio();
          const scope = { kinds: [noticeSourceFailing], subjects: 'all' as const };
          const done = await this.alerts.reconcile(transaction, scope, await this.standing(transaction.read));
          transaction.note({ ...done });
        },
      );
    }
  }

  private async standing(read: Read): Promise<OpenCondition[]> {
    const sources = this.config.noticeSources;
    const states = await this.states.of(sources, read);
    return sources.flatMap((source): OpenCondition[] => {
      const id = sourceId(source);
      const state = states.get(id);
      if (state === undefined || !isFailing(state)) return [];
      return [
        {
          kind: noticeSourceFailing,
          subjectKind: 'notice source',
          subjectId: id,
          severity: 'warning',
          facts: {
            address: withoutQuery(source.url),
            cause: state.lastError,
            lastReadAt: state.readAt,
          },
        },
      ];
    });
  }
}
