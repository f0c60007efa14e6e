import { hash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../platform/actor.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import type { PageDto } from '../platform/request.dto.js';
import { RecallConditions } from './recall-conditions.service.js';
import { RecallNotice, RecallNoticeDismissal } from './recall-notice.entity.js';
import type { DismissNoticeDto, StatedRecallDto } from './recalls.dto.js';
import type {
  NoticeDismissalView,
  RecallNoticeView,
  WaitingNoticePageView,
  WaitingNoticeView,
} from './recalls.views.js';
import type { NoticeSource } from './vocabulary.js';

/** A notice that is to be kept. */
export interface NoticeToKeep {
  source: NoticeSource;
  reference: string | null;
  text: string;
  occurredAt: string;
}

/** Kept as it came; what a database cannot hold is shown as the sign for an unknown character. */
export function keepable(text: string): string {
  // Halves of characters become that sign too.
  return Buffer.from(text, 'utf8').toString('utf8').replaceAll('\0', '\uFFFD');
}

/** By which the same notice is known again. */
export function digestOfNotice(text: string): string {
  return hash('sha256', keepable(text));
}

/** The notices on record: those that a recall was opened by, and published ones that wait for an answer. */
@Injectable()
export class RecallNotices {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly conditions: RecallConditions,
  ) {}

  /** Keeps a notice in the caller's transaction. @returns its id */
  async keep(transaction: Transaction, notice: NoticeToKeep, id = uuidv7()): Promise<string> {
    const { studioId, recordedAt, actor } = transaction;
    await transaction.insert(RecallNotice, {
      studioId,
      id,
      source: notice.source,
      reference: notice.reference,
      text: keepable(notice.text),
      textDigest: digestOfNotice(notice.text),
      occurredAt: notice.occurredAt,
      recordedAt,
      personId: actor.personId,
      via: actor.via,
    });
    return id;
  }

  /**
   * The notice that a scope comes from: kept now, or on record already.
   * @returns its id; null: a scope was entered without a notice
   * @throws Problem not-found, invalid-fields when both are given
   */
  async ofScope(
    transaction: Transaction,
    { notice, noticeId }: StatedRecallDto,
    at: string,
  ): Promise<string | null> {
    if (notice !== undefined && noticeId !== undefined) {
      throw invalidField('noticeId', 'Give the notice or the id of one on record, not both.');
    }
    if (noticeId !== undefined) {
      const key = { studioId: transaction.studioId, id: noticeId };
      if (!(await transaction.manager.existsBy(RecallNotice, key))) throw notFound('recall notice', noticeId);
      return noticeId;
    }
    if (notice === undefined) return null;
    const { source, reference = null, text } = notice;
    return this.keep(transaction, { source, reference, text, occurredAt: at });
  }

  /** @throws Problem not-found */
  async show({ studioId }: Actor, noticeId: string): Promise<RecallNoticeView> {
    const [row] = await this.database.read<Omit<RecallNoticeView, 'dismissal'>>(
      `SELECT id, source, reference, text, occurred_at AS "occurredAt", person_id AS "personId"
       FROM recall_notice WHERE studio_id = $1 AND id = $2`,
      [studioId, noticeId],
    );
    if (!row) throw notFound('recall notice', noticeId);
    const [dismissal = null] = await this.database.read<NoticeDismissalView>(
      `SELECT reason, occurred_at AS "occurredAt", person_id AS "personId" FROM recall_notice_dismissal
       WHERE studio_id = $1 AND notice_id = $2`,
      [studioId, noticeId],
    );
    return { ...row, dismissal };
  }

  /** Published notices that met something here and that nobody has answered yet, the latest first. */
  async waiting(actor: Actor, { limit = defaultPageSize, after }: PageDto): Promise<WaitingNoticePageView> {
    await refuseUnknownStart(this.database.read, 'recall_notice', actor.studioId, after);
    const parameters: SqlValue[] = after === undefined ? [actor.studioId] : [actor.studioId, after];
    const rows = await this.database.read<WaitingNoticeView>(
      `SELECT id, reference, substr(text, 1, 300) AS beginning, occurred_at AS "occurredAt" FROM recall_notice
       WHERE studio_id = $1 AND source = 'fetched'
         AND NOT EXISTS (SELECT 1 FROM recall_notice_dismissal AS dismissed
           WHERE dismissed.studio_id = $1 AND dismissed.notice_id = recall_notice.id)
         AND NOT EXISTS (SELECT 1 FROM recall_scope
           WHERE recall_scope.studio_id = $1 AND recall_scope.notice_id = recall_notice.id)
         ${
           after === undefined
             ? ''
             : `AND (recorded_at, id) < (SELECT recorded_at, id FROM recall_notice AS last
                  WHERE last.studio_id = $1 AND last.id = $2)`
         }
       ORDER BY recorded_at DESC, id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown, next };
  }

  /** Notes that a notice asks for nothing here. */
  async dismiss(actor: Actor, noticeId: string, dto: DismissNoticeDto): Promise<{ id: string }> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'recalls.dismiss-notice',
        subject: { kind: 'recall notice', id: noticeId },
        content: { ...dto, noticeId },
      },
      async (transaction) => {
        const { studioId, recordedAt } = transaction;
        await transaction.lockStudio();
        const key = { studioId, id: noticeId };
        if (!(await transaction.manager.existsBy(RecallNotice, key)))
          throw notFound('recall notice', noticeId);
        if (await transaction.manager.existsBy(RecallNoticeDismissal, { studioId, noticeId })) {
          throw new Problem(409, 'wrong-state', 'This notice was dismissed already.');
        }
        await transaction.insert(RecallNoticeDismissal, {
          studioId,
          noticeId,
          reason: dto.reason,
          occurredAt: occurredAt(dto.occurredAt, recordedAt),
          recordedAt,
          personId: actor.personId,
          via: actor.via,
        });
        await this.conditions.reevaluateNotice(transaction, noticeId);
        return { id: noticeId };
      },
    );
  }
}
