import { Injectable, type OnModuleInit } from '@nestjs/common';
import { localDay } from '../identity/local-day.js';
import { StudioActors } from '../identity/studio-actors.service.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import { Transactions } from '../platform/database/transactions.js';
import type { ProductFacts } from '../stock/lot-matching/lot-facts.js';
import { LotsEverHeld } from '../stock/lot-matching/lots-ever-held.service.js';
import { needsReading, proposalOf } from './notice-files/notice-proposal.js';
import { readNotice } from './notice-reading/notice-reading.js';
import {
  type FetchedNotice,
  FetchedNoticeFollowers,
} from './notice-sources/fetched-notice-followers.service.js';
import { RecallConditions } from './recall-conditions.service.js';
import { digestOfNotice, RecallNotices } from './recall-notices.service.js';

/**
 * Published notices that were fetched and that mean, or may mean, a lot that a studio ever held: kept there with an urgent
 * alert, until a recall is opened by them or somebody dismisses them. What means nothing here is not kept.
 */
@Injectable()
export class NoticeInbox implements OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly studioActors: StudioActors,
    private readonly lots: LotsEverHeld,
    private readonly followers: FetchedNoticeFollowers,
    private readonly notices: RecallNotices,
    private readonly conditions: RecallConditions,
  ) {}

  onModuleInit(): void {
    this.followers.register({ name: 'recalls', take: (notices) => this.take(notices) });
  }

  private async take(notices: readonly FetchedNotice[]): Promise<void> {
    const chains = new Map<string, Actor[]>();
    for (const studio of await this.studioActors.all()) {
      chains.set(studio.chainId, [...(chains.get(studio.chainId) ?? []), studio]);
    }
    for (const [chainId, studios] of chains) {
      const register = await this.lots.register(this.database.read, chainId);
      for (const notice of notices) await this.takeInChain(notice, studios, register);
    }
  }

  private async takeInChain(
    { record }: FetchedNotice,
    studios: readonly Actor[],
    register: ReadonlyMap<string, ProductFacts>,
  ): Promise<void> {
    const today = localDay(this.clock.now(), studios[0]?.timeZone ?? 'UTC');
    const { scope, reference } = proposalOf(
      record,
      needsReading(record) ? readNotice(record.text, { today }) : null,
    );
    const { read } = this.database;
    const prepared = this.lots.prepared(register, scope);
    for (const studio of studios) {
      const met = await this.lots.gradedIn(read, studio.studioId, prepared);
      if (met.length > 0) await this.keep(studio, { reference, text: record.text });
    }
  }

  /** Once, however often it comes. */
  private async keep(studio: Actor, notice: { reference: string | null; text: string }): Promise<void> {
    const digest = digestOfNotice(notice.text);
    const known = await this.database.read(
      `SELECT id FROM recall_notice WHERE studio_id = $1 AND text_digest = $2 AND source = 'fetched'`,
      [studio.studioId, digest],
    );
    if (known.length > 0) return;
    const subject = { kind: 'studio', id: studio.studioId };
    await this.transactions.write(
      studio,
      { id: null, action: 'recalls.keep-notice', subject, content: null },
      async (transaction) => {
        const occurredAt = transaction.recordedAt;
        const id = await this.notices.keep(transaction, { source: 'fetched', ...notice, occurredAt });
        await this.conditions.reevaluateNotice(transaction, id);
      },
    );
  }
}
