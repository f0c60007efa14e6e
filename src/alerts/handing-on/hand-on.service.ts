import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { StudioActors } from '../../identity/studio-actors.service.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Alert } from '../alert.entity.js';
import type { AlertStep } from '../alert-history.service.js';
import { AlertSteps } from '../alert-steps.service.js';
import { Promises } from '../outbox/promises.service.js';
import type { Audience } from '../outbox/who-is-told.js';
import { nextTurn } from '../outbox/who-is-told.js';
import { Schedules } from '../schedule/schedules.service.js';
import { dueTurns } from './due-turns.js';
import { HandingOn } from './handing-on.entity.js';
import { assumedMinutes } from './handing-on.service.js';

const maximumAlertsPerWrite = 200;

/** Somebody else was quicker: nothing is written. */
class NothingDue extends Error {}

/** Urgent, and waiting for somebody to acknowledge it. */
const waiting = `closed_at IS NULL AND severity = 'urgent' AND acknowledged_at IS NULL AND put_off_until IS NULL
  AND turn_at IS NOT NULL`;

type WaitingAlert = Pick<Alert, 'id' | 'kind' | 'severity' | 'givenTo' | 'turn'>;

/**
 * Hands urgent alerts that nobody acknowledged in time on to the next person of the order. Whose turn it was, and when,
 * stands on the alert and is asked under the studio's lock, so that looking twice hands on once.
 */
@Injectable()
export class HandOn implements OnModuleInit {
  private readonly logger = new Logger('handing on');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly studioActors: StudioActors,
    private readonly steps: AlertSteps,
    private readonly promises: Promises,
    private readonly schedules: Schedules,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose: 'handing on', look: () => this.look() });
  }

  /** Hands on what is due. One studio's fault is not the others'; it is tried again at the next look. */
  async look(): Promise<void> {
    const studios = await this.database.read<{
      studioId: string;
      minutes: number | null;
      turnAt: string;
      latest: string;
    }>(
      `SELECT alert.studio_id AS "studioId", min(alert.turn_at) AS "turnAt", max(alert.turn_at) AS latest,
         CASE WHEN min(handing_on.studio_id) IS NULL THEN ${assumedMinutes} ELSE min(handing_on.after_minutes) END AS minutes
       FROM alert LEFT JOIN handing_on ON handing_on.studio_id = alert.studio_id
       WHERE ${waiting} GROUP BY alert.studio_id ORDER BY alert.studio_id`,
    );
    for (const { studioId, minutes, turnAt, latest } of studios) {
      if (minutes === null) continue;
      const { from, until } = dueTurns(this.clock.now(), minutes);
      if (turnAt > until && latest < from) continue;
      try {
        while ((await this.handOn(studioId)) === maximumAlertsPerWrite);
      } catch (error) {
        if (error instanceof NothingDue) continue;
        this.logger.error(`Nothing could be handed on in studio ${studioId}: ${String(error)}`);
      }
    }
  }

  /** @returns how many were handed on */
  private async handOn(studioId: string): Promise<number> {
    const actor = await this.studioActors.of(studioId);
    if (!actor) return 0;
    return this.transactions.write(
      actor,
      { id: null, action: 'alerts.hand-on', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        await transaction.lockStudio();
        const due = await this.due(transaction);
        if (due.length === 0) throw new NothingDue();
        const audience = await this.promises.audience(transaction);
        const steps: AlertStep[] = [];
        for (const alert of due) steps.push(await this.handOnOne(transaction, alert, audience));
        await this.steps.follow(transaction, steps);
        return due.length;
      },
    );
  }

  private async due(transaction: Transaction): Promise<WaitingAlert[]> {
    const { studioId, recordedAt, manager } = transaction;
    const chosen = await manager.findOneBy(HandingOn, { studioId });
    const minutes = chosen === null ? assumedMinutes : chosen.afterMinutes;
    if (minutes === null) return [];
    const { from, until } = dueTurns(recordedAt, minutes);
    return transaction.query<WaitingAlert>(
      `SELECT id, kind, severity, given_to AS "givenTo", turn FROM alert
       WHERE studio_id = $1 AND ${waiting} AND (turn_at <= $2 OR turn_at >= $3)
       ORDER BY turn_at, id LIMIT ${maximumAlertsPerWrite}`,
      [studioId, until, from],
    );
  }

  private async handOnOne(
    transaction: Transaction,
    alert: WaitingAlert,
    audience: Audience,
  ): Promise<AlertStep> {
    const { studioId, recordedAt } = transaction;
    const next = nextTurn(audience, alert.givenTo, alert.turn ?? 0);
    // At the end of the order everybody is told once more, and no more after that.
    const turn = next === null ? { turnAt: null } : { turn: next.passed, turnAt: recordedAt };
    await transaction.update(Alert, { studioId, id: alert.id }, turn);
    return { alert, event: 'handed on', severity: alert.severity, toPersonId: next?.person.personId ?? null };
  }
}
