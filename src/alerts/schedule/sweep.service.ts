import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { Alerts, type ReconciledAlerts } from '../alerts.service.js';
import { nextMorning } from './next-morning.js';

const lookMilliseconds = 30_000;

/**
 * Once on each of the studio's mornings, and at the start of the service, all conditions are judged anew: what only time
 * changes opens and closes here. The clock is looked at every half minute rather than one long timer set, so that a
 * machine that slept, or a studio that moved its morning, is not missed.
 */
@Injectable()
export class Sweep implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('sweep');
  private readonly sweptAt = new Map<string, string>();
  private timer: NodeJS.Timeout | undefined;
  private looking: Promise<void> | undefined;

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly alerts: Alerts,
    private readonly role: ProcessRole,
    private readonly studioActors: StudioActors,
  ) {}

  onApplicationBootstrap(): void {
    if (!this.role.serving) return;
    this.timer = setInterval(() => this.look(), lookMilliseconds);
    this.timer.unref();
    this.look();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.timer);
    await this.settled();
  }

  /** Waits for the sweeps that are running. */
  async settled(): Promise<void> {
    await this.looking;
  }

  /** Judges all conditions of one studio anew. Doing it twice changes nothing more. */
  sweep(actor: Actor, requestId: string | null): Promise<ReconciledAlerts> {
    return this.transactions.write(
      actor,
      {
        id: requestId,
        action: 'alerts.sweep',
        subject: { kind: 'studio', id: actor.studioId },
        content: { id: requestId },
      },
      async (transaction) => {
        const { day, ...done } = await this.alerts.reconcileAll(transaction);
        transaction.note({ day, ...done });
        return done;
      },
    );
  }

  private look(): void {
    this.looking ??= this.sweepWhatIsDue().finally(() => {
      this.looking = undefined;
    });
  }

  private async sweepWhatIsDue(): Promise<void> {
    let actors: Actor[] = [];
    let mornings = new Map<string, string>();
    try {
      mornings = await this.mornings();
      actors = await this.studioActors.all();
    } catch (error) {
      this.logger.error(`The studios cannot be read, trying on: ${String(error)}`);
    }
    for (const actor of actors) {
      try {
        await this.sweepIfDue(actor, mornings.get(actor.studioId));
      } catch (error) {
        // One studio's fault is not the others'; it is tried again at the next look.
        this.logger.error(`The sweep of studio ${actor.studioId} failed: ${String(error)}`);
      }
    }
  }

  /** When each studio's morning is, by its id. */
  private async mornings(): Promise<Map<string, string>> {
    const studios = await this.database.read<{ id: string; morning: string }>(
      'SELECT id, morning FROM studio',
    );
    return new Map(studios.map(({ id, morning }) => [id, morning]));
  }

  /** @param morning undefined for a studio that was founded just now */
  private async sweepIfDue(actor: Actor, morning: string | undefined): Promise<void> {
    const { studioId, timeZone } = actor;
    const now = this.clock.now();
    const sweptAt = this.sweptAt.get(studioId);
    if (sweptAt !== undefined && morning !== undefined) {
      const due = nextMorning(sweptAt, morning, timeZone);
      if (Temporal.Instant.compare(now, due) < 0) return;
    }
    await this.sweep(actor, null);
    this.sweptAt.set(studioId, now);
  }
}
