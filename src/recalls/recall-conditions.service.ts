import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../alerts/alerts.service.js';
import { ConditionEvaluators } from '../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../alerts/open-condition.js';
import type { Transaction } from '../platform/database/transaction.js';

import { standingOfLot, surestGrade } from './recall-lots.query.js';

const recallOpen = 'recall open';
const noticeFound = 'recall notice found';

interface OpenRecallRow {
  id: string;
  title: string;
  scopeNumber: number;
  affectedLots: number;
  undecidedLots: number;
}

/** Alerts of recalls that are open, and of published notices that meet something here and wait for an answer. */
@Injectable()
export class RecallConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'recalls',
      kinds: [recallOpen, noticeFound],
      evaluate: async (transaction) => [
        ...(await this.openRecalls(transaction)),
        ...(await this.waitingNotices(transaction)),
      ],
    });
  }

  /** Opens, refreshes or closes the alert of one recall. */
  async reevaluate(transaction: Transaction, recallId: string): Promise<void> {
    await this.alerts.reconcile(
      transaction,
      { kinds: [recallOpen], subjects: [{ kind: 'recall', id: recallId }] },
      await this.openRecalls(transaction, recallId),
    );
  }

  /** The same of notices. */
  async reevaluateNotice(transaction: Transaction, noticeId: string): Promise<void> {
    await this.alerts.reconcile(
      transaction,
      { kinds: [noticeFound], subjects: [{ kind: 'recall notice', id: noticeId }] },
      await this.waitingNotices(transaction, noticeId),
    );
  }

  private async openRecalls(transaction: Transaction, recallId?: string): Promise<OpenCondition[]> {
    const rows = await transaction.query<OpenRecallRow>(
      `SELECT recall.id, recall.title, latest.number AS "scopeNumber",
         (SELECT count(*) FROM recall_lot
          WHERE recall_lot.studio_id = $1 AND recall_lot.recall_id = recall.id
            AND recall_lot.scope_number = latest.number AND ${surestGrade}
            AND 'affected' = ${standingOfLot}) AS "affectedLots",
         (SELECT count(*) FROM recall_lot
          WHERE recall_lot.studio_id = $1 AND recall_lot.recall_id = recall.id
            AND recall_lot.scope_number = latest.number AND ${surestGrade}
            AND 'undecided' = ${standingOfLot}) AS "undecidedLots"
       FROM recall CROSS JOIN (
         SELECT recall_id, max(number) AS number FROM recall_scope WHERE studio_id = $1 GROUP BY recall_id) AS latest
       WHERE recall.studio_id = $1 AND recall.state = 'open' AND recall.kind = 'recall'
         AND latest.recall_id = recall.id ${recallId === undefined ? '' : 'AND recall.id = $2'}
       ORDER BY recall.opened_at, recall.id`,
      recallId === undefined ? [transaction.studioId] : [transaction.studioId, recallId],
    );
    return rows.map(({ id, title, scopeNumber, affectedLots, undecidedLots }) => ({
      kind: recallOpen,
      subjectKind: 'recall',
      subjectId: id,
      severity: 'urgent',
      facts: { recall: title, affectedLots, undecidedLots, scopeNumber },
      // Whoever saw to it before it was amended saw to something else.
      toldAnew: 'scopeNumber',
    }));
  }

  private async waitingNotices(transaction: Transaction, noticeId?: string): Promise<OpenCondition[]> {
    const rows = await transaction.query<{ id: string; reference: string | null }>(
      `SELECT id, reference FROM recall_notice
       WHERE studio_id = $1 AND source = 'fetched' ${noticeId === undefined ? '' : 'AND id = $2'}
         AND NOT EXISTS (SELECT 1 FROM recall_notice_dismissal AS dismissed
           WHERE dismissed.studio_id = $1 AND dismissed.notice_id = recall_notice.id)
         AND NOT EXISTS (SELECT 1 FROM recall_scope
           WHERE recall_scope.studio_id = $1 AND recall_scope.notice_id = recall_notice.id)
       ORDER BY recorded_at, id`,
      noticeId === undefined ? [transaction.studioId] : [transaction.studioId, noticeId],
    );
    return rows.map(({ id, reference }) => ({
      kind: noticeFound,
      subjectKind: 'recall notice',
      subjectId: id,
      severity: 'urgent',
      facts: { reference },
    }));
  }
}
