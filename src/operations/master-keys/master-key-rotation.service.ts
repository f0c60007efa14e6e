import { statSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';
import { MasterKeys } from '../../platform/encryption/master-keys.js';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';
import { StudioKeys } from '../../platform/encryption/studio-keys.service.js';
import { OperatorError } from '../../platform/operator-error.js';
import { tablesWithWrappedKeys } from '../backup/record-facts.service.js';

export interface Rotation {
  currentId: string;
  /** False when this finished a rotation that was broken off, with the key that one had made. */
  isNew: boolean;
  /** How many keys were wrapped anew. */
  rewrapped: number;
  /** Older keys that are still in the file. */
  olderIds: string[];
}

/** A write of the service waits for a whole batch: each takes some milliseconds. */
const keysPerBatch = 100;
/** Who waits for SQLite's lock looks for it every tenth of a second at last; without a pause it might never get in. */
const pauseMilliseconds = 120;
/** How long a write that took the old key for the current one may take until its row is there. */
const settleMilliseconds = 10_000;

/**
 * Replaces the master key: a new one comes into the file, and every key that an older one wraps is wrapped by it.
 * Guarantees: the new key is on the disk before anything is wrapped by it; a key that still wraps anything is never
 * dropped; broken off at any point, everything stays readable and the next call carries on; a service may run meanwhile.
 */
@Injectable()
export class MasterKeyRotation {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly masterKeys: MasterKeys,
    private readonly dataKeys: DataKeys,
    private readonly studioKeys: StudioKeys,
    private readonly serviceKey: ServiceKey,
    private readonly studioActors: StudioActors,
  ) {}

  async rotate(): Promise<Rotation> {
    const actors = await this.actors();
    const isNew = await this.alone(async (read) => {
      if ((await this.wrappedByOthers(read)) > 0) return false;
      this.masterKeys.addCurrent();
      return true;
    });
    const rewrapped = await this.rewrapAll(actors);
    const { currentId, ids } = this.masterKeys;
    return { currentId, isNew, rewrapped, olderIds: ids.filter((id) => id !== currentId) };
  }

  /**
   * Drops every key but the current one from the file, having wrapped anew what the others still wrapped.
   * @returns the ids of those dropped
   */
  async dropOld(): Promise<string[]> {
    const actors = await this.actors();
    await this.rewrapAll(actors);
    const age = Date.now() - statSync(this.masterKeys.file).mtimeMs;
    await wait(Math.max(0, settleMilliseconds - age));
    await this.rewrapAll(actors);
    return this.alone(async (read) => {
      const left = await this.wrappedByOthers(read);
      if (left === 0) return this.masterKeys.dropOthers();
      throw new OperatorError(
        `${left} keys are still wrapped by an older master key, so none was dropped. Run the command again; if that does not help, another process writes to this database with another key file.`,
      );
    });
  }

  private async rewrapAll(actors: readonly Actor[]): Promise<number> {
    let rewrapped = 0;
    for (const actor of actors) {
      // What belongs to no studio is told of in the chain of the first.
      while (await this.hasOlder(actor.studioId)) {
        rewrapped += await this.rewrapBatch(actor);
        await wait(pauseMilliseconds);
      }
    }
    return rewrapped;
  }

  private async hasOlder(studioId: string): Promise<boolean> {
    const found = await this.database.read(
      `SELECT 1 AS found FROM service_key WHERE master_key_id <> $2
       UNION ALL SELECT 1 FROM studio_key WHERE studio_id = $1 AND master_key_id <> $2
       UNION ALL SELECT 1 FROM data_key WHERE studio_id = $1 AND master_key_id <> $2 AND wrapped_key IS NOT NULL
       LIMIT 1`,
      [studioId, this.masterKeys.currentId],
    );
    return found.length > 0;
  }

  private rewrapBatch(actor: Actor): Promise<number> {
    const masterKeyId = this.masterKeys.currentId;
    return this.transactions.write(
      actor,
      {
        id: uuidv7(),
        action: 'master-keys.rewrap',
        subject: { kind: 'studio', id: actor.studioId },
        content: { masterKeyId },
      },
      async (transaction) => {
        const keys =
          (await this.serviceKey.rewrap(transaction)) +
          (await this.studioKeys.rewrap(transaction)) +
          (await this.dataKeys.rewrap(transaction, keysPerBatch));
        transaction.note({ masterKeyId, keys });
        return keys;
      },
    );
  }

  /** Runs while nobody else writes a wrapped key or rotates. */
  private alone<Result>(work: (read: Read) => Promise<Result>): Promise<Result> {
    return this.transactions.aside(async (read) => {
      if (this.database.engine === 'postgres') {
        const tables = (await this.tables(read)).map((table) => `"${table}"`).join(', ');
        await read(`LOCK TABLE ${tables} IN SHARE ROW EXCLUSIVE MODE`);
      }
      return work(read);
    });
  }

  /** How many keys, in whatever table, are not wrapped by the current master key. */
  private async wrappedByOthers(read: Read): Promise<number> {
    const { currentId } = this.masterKeys;
    let count = 0;
    for (const table of await this.tables(read)) {
      const [found] = await read<{ others: number }>(
        `SELECT count(*) AS others FROM "${table}" WHERE wrapped_key IS NOT NULL AND master_key_id <> $1`,
        [currentId],
      );
      count += found?.others ?? 0;
    }
    return count;
  }

  private tables(read: Read): Promise<string[]> {
    return tablesWithWrappedKeys(this.database.engine, (sql) => read(sql));
  }

  private async actors(): Promise<Actor[]> {
    const actors = await this.studioActors.all();
    if (actors.length > 0) return actors.map((actor) => ({ ...actor, via: 'cli' }));
    throw new OperatorError(
      'There is no studio yet, so the master key protects nothing. Start the service once.',
    );
  }
}
