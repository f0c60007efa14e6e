import { Injectable, Logger } from '@nestjs/common';

/** Names an outbox row; the row itself is loaded when its turn comes. */
export interface DeliveryJob {
  studioId: string;
  deliveryId: string;
}

const maximumWaitingJobs = 1_000;

/**
 * Carries jobs from the relay to the delivery inside this process, one after the other. It forgets everything with the
 * process and may: the outbox row is the record, and the relay puts in again what is not settled.
 */
@Injectable()
export class InProcessQueue {
  private readonly logger = new Logger('alert queue');
  private readonly waiting = new Map<string, DeliveryJob>();
  private current: string | undefined;
  private handler: ((job: DeliveryJob) => Promise<void>) | undefined;
  private draining: Promise<void> = Promise.resolve();
  private closed = false;

  /** Says who takes the jobs. */
  handle(handler: (job: DeliveryJob) => Promise<void>): void {
    this.handler = handler;
  }

  /** Puts a job at the end, unless it waits or runs already. False when there is no room: it is put in again later. */
  add(job: DeliveryJob): boolean {
    if (this.closed || this.waiting.size >= maximumWaitingJobs) return false;
    if (this.waiting.has(job.deliveryId) || this.current === job.deliveryId) return true;
    this.waiting.set(job.deliveryId, job);
    if (this.waiting.size === 1 && this.current === undefined) this.draining = this.drain();
    return true;
  }

  /** Takes no more, lets the job that runs come to its end, and drops what waits. */
  async close(): Promise<void> {
    this.closed = true;
    this.waiting.clear();
    await this.draining;
  }

  private async drain(): Promise<void> {
    for (const [deliveryId, job] of this.waiting) {
      this.waiting.delete(deliveryId);
      this.current = deliveryId;
      try {
        await this.handler?.(job);
      } catch (error) {
        this.logger.error(`Delivery ${deliveryId} could not be handled: ${String(error)}`);
      }
    }
    this.current = undefined;
  }
}
