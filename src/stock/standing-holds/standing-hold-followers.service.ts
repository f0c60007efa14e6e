import { Injectable } from '@nestjs/common';
import type { Transaction } from '../../platform/database/transaction.js';
import type { MatchReason } from '../lot-matching/match-reasons.js';

/** A lot that a standing hold caught, and the hold that was placed on it. */
export interface CaughtLot {
  standingHoldId: string;
  holdId: string;
  lotId: string;
  grade: 'certain' | 'possible';
  itemIndex: number | null;
  reasons: MatchReason[];
}

/** A lot that a standing hold is about to catch. */
export type MetLot = Pick<CaughtLot, 'lotId' | 'grade'>;

/** Hears of what was caught, in the transaction of its arrival. */
export type Follower = (transaction: Transaction, caught: readonly CaughtLot[]) => Promise<void>;

/**
 * Of these lots those that need not be caught: they are on hold for the same cause already, or a person decided that they
 * are not meant.
 */
export type Settled = (
  transaction: Transaction,
  standingHoldId: string,
  lots: readonly MetLot[],
) => Promise<readonly string[]>;

/** Who has a part in what standing holds catch. Rooms to the right register here at start-up (onModuleInit). */
@Injectable()
export class StandingHoldFollowers {
  private readonly followers: Follower[] = [];
  private readonly settledBy: Settled[] = [];

  register(follower: Follower, settled?: Settled): void {
    this.followers.push(follower);
    if (settled !== undefined) this.settledBy.push(settled);
  }

  /** The lots that are to be caught. */
  async unsettled<Lot extends MetLot>(
    transaction: Transaction,
    standingHoldId: string,
    lots: readonly Lot[],
  ): Promise<Lot[]> {
    let left = [...lots];
    for (const settled of this.settledBy) {
      if (left.length === 0) break;
      const ids = new Set(await settled(transaction, standingHoldId, left));
      left = left.filter(({ lotId }) => !ids.has(lotId));
    }
    return left;
  }

  async follow(transaction: Transaction, caught: readonly CaughtLot[]): Promise<void> {
    for (const follower of this.followers) await follower(transaction, caught);
  }
}
