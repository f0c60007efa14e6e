import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { backupConditionKinds, backupConditions, type FailedBackup } from './backup-conditions.js';
import { BackupStatus } from './backup-status.service.js';

const kinds = backupConditionKinds.map((kind) => `'${kind}'`).join(', ');
/** Known to stand: open, or closed by hand and not over since. */
const stands = '(closed_at IS NULL OR (closed_by IS NOT NULL AND ended_at IS NULL))';

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
    private readonly studioActors: StudioActors,
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
      `SELECT studio_id AS "studioId", kind FROM alert WHERE ${stands} AND kind IN (${kinds})`,
    );
    const failed = this.status.lastFailure !== null;
    for (const actor of await this.studioActors.all()) {
      const { studioId } = actor;
      const told = open.filter((alert) => alert.studioId === studioId).map(({ kind }) => kind);
      if (failed ? told.includes('backup failed') : told.length === 0) continue;
      await this.transactions.write(
        actor,
        { id: null, action: 'backups.judge', subject: { kind: 'studio', id: studioId }, content: null },
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
    const told = await alertsOnRecord(transaction);
    const facts = {
      ...(await this.status.times(transaction.read)),
      startedAt: this.status.startedAt,
      // After a restart the open alert alone knows of the failure.
      lastFailure: this.status.lastFailure ?? failureTold(told),
      isToldOverdue: told.some(({ kind }) => kind === 'backup overdue'),
    };
    return backupConditions(facts, transaction.studioId, this.clock.now());
  }
}

interface ToldCondition {
  kind: string;
  at: string;
  facts: string;
}

function alertsOnRecord(transaction: Transaction): Promise<ToldCondition[]> {
  return transaction.query<ToldCondition>(
    `SELECT kind, opened_at AS at, facts FROM alert
     WHERE studio_id = $1 AND ${stands} AND kind IN (${kinds}) ORDER BY opened_at DESC, id`,
    [transaction.studioId],
  );
}

function failureTold(told: readonly ToldCondition[]): FailedBackup | null {
  const failed = told.find(({ kind }) => kind === 'backup failed');
  if (!failed) return null;
  return { at: failed.at, cause: String((JSON.parse(failed.facts) as { cause?: unknown }).cause) };
}
