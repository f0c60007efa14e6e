import { createHmac, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Database } from '../database/database.js';
import { notFound } from '../problem.js';
import type { StudioKey } from './data-key.entity.js';
import { MasterKeys } from './master-keys.js';
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

  /** The keyed hash of a value, folded so that case, accents' encoding and outer or double spaces do not matter. */
  async searchHash(studioId: string, value: string): Promise<string> {
    const folded = value.normalize('NFKC').trim().replace(/\s+/g, ' ').toLocaleLowerCase('en');
    return createHmac('sha256', await this.searchKey(studioId))
      .update(folded, 'utf8')
      .digest('hex');
  }
}
