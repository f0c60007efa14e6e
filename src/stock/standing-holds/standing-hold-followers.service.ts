import { Injectable } from '@nestjs/common';
import type { Transaction } from '../../platform/database/transaction.js';
import type { MatchReason } from '../lot-matching/match-reasons.js';

export interface CaughtLot {
  standingHoldId: string;
  lotId: string;
  holdId: string;
  grade: 'certain' | 'possible';
  itemIndex: number | null;
  reasons: MatchReason[];
}

type Follower = (transaction: Transaction, caught: readonly CaughtLot[]) => Promise<void>;

/** Rooms to the right register here what follows when a lot arrives that a standing hold catches. PLACEHOLDER: see above. */
@Injectable()
export class StandingHoldFollowers {
  private readonly followers: Follower[] = [];

  register(follower: Follower): void {
    this.followers.push(follower);
  }

  async follow(transaction: Transaction, caught: readonly CaughtLot[]): Promise<void> {
    for (const follower of this.followers) await follower(transaction, caught);
  }
}
