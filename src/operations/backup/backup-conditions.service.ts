import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { systemActor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { backupConditionKinds, backupConditions, type FailedBackup } from './backup-conditions.js';
import { BackupStatus } from './backup-status.service.js';

interface StudioRow {
  id: string;
  chainId: string;
  timeZone: string;
}

const kinds = backupConditionKinds.map((kind) => `'${kind}'`).join(', ');

/** Tells every studio of the service when its backups fail or stay out. */
@Injectable()
export class BackupConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
    private readonly status: BackupStatus,
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'operations',
      kinds: backupConditionKinds,
      evaluate: (transaction) => this.standing(transaction),
    });
  }

  /** Judges anew after a backup was made or failed. Studios that have been told already are left alone. */
  async judge(): Promise<void> {
    const open = await this.database.read<{ studioId: string; kind: string }>(
      `SELECT studio_id AS "studioId", kind FROM alert WHERE closed_at IS NULL AND kind IN (${kinds})`,
    );
    const studios = await this.database.read<StudioRow>(
      'SELECT id, chain_id AS "chainId", time_zone AS "timeZone" FROM studio ORDER BY id',
    );
    const failed = this.status.lastFailure !== null;
    for (const studio of studios) {
      const told = open.filter(({ studioId }) => studioId === studio.id).map(({ kind }) => kind);
      if (failed ? told.includes('backup failed') : told.length === 0) continue;
      await this.transactions.write(
        systemActor(studio),
        { id: null, action: 'backups.judge', subject: { kind: 'studio', id: studio.id }, content: null },
        async (transaction) => {
          await transaction.lockStudio();
          const scope = { kinds: backupConditionKinds, subjects: 'all' as const };
          const done = await this.alerts.reconcile(transaction, scope, await this.standing(transaction));
          transaction.note({ ...done });
        },
      );
    }
  }

  private async standing(transaction: Transaction): Promise<OpenCondition[]> {
    const times = await this.status.times(transaction.read);
    const lastFailure = this.status.lastFailure ?? (await failureOnRecord(transaction));
    return backupConditions({ ...times, lastFailure }, transaction.studioId, this.clock.now());
  }
}

/** After a restart the open alert alone knows of the failure. */
async function failureOnRecord(transaction: Transaction): Promise<FailedBackup | null> {
  const [alert] = await transaction.query<{ at: string; facts: string }>(
    `SELECT opened_at AS at, facts FROM alert
     WHERE studio_id = $1 AND kind = 'backup failed' AND closed_at IS NULL`,
    [transaction.studioId],
  );
  if (!alert) return null;
  return { at: alert.at, cause: String((JSON.parse(alert.facts) as { cause?: unknown }).cause) };
}
