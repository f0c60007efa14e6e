import { Logger } from '@nestjs/common';
import { type Queue, Worker, type WorkerOptions } from 'bullmq';
import { inTime } from '../../platform/time-limit.js';
import { type Channel, channels } from '../outbox/outbox-row.entity.js';
import {
  AlertQueue,
  closeLimitMilliseconds,
  type DeliveryHandler,
  type DeliveryJob,
  type FiringHandler,
  type QueueState,
  repeatMilliseconds,
} from './alert-queue.interface.js';
import { type ChannelLimits, channelLimits } from './channel-limits.js';
import { answerMilliseconds, type RedisConnection } from './redis-connection.service.js';
import { redisPrefix } from './redis-queue.module.js';

/** The queue of what fires by time; each channel has one of its own name. */
export const scheduleQueue = 'schedule';
export const queueNames = [...channels, scheduleQueue] as const;
export type QueueName = (typeof queueNames)[number];

const lock = {
  // A worker that was killed holds its job so long; the lease of the outbox row is longer.
  lockDuration: 6_000,
  stalledInterval: 3_000,
  // However often: whether a delivery is tried again is said by its row.
  maxStalledCount: 1_000_000,
  runRetryDelay: 1_000,
};
const firingsAtOnce = 4;

/** Carries jobs through Redis with BullMQ, to this process or to others. */
export class RedisQueue extends AlertQueue {
  private readonly logger = new Logger('alert queue');
  private readonly limits: Record<Channel, ChannelLimits>;
  private readonly workers: Worker[] = [];
  private readonly running = new Set<Promise<void>>();
  private timer: NodeJS.Timeout | undefined;
  private purposes: readonly string[] = [];
  private closing: Promise<void> | undefined;

  /**
   * @param queues made by RedisQueueModule on the producing connection
   * @param perSecond how many deliveries a channel that goes out may make in a second
   */
  constructor(
    private readonly connection: RedisConnection,
    private readonly queues: Record<QueueName, Queue>,
    perSecond: number,
  ) {
    super();
    this.limits = channelLimits(perSecond);
    for (const queue of Object.values(queues)) queue.on('error', (error) => connection.tell(error));
  }

  override async room(channel: Channel): Promise<number> {
    const waiting = await this.ask(() => this.queues[channel].getWaitingCount());
    return waiting === undefined ? 0 : Math.max(0, this.limits[channel].waiting - waiting);
  }

  override async add(channel: Channel, jobs: readonly DeliveryJob[]): Promise<void> {
    if (jobs.length === 0) return;
    await this.ask(() =>
      this.queues[channel].addBulk(
        // One id, one job: what waits or is being done is not put in twice.
        jobs.map((data) => ({ name: 'delivery', data, opts: { jobId: data.deliveryId } })),
      ),
    );
  }

  override consume(handler: DeliveryHandler): void {
    for (const channel of channels) {
      const { atOnce, perSecond } = this.limits[channel];
      this.work(channel, (job) => handler(job.data as DeliveryJob), {
        concurrency: atOnce,
        ...(perSecond !== null && { limiter: { max: perSecond, duration: 1_000 } }),
      });
    }
  }

  override repeat(purposes: readonly string[], fire: FiringHandler | null): void {
    this.purposes = purposes;
    if (fire !== null) {
      this.work(scheduleQueue, (job) => fire(job.name), { concurrency: firingsAtOnce });
    }
    this.connection.whenReached(() => void this.putInSchedules());
    this.timer = setInterval(() => void this.putInSchedules(), repeatMilliseconds);
    this.timer.unref();
    void this.putInSchedules();
  }

  override async state(): Promise<QueueState> {
    const { awaySince } = this.connection;
    if (this.workers.length > 0 || awaySince !== null) return { awaySince, workers: null };
    const workers = await this.ask(() => this.queues.log.getWorkersCount());
    return { awaySince: this.connection.awaySince, workers: workers ?? null };
  }

  override close(): Promise<void> {
    this.closing ??= this.end();
    return this.closing;
  }

  private async end(): Promise<void> {
    clearInterval(this.timer);
    const closing = this.workers.map((worker) => worker.close().catch(() => undefined));
    // Without Redis a worker never knows that it is closed; what it does is known here.
    const ended = this.connection.awaySince === null ? closing : [...this.running];
    await inTime(Promise.all(ended), closeLimitMilliseconds).catch(() => undefined);
    this.connection.close();
  }

  private work(
    name: QueueName,
    handle: (job: { name: string; data: unknown }) => Promise<void>,
    options: Partial<WorkerOptions>,
  ): void {
    const worker = new Worker(
      name,
      async (job) => {
        const done = handle(job);
        const ended = done.then(
          () => undefined,
          (error: unknown) =>
            this.logger.error(`Job ${job.id} of "${name}" could not be handled: ${String(error)}`),
        );
        this.running.add(ended);
        await ended.finally(() => this.running.delete(ended));
      },
      {
        connection: this.connection.consuming,
        prefix: redisPrefix,
        removeOnComplete: { count: 0 },
        removeOnFail: { count: 0 },
        ...lock,
        ...options,
      },
    );
    worker.on('error', (error) => this.connection.tell(error));
    this.workers.push(worker);
  }

  /**
   * One that was lost, or whose next firing never came or stands far ahead, as after a clock was set back, is put in anew;
   * the others keep their time.
   */
  private async putInSchedules(): Promise<void> {
    await this.ask(async () => {
      const queue = this.queues[scheduleQueue];
      for (const purpose of this.purposes) {
        const known = await queue.getJobScheduler(purpose);
        const isFiring =
          known?.next !== undefined && Math.abs(known.next - Date.now()) <= 2 * repeatMilliseconds;
        if (isFiring) continue;
        if (known) await queue.removeJobScheduler(purpose);
        await queue.upsertJobScheduler(
          purpose,
          { every: repeatMilliseconds },
          { name: purpose, data: {}, opts: { removeOnComplete: true, removeOnFail: true } },
        );
      }
    });
  }

  /** Asks Redis, if it is reached; undefined when it does not answer in time, or with a fault. */
  private async ask<Answer>(question: () => Promise<Answer>): Promise<Answer | undefined> {
    if (this.closing || this.connection.awaySince !== null) return undefined;
    try {
      return await inTime(question(), answerMilliseconds);
    } catch (error) {
      this.connection.tell(error);
      return undefined;
    }
  }
}
