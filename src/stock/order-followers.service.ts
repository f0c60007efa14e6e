import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';

/** Goods that arrive, before they are recorded. */
export interface ArrivingLine {
  productId: string;
  pieces: number;
  /** What whoever receives said of the line of an order: undefined, nothing; null, that it answers none. */
  orderLineId: string | null | undefined;
}

/** Which lines of orders what arrives answers. */
export interface ArrivingDelivery {
  /** The expected delivery that it was said to be. */
  expectedDeliveryId: string | null;
  lines: readonly ArrivingLine[];
}

export interface RecordedDelivery {
  id: string;
  /** ISO 8601 instant of its arrival. */
  occurredAt: string;
  /** The expected delivery that it was said to be, and that has ended with it; null: none. */
  expectedDeliveryId: string | null;
  orderLineIds: readonly string[];
}

/** Whoever keeps orders. */
export interface OrderFollower {
  /** The line of an order that each line answers, where nobody said it; in the order of the lines. */
  answered(transaction: Transaction, delivery: ArrivingDelivery): Promise<(string | null)[]>;
  /** Which order is underway and expected with it, in words; null: none. */
  awaiting(transaction: Transaction, expectedDeliveryId: string): Promise<string | null>;
  /**
   * Moves on the orders whose lines were answered, and the one that was expected with it, in the transaction of the
   * delivery and under the studio's lock.
   */
  received(transaction: Transaction, delivery: RecordedDelivery): Promise<void>;
}

/**
 * Orders lie in a room to the right, and their lines are opaque here. That room registers at start-up (onModuleInit), and
 * follows what arrives. It refuses nothing: goods that are here are recorded whatever was ordered.
 */
@Injectable()
export class OrderFollowers {
  private follower: OrderFollower | undefined;

  register(follower: OrderFollower): void {
    if (this.follower) throw new Error('Somebody follows what arrives of orders already.');
    this.follower = follower;
  }

  async answered(transaction: Transaction, delivery: ArrivingDelivery): Promise<(string | null)[]> {
    const named = delivery.lines.map(({ orderLineId }) => orderLineId ?? null);
    return this.follower?.answered(transaction, delivery) ?? named;
  }

  async awaiting(transaction: Transaction, expectedDeliveryId: string): Promise<string | null> {
    return (await this.follower?.awaiting(transaction, expectedDeliveryId)) ?? null;
  }

  async received(transaction: Transaction, delivery: RecordedDelivery): Promise<void> {
    await this.follower?.received(transaction, delivery);
  }
}
