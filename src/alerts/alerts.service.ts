import { Injectable } from '@nestjs/common';
import { localDay } from '../identity/local-day.js';
import { placeholders, type SqlValue } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { AlertSteps, type ReconciledAlert } from './alert-steps.service.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import { alertChanges, type ConditionScope, type OpenCondition } from './open-condition.js';

const maximumSubjectsPerQuery = 500;

/** Those that are open, and those somebody closed whose condition stood on: each half finds its own index. */
const halves = [
  { state: 'closed_at IS NULL', closedByHand: 0 },
  { state: 'closed_by IS NOT NULL AND ended_at IS NULL', closedByHand: 1 },
];

/** What a reconciliation did. */
export interface ReconciledAlerts {
  opened: number;
  refreshed: number;
  closed: number;
}

type AlertRow = Omit<ReconciledAlert, 'facts' | 'closedByHand'> & { facts: string; closedByHand: number };

/**
 * Opens and closes alerts in the caller's transaction. Guarantees: an alert, its history and the outbox rows that promise
 * to tell of it commit with their cause or not at all; one condition is open once per kind and subject.
 */
@Injectable()
export class Alerts {
  constructor(
    private readonly evaluators: ConditionEvaluators,
    private readonly steps: AlertSteps,
  ) {}

  /**
   * Makes the alerts in scope agree with what stands: opens what is new, closes what no longer stands, refreshes the
   * severity and facts of what still stands. What somebody closed by hand stays closed while it stands no worse. Whoever
   * derives conditions locks the studio before loading what they are derived from.
   * @param standing all that stands in scope; what lies outside it is ignored
   */
  async reconcile(
    transaction: Transaction,
    scope: ConditionScope,
    standing: readonly OpenCondition[],
  ): Promise<ReconciledAlerts> {
    await transaction.lockStudio();
    const { open, refresh, close, end } = alertChanges(
      await this.standingIn(transaction, scope),
      standing,
      scope,
    );
    await this.steps.refresh(transaction, refresh);
    await this.steps.close(transaction, close);
    await this.steps.end(transaction, end);
    await this.steps.open(transaction, open);
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
    const known = await this.standingIn(transaction, scope);
    const open = known.filter(({ closedByHand }) => !closedByHand);
    await this.steps.open(transaction, alertChanges(open, conditions, scope).open);
  }

  private async standingIn(
    transaction: Transaction,
    { kinds, subjects }: ConditionScope,
  ): Promise<ReconciledAlert[]> {
    if (kinds.length === 0) return [];
    if (subjects === 'all') {
      const found = await this.standing(transaction, `kind IN (${placeholders(kinds)})`, kinds);
      return found.sort((one, other) => (one.id < other.id ? -1 : 1));
    }
    // All columns of the index of open alerts are named and no order is asked for, so that closed ones are never walked.
    const subjectKinds = [...new Set(subjects.map(({ kind }) => kind))];
    const wanted = new Set(subjects.map(({ kind, id }) => `${kind} ${id}`));
    const ids = [...new Set(subjects.map(({ id }) => id))];
    const found: ReconciledAlert[] = [];
    for (let start = 0; start < ids.length; start += maximumSubjectsPerQuery) {
      const batch = ids.slice(start, start + maximumSubjectsPerQuery);
      const lists: [string, readonly string[]][] = [
        ['kind', kinds],
        ['subject_kind', subjectKinds],
        ['subject_id', batch],
      ];
      let first = 2;
      const conditions = lists.map(([column, values]) => {
        const condition = `${column} IN (${placeholders(values, first)})`;
        first += values.length;
        return condition;
      });
      const rows = await this.standing(
        transaction,
        conditions.join(' AND '),
        lists.flatMap(([, values]) => values),
      );
      found.push(...rows.filter((alert) => wanted.has(`${alert.subjectKind} ${alert.subjectId}`)));
    }
    return found;
  }

  /** @param parameters of the condition, from `$2` on */
  private async standing(
    transaction: Transaction,
    condition: string,
    parameters: readonly SqlValue[],
  ): Promise<ReconciledAlert[]> {
    const rows = await transaction.query<AlertRow>(
      halves
        .map(
          ({ state, closedByHand }) =>
            `SELECT id, kind, subject_kind AS "subjectKind", subject_id AS "subjectId", severity, facts,
               given_to AS "givenTo", ${closedByHand} AS "closedByHand"
             FROM alert WHERE studio_id = $1 AND ${state} AND ${condition}`,
        )
        .join(' UNION ALL '),
      [transaction.studioId, ...parameters],
    );
    return rows.map((row) => ({
      ...row,
      facts: JSON.parse(row.facts) as Record<string, unknown>,
      closedByHand: row.closedByHand === 1,
    }));
  }
}
