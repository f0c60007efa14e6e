import { Injectable } from '@nestjs/common';
import type { Read } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';

/** What other rooms keep of a client's treatment, as far as it matters to how long the client is kept. */
export interface TreatmentFacts {
  /** Instant of the last record of a visit that took place; null: the client was never treated. */
  lastRecordAt: string | null;
  /** Visits that are planned or under way. */
  openSessionIds: string[];
  /** Lots that touched the client and are on hold, themselves or by what they were made of. */
  heldLotIds: string[];
}

export interface TreatmentSource {
  /** By client id, a fixed number of questions for any number of clients; a client never seen there is absent. */
  facts(read: Read, studioId: string, clientIds: readonly string[]): Promise<Map<string, TreatmentFacts>>;
  /** Locks what is recorded of a client's visits until the end of the transaction. */
  lock(transaction: Transaction, clientId: string): Promise<void>;
  /** Clears what is sealed under the client's key, where rows may be changed. What touched the client stays. */
  erase(transaction: Transaction, clientId: string): Promise<void>;
}

const nothing: TreatmentFacts = { lastRecordAt: null, openSessionIds: [], heldLotIds: [] };

/** The rooms to the right that keep records of clients register here at start-up (onModuleInit). */
@Injectable()
export class TreatmentRecords {
  private readonly sources: TreatmentSource[] = [];

  register(source: TreatmentSource): void {
    this.sources.push(source);
  }

  async facts(
    read: Read,
    studioId: string,
    clientIds: readonly string[],
  ): Promise<Map<string, TreatmentFacts>> {
    const found = new Map<string, TreatmentFacts>(clientIds.map((id) => [id, nothing]));
    for (const source of this.sources) {
      for (const [id, facts] of await source.facts(read, studioId, clientIds)) {
        found.set(id, together(found.get(id) ?? nothing, facts));
      }
    }
    return found;
  }

  async lock(transaction: Transaction, clientId: string): Promise<void> {
    for (const source of this.sources) await source.lock(transaction, clientId);
  }

  async erase(transaction: Transaction, clientId: string): Promise<void> {
    for (const source of this.sources) await source.erase(transaction, clientId);
  }
}

function together(one: TreatmentFacts, other: TreatmentFacts): TreatmentFacts {
  const instants = [one.lastRecordAt, other.lastRecordAt].filter((at) => at !== null).sort();
  return {
    lastRecordAt: instants.at(-1) ?? null,
    openSessionIds: [...one.openSessionIds, ...other.openSessionIds],
    heldLotIds: [...new Set([...one.heldLotIds, ...other.heldLotIds])],
  };
}
