import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Alerts, type ReconciledAlerts } from '../alerts.service.js';
import { isMorningDue } from './morning-due.js';
import { ScheduleStates } from './schedule-states.service.js';
import { Schedules } from './schedules.service.js';

const purpose = 'sweep';

/** Another process has swept meanwhile: nothing is written. */
class SweptAlready extends Error {}

/**
 * Once on each of the studio's mornings all conditions are judged anew: what only time changes opens and closes here.
 * When it was last done stands in the record and is asked again under the studio's lock, so that a restart, a second
 * process or a late firing does it no second time.
 */
@Injectable()
export class Sweep implements OnModuleInit {
  private readonly logger = new Logger('sweep');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly alerts: Alerts,
    private readonly states: ScheduleStates,
    private readonly studioActors: StudioActors,
    private readonly schedules: Schedules,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose, look: () => this.look() });
  }

  /** Judges all conditions of one studio anew. Doing it twice changes nothing more. */
  sweep(actor: Actor, requestId: string | null): Promise<ReconciledAlerts> {
    return this.sweepUnless(actor, requestId, async () => false);
  }

  /** Sweeps where it is due. One studio's fault is not the others'; it is tried again at the next look. */
  async look(): Promise<void> {
    const mornings = await this.mornings();
    const done = await this.states.all(this.database.read, purpose);
    for (const actor of await this.studioActors.all()) {
      const { studioId, timeZone } = actor;
      const morning = mornings.get(studioId);
      // Founded just now.
      if (morning === undefined) continue;
      const isDue = (doneAt: string | null) => isMorningDue(doneAt, this.clock.now(), morning, timeZone);
      if (!isDue(done.get(studioId) ?? null)) continue;
      try {
        await this.sweepUnless(
          actor,
          null,
          async (transaction) => !isDue(await this.states.doneAt(transaction, purpose)),
        );
      } catch (error) {
        if (error instanceof SweptAlready) continue;
        this.logger.error(`The sweep of studio ${studioId} failed: ${String(error)}`);
      }
    }
  }

  private sweepUnless(
    actor: Actor,
    requestId: string | null,
    isDone: (transaction: Transaction) => Promise<boolean>,
  ): Promise<ReconciledAlerts> {
    return this.transactions.write(
      actor,
      {
        id: requestId,
        action: 'alerts.sweep',
        subject: { kind: 'studio', id: actor.studioId },
        content: { id: requestId },
      },
      async (transaction) => {
        await transaction.lockStudio();
        if (await isDone(transaction)) throw new SweptAlready();
        const { day, ...done } = await this.alerts.reconcileAll(transaction);
        await this.states.noteDone(transaction, purpose, this.clock.now());
        transaction.note({ day, ...done });
        return done;
      },
    );
  }

  /** When each studio's morning is, by its id. */
  private async mornings(): Promise<Map<string, string>> {
    const studios = await this.database.read<{ id: string; morning: string }>(
      'SELECT id, morning FROM studio',
    );
    return new Map(studios.map(({ id, morning }) => [id, morning]));
  }
}
