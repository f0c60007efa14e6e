import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';

/** Uses within so many milliseconds count as one. */
const usedEvery = 60_000;

/** When tokens, tablets and badges were last used. It is no record, but tells what may be revoked. */
@Injectable()
export class CredentialUses {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** @param lastUsedAt when the caller knows it already */
  async note(id: string, lastUsedAt?: string | null): Promise<void> {
    const last = lastUsedAt === undefined ? (await this.lastOf([id])).get(id) : lastUsedAt;
    if (last != null && Date.parse(this.clock.now()) - Date.parse(last) <= usedEvery) return;
    await this.transactions.aside((query, now) =>
      query(
        `INSERT INTO credential_use (id, last_used_at, counter) VALUES ($1, $2, 0)
         ON CONFLICT (id) DO UPDATE SET last_used_at = $2`,
        [id, now],
      ),
    );
  }

  /** By id; what was never used is absent. */
  async lastOf(ids: readonly string[]): Promise<Map<string, string>> {
    if (ids.length === 0) return new Map();
    const rows = await this.database.read<{ id: string; last_used_at: string }>(
      `SELECT id, last_used_at FROM credential_use WHERE id IN (${placeholders(ids, 1)})`,
      ids,
    );
    return new Map(rows.map(({ id, last_used_at }) => [id, last_used_at]));
  }
}
