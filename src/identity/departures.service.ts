import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';

type Reaction = (transaction: Transaction, personId: string) => Promise<void>;

/**
 * What has to follow when a person works in a studio no more. Rooms to the right register here at start-up
 * (onModuleInit), so that identity need not know them.
 */
@Injectable()
export class Departures {
  private readonly reactions: Reaction[] = [];

  register(reaction: Reaction): void {
    this.reactions.push(reaction);
  }

  /** Called in the transaction in which the person leaves. */
  async follow(transaction: Transaction, personId: string): Promise<void> {
    for (const reaction of this.reactions) await reaction(transaction, personId);
  }
}
