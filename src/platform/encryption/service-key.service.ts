import { createHmac, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Database } from '../database/database.js';
import type { Transaction } from '../database/transaction.js';
import { MasterKeys, type WrappedKey } from './master-keys.js';
import { open, seal } from './sealing.js';
import { ServiceKeyRow } from './service-key.entity.js';

const place = 'service_key:service';

/** The key of what belongs to no studio: sign-in names are found by it, and secrets of links and tokens derived. */
@Injectable()
export class ServiceKey {
  private key: Buffer | undefined;

  constructor(
    private readonly database: Database,
    private readonly masterKeys: MasterKeys,
  ) {}

  /** Makes the key in the caller's transaction when there is none yet. */
  async ensure(transaction: Transaction): Promise<void> {
    const existing = await transaction.query('SELECT id FROM service_key');
    if (existing.length > 0) return;
    const masterKeyId = this.masterKeys.currentId;
    await transaction.insert(ServiceKeyRow, {
      id: 'service',
      masterKeyId,
      wrappedKey: seal(this.masterKeys.get(masterKeyId), randomBytes(32), place),
    });
  }

  /**
   * Wraps the key by the current master key, when an older one wraps it.
   * @returns how many keys that were, 0 or 1
   */
  async rewrap(transaction: Transaction): Promise<number> {
    const [row] = await transaction.query<WrappedKey>(
      `SELECT master_key_id AS "masterKeyId", wrapped_key AS "wrappedKey" FROM service_key WHERE master_key_id <> $1`,
      [this.masterKeys.currentId],
    );
    if (!row) return 0;
    await transaction.update(ServiceKeyRow, { id: 'service' }, this.masterKeys.rewrap(row, place));
    return 1;
  }

  async exists(): Promise<boolean> {
    return (await this.database.read('SELECT id FROM service_key')).length > 0;
  }

  /** HMAC-SHA-256 of a text for one purpose; the same text for another purpose gives another digest. */
  async digest(purpose: string, text: string): Promise<Buffer> {
    return createHmac('sha256', await this.known())
      .update(`${purpose}\n${text}`, 'utf8')
      .digest();
  }

  private async known(): Promise<Buffer> {
    if (this.key) return this.key;
    const [row] = await this.database.read<{ master_key_id: string; wrapped_key: string }>(
      'SELECT master_key_id, wrapped_key FROM service_key',
    );
    if (!row) throw new Error('The service has no key yet; it is made at the first start.');
    this.key = open(this.masterKeys.get(row.master_key_id), row.wrapped_key, place);
    return this.key;
  }
}
