import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Transactions } from '../platform/database/transactions.js';
import { type AccessKind, ClientAccess } from './client-access.entity.js';

/** Looking at the same again within this time is the same look: screens ask again by themselves. */
const sameLookMilliseconds = 60_000;
const rememberedLooks = 20_000;
/** What one transaction writes at most. */
const mostInABatch = 2_000;

interface Batch {
  accesses: Map<string, ClientAccess>;
  written: Promise<void>;
}

/**
 * Notes who was shown something of a client. Guarantees: nothing is shown before it is noted for good, so that no crash
 * loses what somebody saw; what cannot be noted is not shown. One transaction notes all that was asked for while the one
 * before it was written, so that readers wait for one write at most, however many they are, and a list of many clients is
 * one audit entry.
 */
@Injectable()
export class ClientAccessLog {
  private readonly waiting = new Map<string, Batch>();
  private readonly writing = new Map<string, Promise<void>>();
  private readonly noted = new Map<string, number>();

  constructor(
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** Call outside any transaction, and wait for it before anything is answered. */
  async note(actor: Actor, what: AccessKind, clientIds: readonly string[]): Promise<void> {
    const { studioId, personId } = actor;
    const accessedAt = this.clock.now();
    const fresh = [...new Set(clientIds)]
      .map((clientId) => ({ key: `${studioId} ${personId} ${what} ${clientId}`, clientId }))
      .filter(({ key }) => !this.isSameLook(key, accessedAt));
    if (fresh.length === 0) return;
    const batch = this.batchOf(actor);
    for (const { key, clientId } of fresh) {
      if (batch.accesses.has(key)) continue;
      batch.accesses.set(key, { studioId, id: uuidv7(), clientId, personId, what, accessedAt });
    }
    await batch.written;
  }

  private isSameLook(key: string, now: string): boolean {
    const last = this.noted.get(key);
    return last !== undefined && Date.parse(now) - last < sameLookMilliseconds;
  }

  /** The batch that is still open: it begins to be written once the one before it is. */
  private batchOf(actor: Actor): Batch {
    const { studioId } = actor;
    const open = this.waiting.get(studioId);
    if (open && open.accesses.size < mostInABatch) return open;
    const accesses = new Map<string, ClientAccess>();
    const before = this.writing.get(studioId) ?? Promise.resolve();
    const batch: Batch = {
      accesses,
      written: before
        .catch(() => undefined)
        .then(() => {
          if (this.waiting.get(studioId) === batch) this.waiting.delete(studioId);
          return this.write(actor, accesses);
        }),
    };
    this.waiting.set(studioId, batch);
    this.writing.set(studioId, batch.written);
    return batch;
  }

  private async write(actor: Actor, accesses: ReadonlyMap<string, ClientAccess>): Promise<void> {
    const { studioId } = actor;
    // In one order for all, as their clients are touched.
    const rows = [...accesses.values()].sort((one, other) => (one.clientId < other.clientId ? -1 : 1));
    await this.transactions.write(
      // Several people's accesses share the entry: who they were is in the rows.
      { ...actor, personId: null, via: 'system' },
      { id: null, action: 'clients.access', subject: { kind: 'studio', id: studioId }, content: null },
      (transaction) => transaction.insert(ClientAccess, rows),
    );
    if (this.noted.size + accesses.size > rememberedLooks) this.noted.clear();
    for (const [key, { accessedAt }] of accesses) this.noted.set(key, Date.parse(accessedAt));
  }
}
