import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../identity/local-day.js';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { notFound } from '../platform/problem.js';
import { Alert } from './alert.entity.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import {
  type AlertSeverity,
  alertChanges,
  type ConditionScope,
  type OpenAlert,
  type OpenCondition,
} from './open-condition.js';
import { OutboxRow } from './outbox/outbox-row.entity.js';

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
  constructor(private readonly evaluators: ConditionEvaluators) {}

  /**
   * Makes the alerts in scope agree with what stands: opens what is new, closes what no longer stands, refreshes the
   * severity and facts of what still stands without announcing it again. Whoever derives conditions locks the studio
   * before loading what they are derived from.
   * @param standing all that stands in scope; what lies outside it is ignored
   */
  async reconcile(
    transaction: Transaction,
    scope: ConditionScope,
    standing: readonly OpenCondition[],
  ): Promise<ReconciledAlerts> {
    await transaction.lockStudio();
    const { open, refresh, close } = alertChanges(await this.openIn(transaction, scope), standing, scope);
    const { studioId } = transaction;
    for (const { id, severity, facts } of refresh) {
      await transaction.update(Alert, { studioId, id }, { severity, facts });
    }
    for (const { id } of close) await this.close(transaction, id);
    await this.open(transaction, open);
    return { opened: open.length, refreshed: refresh.length, closed: close.length };
  }

  /** Judges all conditions of the studio anew, by its settings as they are written. Doing it twice changes nothing more. */
  async reconcileAll(transaction: Transaction): Promise<ReconciledAlerts & { day: string }> {
    await transaction.lockStudio();
    const [studio] = await transaction.query<{ timeZone: string }>(
      'SELECT time_zone AS "timeZone" FROM studio WHERE id = $1',
      [transaction.studioId],
    );
    const day = localDay(transaction.recordedAt, studio?.timeZone ?? transaction.actor.timeZone);
    const kinds: string[] = [];
    const standing: OpenCondition[] = [];
    for (const evaluator of this.evaluators.all()) {
      kinds.push(...evaluator.kinds);
      standing.push(...(await evaluator.evaluate(transaction, day)));
    }
    return { day, ...(await this.reconcile(transaction, { kinds, subjects: 'all' }, standing)) };
  }

  /**
   * Opens alerts for what happened once, unless one of that kind is open for the subject already. They are over when
   * somebody has seen to them, or when a reconciliation of their kind finds them settled.
   */
  async raise(transaction: Transaction, conditions: readonly OpenCondition[]): Promise<void> {
    if (conditions.length === 0) return;
    await transaction.lockStudio();
    const scope = {
      kinds: [...new Set(conditions.map(({ kind }) => kind))],
      subjects: conditions.map(({ subjectKind, subjectId }) => ({ kind: subjectKind, id: subjectId })),
    };
    const { open } = alertChanges(await this.openIn(transaction, scope), conditions, scope);
    await this.open(transaction, open);
  }

  /**
   * Notes who has seen to an alert; the first to say so stays. What happened once cannot end by itself: with this it
   * is over.
   * @throws Problem not-found
   */
  async acknowledge(transaction: Transaction, alertId: string): Promise<Alert> {
    const { studioId, recordedAt, actor } = transaction;
    await transaction.lockStudio();
    const alert = await transaction.manager.findOneBy(Alert, { studioId, id: alertId });
    if (!alert) throw notFound('alert', alertId);
    if (alert.acknowledgedAt !== null) return alert;
    const seen = { acknowledgedAt: recordedAt, acknowledgedBy: actor.personId };
    if (alert.closedAt === null && !this.evaluators.finds(alert.kind)) {
      return (await this.close(transaction, alertId, seen)) ?? alert;
    }
    return (await transaction.update(Alert, { studioId, id: alertId }, seen)) ?? alert;
  }

  private async open(transaction: Transaction, conditions: readonly OpenCondition[]): Promise<void> {
    if (conditions.length === 0) return;
    const { studioId, recordedAt } = transaction;
    const opened = conditions.map((condition) => newAlert(studioId, condition, recordedAt));
    await transaction.insert(Alert, opened);
    await transaction.insert(
      OutboxRow,
      opened.map(({ id }) => newDelivery(studioId, id, 'opened', recordedAt)),
    );
  }

  /** Closes an open alert and promises to tell so. */
  private async close(
    transaction: Transaction,
    alertId: string,
    seen: Pick<Partial<Alert>, 'acknowledgedAt' | 'acknowledgedBy'> = {},
  ): Promise<Alert | undefined> {
    const { studioId, recordedAt } = transaction;
    await transaction.insert(OutboxRow, newDelivery(studioId, alertId, 'closed', recordedAt));
    return transaction.update(Alert, { studioId, id: alertId }, { ...seen, closedAt: recordedAt });
  }

  private async openIn(transaction: Transaction, { kinds, subjects }: ConditionScope): Promise<OpenAlert[]> {
    if (kinds.length === 0) return [];
    const head = `SELECT id, kind, subject_kind, subject_id, severity, facts FROM alert
      WHERE studio_id = $1 AND closed_at IS NULL AND kind IN (${placeholders(kinds)})`;
    const parameters = [transaction.studioId, ...kinds];
    if (subjects === 'all') {
      return (await transaction.query<AlertRow>(`${head} ORDER BY opened_at, id`, parameters)).map(openAlert);
    }
    // All columns of the index of open alerts are named and no order is asked for, so that closed ones are never walked.
    const subjectKinds = [...new Set(subjects.map(({ kind }) => kind))];
    const ofKinds = `${head} AND subject_kind IN (${placeholders(subjectKinds, parameters.length + 1)})`;
    parameters.push(...subjectKinds);
    const ids = [...new Set(subjects.map(({ id }) => id))];
    const found: OpenAlert[] = [];
    for (let start = 0; start < ids.length; start += maximumSubjectsPerQuery) {
      const batch = ids.slice(start, start + maximumSubjectsPerQuery);
      const rows = await transaction.query<AlertRow>(
        `${ofKinds} AND subject_id IN (${placeholders(batch, parameters.length + 1)})`,
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
    putOffUntil: null,
    givenTo: null,
    closedBy: null,
    endedAt: null,
    turn: null,
    turnAt: null,
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
    destinationId: null,
    summaryId: null,
    begun: null,
    notBefore: null,
  };
}
