import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { AlertQueue, type DeliveryJob } from '../queue/alert-queue.interface.js';
import { beyondAnyWait } from './backoff.js';
import { Deliver } from './deliver.service.js';
import { inTurns } from './in-turns.js';
import { type Channel, channels } from './outbox-row.entity.js';
import { isDue, isReleased } from './released.sql.js';

/** What other processes commit is found within this time; what this one commits, at once. */
const pollMilliseconds = 1_000;
/** Between two looks while more waits than a queue takes at once. */
const busyMilliseconds = 200;
const maximumJobsPerLook = 1_000;

/**
 * Brings due outbox rows to the queue. It looks at the rows themselves, again and again, so whatever was committed is
 * found: after a commit, after a failure whose wait is over, after a restart, and when the queue lost it. What follows
 * on an alert waits until what came before it to the same destination is settled, so that nobody hears of them the wrong
 * way round; studios take turns, so that none waits for all of another.
 */
@Injectable()
export class Relay implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('alert relay');
  private running: Promise<void> | undefined;
  private ended = false;
  private woken = false;
  private endRest: (() => void) | undefined;
  private failing = false;

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly config: Config,
    private readonly queue: AlertQueue,
    private readonly deliver: Deliver,
    private readonly role: ProcessRole,
  ) {}

  onApplicationBootstrap(): void {
    const { serving, working } = this.role;
    if (!serving && !working) return;
    if (working || !this.config.hasWorkers) this.queue.consume((job) => this.deliver.deliver(job));
    this.transactions.follow('outbox', () => this.wake());
    this.running = this.run();
  }

  async onModuleDestroy(): Promise<void> {
    this.ended = true;
    this.wake();
    await this.running;
    await this.queue.close();
  }

  /** Looks at once: something was promised. */
  wake(): void {
    this.woken = true;
    this.endRest?.();
  }

  private async run(): Promise<void> {
    while (!this.ended) {
      this.woken = false;
      const isMore = await this.look();
      await this.rest(isMore ? busyMilliseconds : pollMilliseconds);
    }
  }

  private async rest(milliseconds: number): Promise<void> {
    if (this.woken) return;
    await new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, milliseconds);
      timer.unref();
      this.endRest = () => {
        clearTimeout(timer);
        resolve();
      };
    });
    this.endRest = undefined;
  }

  /** @returns whether more is due than was brought */
  private async look(): Promise<boolean> {
    try {
      const now = this.clock.now();
      const due = await this.database.read<{ channel: Channel; studioId: string }>(
        `SELECT DISTINCT channel, studio_id AS "studioId" FROM outbox
         WHERE state = 'pending' AND ${isDue('$1', '$2')} ORDER BY channel, studio_id`,
        [now, beyondAnyWait(now)],
      );
      let isMore = false;
      for (const channel of channels) {
        const studioIds = due.filter((each) => each.channel === channel).map(({ studioId }) => studioId);
        if (studioIds.length > 0 && (await this.bring(channel, studioIds, now))) isMore = true;
      }
      this.failing = false;
      return isMore;
    } catch (error) {
      if (!this.failing) this.logger.error(`The outbox cannot be read, trying on: ${String(error)}`);
      this.failing = true;
      return false;
    }
  }

  /** @returns whether more is due in this channel than was brought */
  private async bring(channel: Channel, studioIds: readonly string[], now: string): Promise<boolean> {
    const room = await this.queue.room(channel);
    if (room === 0) return false;
    // What waits already is among what is due: it is looked at again only when much of it is gone.
    if (room < maximumJobsPerLook / 2) return true;
    const share = Math.ceil(maximumJobsPerLook / studioIds.length);
    const jobs: DeliveryJob[][] = [];
    for (const studioId of studioIds) {
      const rows = await this.database.read<{ id: string }>(
        `SELECT id FROM outbox
         WHERE channel = $1 AND studio_id = $2 AND state = 'pending' AND ${isDue('$3', '$4')} AND ${isReleased}
         ORDER BY next_attempt_at, id LIMIT ${share}`,
        [channel, studioId, now, beyondAnyWait(now)],
      );
      jobs.push(rows.map(({ id }) => ({ studioId, deliveryId: id })));
    }
    await this.queue.add(channel, inTurns(jobs));
    return jobs.some((ofStudio) => ofStudio.length === share);
  }
}
