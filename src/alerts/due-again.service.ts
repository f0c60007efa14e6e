import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { StudioActors } from '../identity/studio-actors.service.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { Alert } from './alert.entity.js';
import type { AlertStep } from './alert-history.service.js';
import { AlertSteps, type SteppingAlert, unseen } from './alert-steps.service.js';
import { Schedules } from './schedule/schedules.service.js';

const maximumAlertsPerWrite = 200;

/** Somebody else was quicker: nothing is written. */
class NothingDue extends Error {}

/**
 * Brings back alerts that were put off, when their day has come: they are told as if they had just opened, and
 * wait to be acknowledged anew. That one was put off stands on the alert and is asked under the studio's lock, so that looking twice brings it back once.
 */
@Injectable()
export class DueAgain implements OnModuleInit {
  private readonly logger = new Logger('due again');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly studioActors: StudioActors,
    private readonly steps: AlertSteps,
    private readonly schedules: Schedules,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose: 'due again', look: () => this.look() });
  }

  /** Brings back what is due. One studio's fault is not the others'; it is tried again at the next look. */
  async look(): Promise<void> {
    const studios = await this.database.read<{ studioId: string }>(
      `SELECT DISTINCT studio_id AS "studioId" FROM alert
       WHERE closed_at IS NULL AND put_off_until <= $1 ORDER BY studio_id`,
      [this.clock.now()],
    );
    for (const { studioId } of studios) {
      try {
        while ((await this.bringBack(studioId)) === maximumAlertsPerWrite);
      } catch (error) {
        if (error instanceof NothingDue) continue;
        this.logger.error(`Nothing that was put off could come back in studio ${studioId}: ${String(error)}`);
      }
    }
  }

  /** @returns how many came back */
  private async bringBack(studioId: string): Promise<number> {
    const actor = await this.studioActors.of(studioId);
    if (!actor) return 0;
    return this.transactions.write(
      actor,
      { id: null, action: 'alerts.due-again', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        await transaction.lockStudio();
        const due = await transaction.query<SteppingAlert>(
          `SELECT id, kind, severity, given_to AS "givenTo" FROM alert
           WHERE studio_id = $1 AND closed_at IS NULL AND put_off_until <= $2
           ORDER BY put_off_until, id LIMIT ${maximumAlertsPerWrite}`,
          [studioId, transaction.recordedAt],
        );
        if (due.length === 0) throw new NothingDue();
        const steps: AlertStep[] = [];
        for (const alert of due) steps.push(await this.bringBackOne(transaction, alert));
        await this.steps.follow(transaction, steps);
        return due.length;
      },
    );
  }

  private async bringBackOne(transaction: Transaction, alert: SteppingAlert): Promise<AlertStep> {
    const { id, severity, givenTo } = alert;
    const turn = await this.steps.turn(transaction, severity, givenTo);
    const key = { studioId: transaction.studioId, id };
    await transaction.update(Alert, key, { putOffUntil: null, ...unseen, ...turn });
    return { alert, event: 'due again', severity };
  }
}
