import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';

type Reaction = (transaction: Transaction) => Promise<void>;

/**
 * What has to follow when a studio changes the settings that its conditions are judged by. Rooms to the right register
 * here at start-up (onModuleInit), so that identity need not know them.
 */
@Injectable()
export class StudioChanges {
  private readonly reactions: Reaction[] = [];

  register(reaction: Reaction): void {
    this.reactions.push(reaction);
  }

  /** Called in the transaction of the change, once it is written. */
  async follow(transaction: Transaction): Promise<void> {
    for (const reaction of this.reactions) await reaction(transaction);
  }
}
