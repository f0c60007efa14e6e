import type { Channel } from '../outbox/outbox-row.entity.js';

/** Names an outbox row; the row itself is loaded when its turn comes. Nothing else ever stands in a queue. */
export interface DeliveryJob {
  studioId: string;
  deliveryId: string;
}

/** Tries one delivery; what comes of it stands in the outbox row, so that a queue need not repeat anything. */
export type DeliveryHandler = (job: DeliveryJob) => Promise<void>;

/** Does what is due for a purpose. */
export type FiringHandler = (purpose: string) => Promise<void>;

/** How the queue is, as this process sees it. */
export interface QueueState {
  /** When it ceased to be reached, ISO 8601 instant; null: it is reached. */
  awaySince: string | null;
  /** How many processes take jobs from it; null: this very process does, or it cannot be known. */
  workers: number | null;
}

/**
 * Carries jobs from the relay to the delivery, each channel in a queue of its own, so that a slow mail server holds up no
 * webhook; and fires what is to be done by time. Guarantees of every implementation:
 * - a job that waits, or is being done, is not put in a second time;
 * - of what goes out no channel does more in a second than it may, all processes together;
 * - it may forget everything: the outbox row is the record, and the relay puts in again what is not settled;
 * - none of its methods fails or waits for long because the queue is out of reach, `close` included.
 */
export abstract class AlertQueue {
  /** How many jobs more a channel takes now; 0 also while it is not reached. */
  abstract room(channel: Channel): Promise<number>;

  /** Puts jobs in. What finds no place is put in again by the relay. */
  abstract add(channel: Channel, jobs: readonly DeliveryJob[]): Promise<void>;

  /** From now on this process takes jobs. */
  abstract consume(handler: DeliveryHandler): void;

  /**
   * From now on each purpose is fired again and again, in one of the processes that take part; a firing may come late or
   * twice.
   * @param fire null where only others are to do it
   */
  abstract repeat(purposes: readonly string[], fire: FiringHandler | null): void;

  abstract state(): Promise<QueueState>;

  /** Takes no more, lets what runs come to its end for a while, and drops what waits. */
  abstract close(): Promise<void>;
}

/** How long `close` waits for what runs. What it leaves is tried again when its lease is over. */
export const closeLimitMilliseconds = 3_000;

/** How often a purpose is fired. */
export const repeatMilliseconds = 30_000;
