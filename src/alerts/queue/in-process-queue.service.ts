import { Logger } from '@nestjs/common';
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
import { begin, type RateWindow } from './rate-window.js';

/** Carries jobs inside this process. Time and rate are those of this machine. */
export class InProcessQueue extends AlertQueue {
  private readonly lanes: Record<Channel, Lane>;
  private readonly timers: NodeJS.Timeout[] = [];
  private readonly firing = new Map<string, Promise<void>>();
  private readonly logger = new Logger('alert queue');
  private closing: Promise<void> | undefined;

  /** @param perSecond how many deliveries a channel that goes out may make in a second */
  constructor(perSecond: number) {
    super();
    const limits = channelLimits(perSecond);
    this.lanes = Object.fromEntries(
      channels.map((channel) => [channel, new Lane(limits[channel], this.logger)]),
    ) as Record<Channel, Lane>;
  }

  override async room(channel: Channel): Promise<number> {
    return this.lanes[channel].room;
  }

  override async add(channel: Channel, jobs: readonly DeliveryJob[]): Promise<void> {
    for (const job of jobs) this.lanes[channel].add(job);
  }

  override consume(handler: DeliveryHandler): void {
    for (const lane of Object.values(this.lanes)) lane.consume(handler);
  }

  override repeat(purposes: readonly string[], fire: FiringHandler | null): void {
    if (fire === null) return;
    const fireAll = () => {
      for (const purpose of purposes) this.fire(purpose, fire);
    };
    const timer = setInterval(fireAll, repeatMilliseconds);
    timer.unref();
    this.timers.push(timer);
    fireAll();
  }

  override async state(): Promise<QueueState> {
    return { awaySince: null, workers: null };
  }

  override close(): Promise<void> {
    this.closing ??= this.end();
    return this.closing;
  }

  private async end(): Promise<void> {
    for (const timer of this.timers) clearInterval(timer);
    const running = Object.values(this.lanes).map((lane) => lane.close());
    const ended = Promise.all([...running, ...this.firing.values()]);
    await inTime(ended, closeLimitMilliseconds).catch(() => undefined);
  }

  /** Waits for what fires now. */
  async fired(): Promise<void> {
    await Promise.all(this.firing.values());
  }

  /** One that takes longer than the time between two firings is not fired beside itself. */
  private fire(purpose: string, fire: FiringHandler): void {
    if (this.firing.has(purpose)) return;
    const fired = fire(purpose)
      .catch((error: unknown) => this.logger.error(`"${purpose}" failed: ${String(error)}`))
      .finally(() => this.firing.delete(purpose));
    this.firing.set(purpose, fired);
  }
}

/** One channel: what waits, in its order, and what is being sent. */
class Lane {
  private readonly waiting = new Map<string, DeliveryJob>();
  private readonly running = new Map<string, Promise<void>>();
  private handler: DeliveryHandler | undefined;
  private window: RateWindow = { since: 0, begun: 0 };
  private pause: NodeJS.Timeout | undefined;
  private closed = false;

  constructor(
    private readonly limits: ChannelLimits,
    private readonly logger: Logger,
  ) {}

  get room(): number {
    return this.closed ? 0 : this.limits.waiting - this.waiting.size;
  }

  add(job: DeliveryJob): void {
    const { deliveryId } = job;
    if (this.room <= 0 || this.waiting.has(deliveryId) || this.running.has(deliveryId)) return;
    this.waiting.set(deliveryId, job);
    this.start();
  }

  consume(handler: DeliveryHandler): void {
    this.handler = handler;
    this.start();
  }

  async close(): Promise<void> {
    this.closed = true;
    clearTimeout(this.pause);
    this.waiting.clear();
    await Promise.all(this.running.values());
  }

  /** Begins what may begin now; whatever ends, and the end of a pause, calls it again. */
  private start(): void {
    if (!this.handler || this.closed || this.pause) return;
    for (const [deliveryId, job] of this.waiting) {
      if (this.running.size >= this.limits.atOnce || this.mustPause()) return;
      this.waiting.delete(deliveryId);
      const ended = this.handler(job)
        .catch((error: unknown) =>
          this.logger.error(`Delivery ${deliveryId} could not be handled: ${String(error)}`),
        )
        .finally(() => {
          this.running.delete(deliveryId);
          this.start();
        });
      this.running.set(deliveryId, ended);
    }
  }

  /** Counts one more beginning, or pauses until the next second of the rate limit. */
  private mustPause(): boolean {
    const { perSecond } = this.limits;
    if (perSecond === null) return false;
    const answer = begin(this.window, Date.now(), perSecond);
    if ('window' in answer) {
      this.window = answer.window;
      return false;
    }
    this.pause = setTimeout(() => {
      this.pause = undefined;
      this.start();
    }, answer.waitMilliseconds);
    this.pause.unref();
    return true;
  }
}
