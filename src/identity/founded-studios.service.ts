import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';

/** Gives a new studio what it needs from the start, in the transaction that founds it. */
export type FoundingFollower = (transaction: Transaction) => Promise<void>;

/** Rooms to the right register here what every studio begins with, for they may not be imported from here. */
@Injectable()
export class FoundedStudios {
  private readonly followers: FoundingFollower[] = [];

  register(follower: FoundingFollower): void {
    this.followers.push(follower);
  }

  async follow(transaction: Transaction): Promise<void> {
    for (const follower of this.followers) await follower(transaction);
  }
}
