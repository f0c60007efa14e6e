import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Transaction } from '../platform/database/transaction.js';
import { Alert } from './alert.entity.js';
import {
  type AlertSeverity,
  alertChanges,
  type ConditionScope,
  type OpenAlert,
  type OpenCondition,
} from './open-condition.js';
import { OutboxRow } from './outbox-row.entity.js';

/** Where every alert is delivered. */
const channel = 'log';
const maximumSubjectsPerQuery = 500;

/** What a reconciliation did. */
export interface ReconciledAlerts {
  opened: number;
  refreshed: number;
  closed: number;
}

interface AlertRow {
  id: string;
  kind: string;
  subject_kind: string;
  subject_id: string;
  severity: AlertSeverity;
  facts: string;
}

/**
 * Opens and closes alerts in the caller's transaction. Guarantees: an alert and the outbox row that promises its
 * delivery commit with their cause or not at all; one condition is open once per kind and subject.
 */
@Injectable()
export class Alerts {
  /**
   * Lets the conditions of a studio be judged by one transaction at a time: two that each take a last piece must not
   * both see the other's as still there. Call it before loading what conditions are derived from; a reconciliation
   * calls it as well. SQLite needs no lock: its transactions queue.
   */
  async judgeAlone(transaction: Transaction): Promise<void> {
    if (transaction.engine === 'sqlite') return;
    await transaction.query('SELECT id FROM studio WHERE id = $1 FOR NO KEY UPDATE', [transaction.studioId]);
  }

  /**
   * Makes the alerts in scope agree with what stands: opens what is new, closes what no longer stands, refreshes the
   * severity and facts of what still stands without announcing it again.
   * @param standing all that stands in scope; what lies outside it is ignored
   */
  async reconcile(
    transaction: Transaction,
    scope: ConditionScope,
    standing: readonly OpenCondition[],
  ): Promise<ReconciledAlerts> {
    await this.judgeAlone(transaction);
    const { open, refresh, close } = alertChanges(await this.openIn(transaction, scope), standing, scope);
    const { studioId, recordedAt } = transaction;
    for (const { id, severity, facts } of refresh) {
      await transaction.update(Alert, { studioId, id }, { severity, facts });
    }
    for (const { id } of close) await transaction.update(Alert, { studioId, id }, { closedAt: recordedAt });
    const opened = open.map((condition) => newAlert(studioId, condition, recordedAt));
    if (opened.length > 0) await transaction.insert(Alert, opened);
    const deliveries = [
      ...close.map(({ id }) => newDelivery(studioId, id, 'closed', recordedAt)),
      ...opened.map(({ id }) => newDelivery(studioId, id, 'opened', recordedAt)),
    ];
    if (deliveries.length > 0) await transaction.insert(OutboxRow, deliveries);
    return { opened: opened.length, refreshed: refresh.length, closed: close.length };
  }

  /**
   * Opens an alert for something that happened once, unless one of that kind is open for the subject already. It is
   * closed by a reconciliation of its kind, when its room finds it settled.
   */
  async raise(transaction: Transaction, condition: OpenCondition): Promise<void> {
    const { kind, subjectKind, subjectId } = condition;
    await this.judgeAlone(transaction);
    const subjects = [{ kind: subjectKind, id: subjectId }];
    if ((await this.openIn(transaction, { kinds: [kind], subjects })).length > 0) return;
    const alert = newAlert(transaction.studioId, condition, transaction.recordedAt);
    await transaction.insert(Alert, alert);
    await transaction.insert(
      OutboxRow,
      newDelivery(transaction.studioId, alert.id, 'opened', transaction.recordedAt),
    );
  }

  private async openIn(transaction: Transaction, { kinds, subjects }: ConditionScope): Promise<OpenAlert[]> {
    if (kinds.length === 0) return [];
    const list = (values: readonly unknown[], first: number) =>
      values.map((_, index) => `$${index + first}`).join(', ');
    const head = `SELECT id, kind, subject_kind, subject_id, severity, facts FROM alert
      WHERE studio_id = $1 AND closed_at IS NULL AND kind IN (${list(kinds, 2)})`;
    const parameters = [transaction.studioId, ...kinds];
    if (subjects === 'all') {
      return (await transaction.query<AlertRow>(`${head} ORDER BY opened_at, id`, parameters)).map(openAlert);
    }
    // All columns of the index of open alerts are named and no order is asked for, so that closed ones are never walked.
    const subjectKinds = [...new Set(subjects.map(({ kind }) => kind))];
    const ofKinds = `${head} AND subject_kind IN (${list(subjectKinds, parameters.length + 1)})`;
    parameters.push(...subjectKinds);
    const ids = [...new Set(subjects.map(({ id }) => id))];
    const found: OpenAlert[] = [];
    for (let start = 0; start < ids.length; start += maximumSubjectsPerQuery) {
      const batch = ids.slice(start, start + maximumSubjectsPerQuery);
      const rows = await transaction.query<AlertRow>(
        `${ofKinds} AND subject_id IN (${list(batch, parameters.length + 1)})`,
        [...parameters, ...batch],
      );
      const wanted = new Set(subjects.map(({ kind, id }) => `${kind} ${id}`));
      found.push(
        ...rows.map(openAlert).filter((alert) => wanted.has(`${alert.subjectKind} ${alert.subjectId}`)),
      );
    }
    return found;
  }
}

function openAlert(row: AlertRow): OpenAlert {
  return {
    id: row.id,
    kind: row.kind,
    subjectKind: row.subject_kind,
    subjectId: row.subject_id,
    severity: row.severity,
    facts: JSON.parse(row.facts) as Record<string, unknown>,
  };
}

function newAlert(studioId: string, condition: OpenCondition, openedAt: string): Alert {
  const { kind, subjectKind, subjectId, severity, facts } = condition;
  return {
    studioId,
    id: uuidv7(),
    kind,
    subjectKind,
    subjectId,
    severity,
    facts,
    openedAt,
    acknowledgedAt: null,
    acknowledgedBy: null,
    closedAt: null,
  };
}

function newDelivery(
  studioId: string,
  alertId: string,
  event: OutboxRow['event'],
  createdAt: string,
): OutboxRow {
  return {
    studioId,
    id: uuidv7(),
    alertId,
    event,
    channel,
    state: 'pending',
    attempts: 0,
    nextAttemptAt: createdAt,
    lastError: null,
    createdAt,
    settledAt: null,
  };
}
