import { hash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Database, placeholders, type Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { type NoticeSource, withoutQuery } from '../../platform/notice-sources-setting.js';
import type { SourceState } from './source-state.js';

/** By what a source is known: its address may hold a key, which is nothing for a database. */
export function sourceId({ kind, url }: NoticeSource): string {
  return hash('sha256', `${kind}\n${url}`).slice(0, 32);
}

/** How it stands with the sources, from one start of the service to the next. */
@Injectable()
export class SourceStates {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
  ) {}

  /** By id; a source that was never asked has none. */
  async of(
    sources: readonly NoticeSource[],
    read: Read = this.database.read,
  ): Promise<Map<string, SourceState>> {
    if (sources.length === 0) return new Map();
    const ids = sources.map(sourceId);
    const rows = await read<SourceState & { id: string }>(
      `SELECT id, etag, last_modified AS "lastModified", tried_at AS "triedAt", read_at AS "readAt", failures,
         last_error AS "lastError", next_attempt_at AS "nextAttemptAt"
       FROM notice_source_state WHERE id IN (${placeholders(ids, 1)})`,
      ids,
    );
    return new Map(rows.map(({ id, ...state }) => [id, state]));
  }

  async keep(source: NoticeSource, state: SourceState): Promise<void> {
    const { etag, lastModified, triedAt, readAt, failures, lastError, nextAttemptAt } = state;
    await this.transactions.aside((query) =>
      query(
        `INSERT INTO notice_source_state
           (id, kind, address, etag, last_modified, tried_at, read_at, failures, last_error, next_attempt_at)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)
         ON CONFLICT (id) DO UPDATE SET etag = excluded.etag, last_modified = excluded.last_modified,
           tried_at = excluded.tried_at, read_at = excluded.read_at, failures = excluded.failures,
           last_error = excluded.last_error, next_attempt_at = excluded.next_attempt_at`,
        [
          sourceId(source),
          source.kind,
          withoutQuery(source.url),
          etag,
          lastModified,
          triedAt,
          readAt,
          failures,
          lastError,
          nextAttemptAt,
        ],
      ),
    );
  }
}
