import { createHmac, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Database } from '../database/database.js';
import type { Transaction } from '../database/transaction.js';
import { notFound } from '../problem.js';
import { StudioKey } from './data-key.entity.js';
import { MasterKeys, type WrappedKey } from './master-keys.js';
import { open, seal } from './sealing.js';

/** The keys under which a studio's sealed fields can be searched for an exact value. */
@Injectable()
export class StudioKeys {
  private readonly known = new Map<string, Buffer>();

  constructor(
    private readonly database: Database,
    private readonly masterKeys: MasterKeys,
  ) {}

  /** A fresh wrapped key for a new studio. */
  make(studioId: string): StudioKey {
    const masterKeyId = this.masterKeys.currentId;
    return {
      studioId,
      masterKeyId,
      wrappedKey: seal(this.masterKeys.get(masterKeyId), randomBytes(32), `studio_key:${studioId}`),
    };
  }

  /** @throws Problem not-found when there is no such studio */
  async searchKey(studioId: string): Promise<Buffer> {
    const known = this.known.get(studioId);
    if (known) return known;
    const [row] = await this.database.read<{ master_key_id: string; wrapped_key: string }>(
      'SELECT master_key_id, wrapped_key FROM studio_key WHERE studio_id = $1',
      [studioId],
    );
    if (!row) throw notFound('studio', studioId);
    const key = open(this.masterKeys.get(row.master_key_id), row.wrapped_key, `studio_key:${studioId}`);
    this.known.set(studioId, key);
    return key;
  }

  /**
   * Wraps the studio's key by the current master key, when an older one wraps it.
   * @returns how many keys that were, 0 or 1
   */
  async rewrap(transaction: Transaction): Promise<number> {
    const { studioId } = transaction;
    const [row] = await transaction.query<WrappedKey>(
      `SELECT master_key_id AS "masterKeyId", wrapped_key AS "wrappedKey" FROM studio_key
       WHERE studio_id = $1 AND master_key_id <> $2`,
      [studioId, this.masterKeys.currentId],
    );
    if (!row) return 0;
    await transaction.update(StudioKey, { studioId }, this.masterKeys.rewrap(row, `studio_key:${studioId}`));
    return 1;
  }

  /** The keyed hash of a value, folded so that case, accents' encoding and outer or double spaces do not matter. */
  async searchHash(studioId: string, value: string): Promise<string> {
    const folded = value.normalize('NFKC').trim().replace(/\s+/g, ' ').toLocaleLowerCase('en');
    return createHmac('sha256', await this.searchKey(studioId))
      .update(folded, 'utf8')
      .digest('hex');
  }
}
