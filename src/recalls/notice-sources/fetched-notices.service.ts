import { hash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Database, placeholders } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { type NoticeSource, withoutQuery } from '../../platform/notice-sources-setting.js';
import type { NoticeRecord } from '../notice-files/notice-record.js';
import { type FetchedNotice, FetchedNoticeFollowers } from './fetched-notice-followers.service.js';

const noticesAtATime = 200;

/**
 * Hands on what was fetched and is new. Guarantees: each notice reaches every follower at least once, in the order in
 * which it was published; it is only remembered as seen after all have taken it, so a fault or a kill between brings it
 * again instead of losing it. A notice that changed is a new one.
 */
@Injectable()
export class FetchedNotices {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly followers: FetchedNoticeFollowers,
  ) {}

  /** @returns how many were new */
  async take({ kind, url }: NoticeSource, records: readonly NoticeRecord[]): Promise<number> {
    const notices = new Map<string, FetchedNotice>();
    for (const record of records) {
      const digest = hash('sha256', JSON.stringify([kind, record.reference, record.text]));
      notices.set(digest, { kind, address: withoutQuery(url), record, digest });
    }
    let count = 0;
    const all = [...notices.values()];
    for (let at = 0; at < all.length; at += noticesAtATime) {
      const fresh = await this.unseen(all.slice(at, at + noticesAtATime));
      if (fresh.length === 0) continue;
      for (const follower of this.followers.all()) await follower.take(fresh);
      await this.remember(fresh);
      count += fresh.length;
    }
    return count;
  }

  private async unseen(notices: readonly FetchedNotice[]): Promise<FetchedNotice[]> {
    const digests = notices.map(({ digest }) => digest);
    const rows = await this.database.read<{ digest: string }>(
      `SELECT digest FROM fetched_notice WHERE digest IN (${placeholders(digests, 1)})`,
      digests,
    );
    const seen = new Set(rows.map(({ digest }) => digest));
    return notices.filter(({ digest }) => !seen.has(digest));
  }

  private async remember(notices: readonly FetchedNotice[]): Promise<void> {
    await this.transactions.aside(async (query, now) => {
      const rows = notices.map((_, index) => `($${index * 2 + 1}, $${index * 2 + 2})`).join(', ');
      await query(
        `INSERT INTO fetched_notice (digest, seen_at) VALUES ${rows} ON CONFLICT (digest) DO NOTHING`,
        notices.flatMap(({ digest }) => [digest, now]),
      );
    });
  }
}
