import { randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { Database, placeholders } from '../database/database.js';
import type { Transaction } from '../database/transaction.js';
import { DataKey } from './data-key.entity.js';
import { MasterKeys, type WrappedKey } from './master-keys.js';
import { open, seal } from './sealing.js';

/** A data key in the clear, in memory only: seals and opens the fields of one person. */
export class FieldSealer {
  constructor(
    readonly dataKeyId: string,
    private readonly key: Buffer,
  ) {}

  /** @param place table, column and row: `client.name:<id>` */
  seal(plain: string | null, place: string): string | null {
    return plain === null ? null : seal(this.key, plain, place);
  }

  open(sealed: string | null, place: string): string | null {
    return sealed === null ? null : open(this.key, sealed, place).toString('utf8');
  }
}

const rememberedKeys = 5_000;
/** Another process may destroy a key; here it is then forgotten within this time. */
const rememberedMilliseconds = 60_000;

interface RememberedKey {
  sealer: FieldSealer;
  until: number;
}

/** Makes, finds and unwraps data keys. */
@Injectable()
export class DataKeys {
  private readonly known = new Map<string, RememberedKey>();
  /** Until when a key that was destroyed is not remembered again: a read may have found it just before. */
  private readonly forgotten = new Map<string, number>();

  constructor(
    private readonly database: Database,
    private readonly masterKeys: MasterKeys,
  ) {}

  /** Makes a data key in the caller's transaction. */
  async make(transaction: Transaction): Promise<FieldSealer> {
    const id = uuidv7();
    const key = randomBytes(32);
    const masterKeyId = this.masterKeys.currentId;
    await transaction.insert(DataKey, {
      studioId: transaction.studioId,
      id,
      masterKeyId,
      wrappedKey: seal(this.masterKeys.get(masterKeyId), key, `data_key:${id}`),
      createdAt: transaction.recordedAt,
      destroyedAt: null,
    });
    return new FieldSealer(id, key);
  }

  /** The sealers of many data keys in one look-up; a destroyed key is absent from the answer. */
  async sealers(studioId: string, ids: readonly string[]): Promise<Map<string, FieldSealer>> {
    const found = new Map<string, FieldSealer>();
    const now = performance.now();
    const wanted = [...new Set(ids)].filter((id) => {
      const known = this.known.get(`${studioId}:${id}`);
      if (known === undefined || known.until <= now) return true;
      found.set(id, known.sealer);
      return false;
    });
    for (let start = 0; start < wanted.length; start += 500) {
      const batch = wanted.slice(start, start + 500);
      const rows = await this.database.read<{
        id: string;
        master_key_id: string;
        wrapped_key: string | null;
      }>(
        `SELECT id, master_key_id, wrapped_key FROM data_key WHERE studio_id = $1 AND id IN (${placeholders(batch)})`,
        [studioId, ...batch],
      );
      for (const row of rows) {
        if (row.wrapped_key === null) continue;
        const key = open(this.masterKeys.get(row.master_key_id), row.wrapped_key, `data_key:${row.id}`);
        const sealer = new FieldSealer(row.id, key);
        this.remember(`${studioId}:${row.id}`, sealer, now);
        found.set(row.id, sealer);
      }
    }
    return found;
  }

  async sealer(studioId: string, id: string): Promise<FieldSealer | undefined> {
    return (await this.sealers(studioId, [id])).get(id);
  }

  /**
   * Wraps keys of the studio by the current master key that an older one wraps.
   * @param most how many at most
   * @returns how many
   */
  async rewrap(transaction: Transaction, most: number): Promise<number> {
    const { studioId } = transaction;
    const lock = transaction.engine === 'postgres' ? ' FOR UPDATE' : '';
    const rows = await transaction.query<WrappedKey & { id: string }>(
      `SELECT id, master_key_id AS "masterKeyId", wrapped_key AS "wrappedKey" FROM data_key
       WHERE studio_id = $1 AND wrapped_key IS NOT NULL AND master_key_id <> $2
       ORDER BY id LIMIT ${most}${lock}`,
      [studioId, this.masterKeys.currentId],
    );
    for (const { id, ...wrapped } of rows) {
      const rewrapped = this.masterKeys.rewrap(wrapped, `data_key:${id}`);
      await transaction.update(DataKey, { studioId, id }, rewrapped);
    }
    return rows.length;
  }

  /** Forgets a key that was destroyed. */
  forget(studioId: string, id: string): void {
    const now = performance.now();
    for (const [each, until] of this.forgotten) if (until <= now) this.forgotten.delete(each);
    this.forgotten.set(`${studioId}:${id}`, now + rememberedMilliseconds);
    this.known.delete(`${studioId}:${id}`);
  }

  private remember(place: string, sealer: FieldSealer, now: number): void {
    if (this.forgotten.has(place)) return;
    if (this.known.size >= rememberedKeys) this.known.clear();
    this.known.set(place, { sealer, until: now + rememberedMilliseconds });
  }
}
