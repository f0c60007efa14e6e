import { setTimeout as wait } from 'node:timers/promises';
import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database, placeholders } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { AlertQueue, type DeliveryJob } from '../queue/alert-queue.interface.js';
import { beyondAnyWait, leaseEnd } from './backoff.js';
import { Deliver } from './deliver.service.js';
import { inTurns } from './in-turns.js';
import { type Channel, channels } from './outbox-row.entity.js';
import { isDue, isReleased } from './released.sql.js';

/** What other processes commit is found within this time; what this one commits, at once. */
const pollMilliseconds = 1_000;
/** Between two looks while more waits than a queue takes at once. */
const busyMilliseconds = 100;
const shortestRestMilliseconds = 10;
const maximumJobsPerLook = 1_000;
/** So much of one destination is in the queue or being sent: fewer than a channel sends at once. */
const mostOfDestination = 20;
const mostUrgentAlerts = 200;

/** What is pending to one destination. */
interface Backlog {
  channel: Channel;
  studioId: string;
  /** Empty: the log. */
  destinationId: string;
  /** How many are due. */
  due: number;
  /** How many are being tried now. */
  running: number;
  /** The most of any of them that were made and failed. */
  attempts: number;
}

/**
 * Brings due outbox rows to the queue. It looks at the rows themselves, again and again, so whatever was committed is
 * found: after a commit, after a failure whose wait is over, after a restart, and when the queue lost it. What follows
 * on an alert waits until what came before it to the same destination is settled, so that nobody hears of them the wrong
 * way round. Destinations take turns, and none has more than a few in the queue, one at a time while an attempt to it has
 * failed and is to be made again: a receiver that is slow or gone holds up nobody else. Of what one destination waits for,
 * what is urgent comes first.
 */
@Injectable()
export class Relay implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('alert relay');
  private running: Promise<void> | undefined;
  private ended = false;
  private woken = false;
  private endRest: (() => void) | undefined;
  private failing = false;
  private isMore = false;
  private endedSince = 0;

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
    if (working || !this.config.hasWorkers)
      this.queue.consume((job) => this.deliver.deliver(job).finally(() => this.noteEnd()));
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

  /** Looks again when half of what one destination may have in the queue is done, rather than let it run dry. */
  private noteEnd(): void {
    this.endedSince += 1;
    if (this.isMore && this.endedSince >= mostOfDestination / 2) this.wake();
  }

  private async run(): Promise<void> {
    while (!this.ended) {
      this.woken = false;
      this.endedSince = 0;
      this.isMore = await this.look();
      // Others have their turn, however fast what is brought comes to its end.
      if (this.isMore) await wait(shortestRestMilliseconds);
      await this.rest(this.isMore ? busyMilliseconds : pollMilliseconds);
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
      const backlogs = await this.backlogs(now);
      let isMore = false;
      for (const channel of channels) {
        const ofChannel = backlogs.filter((each) => each.channel === channel);
        if (ofChannel.length > 0 && (await this.bring(channel, ofChannel, now))) isMore = true;
      }
      this.failing = false;
      return isMore;
    } catch (error) {
      if (!this.failing) this.logger.error(`The outbox cannot be read, trying on: ${String(error)}`);
      this.failing = true;
      return false;
    }
  }

  private backlogs(now: string): Promise<Backlog[]> {
    const parameters = [now, beyondAnyWait(now), leaseEnd(now, 0)];
    return this.database.read<Backlog>(
      `SELECT channel, studio_id AS "studioId", COALESCE(destination_id, '') AS "destinationId",
         sum(CASE WHEN ${isDue('$1', '$2')} THEN 1 ELSE 0 END) AS due,
         sum(CASE WHEN begun > attempts AND next_attempt_at > $1 AND next_attempt_at <= $3 THEN 1 ELSE 0 END) AS running,
         max(attempts) AS attempts
       FROM outbox WHERE state = 'pending' GROUP BY channel, studio_id, destination_id
       HAVING sum(CASE WHEN ${isDue('$1', '$2')} THEN 1 ELSE 0 END) > 0
       ORDER BY channel, studio_id, destination_id`,
      parameters,
    );
  }

  /** @returns whether more is due in this channel than was brought */
  private async bring(channel: Channel, backlogs: readonly Backlog[], now: string): Promise<boolean> {
    const room = await this.queue.room(channel);
    if (room === 0) return false;
    // What waits already is among what is due: it is looked at again only when much of it is gone.
    if (channel === 'log' && room < maximumJobsPerLook / 2) return true;
    const share = Math.ceil(maximumJobsPerLook / backlogs.length);
    const urgentAlerts = new Map<string, readonly string[]>();
    const urgent: DeliveryJob[][] = [];
    const others: DeliveryJob[][] = [];
    let isMore = false;
    for (const backlog of backlogs) {
      const { studioId, due } = backlog;
      const limit = Math.min(share, roomOf(backlog));
      if (due > limit) isMore = true;
      if (limit <= 0) continue;
      const first: string[] = [];
      // Where all of it is brought, it is brought at once anyway.
      if (due > limit && channel !== 'log') {
        const alertIds = urgentAlerts.get(studioId) ?? (await this.urgentAlerts(studioId));
        urgentAlerts.set(studioId, alertIds);
        if (alertIds.length > 0) first.push(...(await this.dueOf(backlog, now, limit, alertIds)));
      }
      const rest = first.length < limit ? await this.dueOf(backlog, now, limit) : [];
      const jobOf = (deliveryId: string): DeliveryJob => ({ studioId, deliveryId });
      urgent.push(first.map(jobOf));
      others.push(
        rest
          .filter((id) => !first.includes(id))
          .slice(0, limit - first.length)
          .map(jobOf),
      );
    }
    await this.queue.add(channel, [...inTurns(urgent), ...inTurns(others)]);
    return isMore;
  }

  /** @param alertIds only what tells of these */
  private async dueOf(
    { channel, studioId, destinationId }: Backlog,
    now: string,
    limit: number,
    alertIds?: readonly string[],
  ): Promise<string[]> {
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM outbox
       WHERE channel = $1 AND studio_id = $2 AND COALESCE(destination_id, '') = $3 AND state = 'pending'
         AND ${isDue('$4', '$5')} AND ${isReleased}
         ${alertIds === undefined ? '' : `AND alert_id IN (${placeholders(alertIds, 6)})`}
       ORDER BY next_attempt_at, id LIMIT ${limit}`,
      [channel, studioId, destinationId, now, beyondAnyWait(now), ...(alertIds ?? [])],
    );
    return rows.map(({ id }) => id);
  }

  /** The latest that stand. */
  private async urgentAlerts(studioId: string): Promise<string[]> {
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM alert WHERE studio_id = $1 AND closed_at IS NULL AND severity = 'urgent'
       ORDER BY opened_at DESC LIMIT ${mostUrgentAlerts}`,
      [studioId],
    );
    return rows.map(({ id }) => id);
  }
}

/** How many more one destination may have in the queue: the log all, others a few, one by one where an attempt failed. */
function roomOf({ channel, attempts, running }: Backlog): number {
  if (channel === 'log') return maximumJobsPerLook;
  return (attempts > 0 ? 1 : mostOfDestination) - running;
}
