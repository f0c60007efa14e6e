import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Transaction } from '../platform/database/transaction.js';
import { Alert } from './alert.entity.js';
import type { AlertEntryEvent } from './alert-entry.entity.js';
import { AlertHistory, type AlertStep } from './alert-history.service.js';
import type { AlertChanges, OpenCondition, StandingAlert } from './open-condition.js';
import { Promises } from './outbox/promises.service.js';
import { nextTurn, type ToldEvent } from './outbox/who-is-told.js';

const maximumRowsPerUpdate = 500;

/** An alert as far as a step of it has to know it. */
export type SteppingAlert = Pick<Alert, 'id' | 'kind' | 'severity' | 'givenTo'>;
/** One of a reconciliation. */
export type ReconciledAlert = StandingAlert & SteppingAlert;

/** Nobody acknowledged it as it is now. */
export const unseen = { acknowledgedAt: null, acknowledgedBy: null } as const;

const told: Partial<Record<AlertEntryEvent, ToldEvent>> = {
  opened: 'opened',
  worse: 'worse',
  'due again': 'due again',
  given: 'given',
  'handed on': 'handed on',
  closed: 'closed',
};

/**
 * Writes the steps of alerts: what stands on the alert, its history, and the promises to tell of it. Guarantees: the
 * three commit together or not at all. Whoever calls holds the studio's lock.
 */
@Injectable()
export class AlertSteps {
  constructor(
    private readonly history: AlertHistory,
    private readonly promises: Promises,
  ) {}

  async open(transaction: Transaction, conditions: readonly OpenCondition[]): Promise<void> {
    if (conditions.length === 0) return;
    const opened: Alert[] = [];
    for (const condition of conditions) {
      opened.push(newAlert(transaction, condition, await this.turn(transaction, condition.severity, null)));
    }
    await transaction.insert(Alert, opened);
    await this.follow(
      transaction,
      opened.map((alert) => ({ alert, event: 'opened', severity: alert.severity })),
    );
  }

  /**
   * Notes what changed in alerts that stand on. One that got worse comes back, if it was put off, and waits to be
   * acknowledged anew: who saw to the milder one is in its history.
   */
  async refresh(transaction: Transaction, changed: AlertChanges<ReconciledAlert>['refresh']): Promise<void> {
    const { studioId } = transaction;
    const steps: AlertStep[] = [];
    for (const { alert, severity, facts, change } of changed) {
      const more =
        change === 'worse'
          ? { putOffUntil: null, ...unseen, ...(await this.turn(transaction, severity, alert.givenTo)) }
          : {};
      await transaction.update(Alert, { studioId, id: alert.id }, { severity, facts, ...more });
      if (change !== null) steps.push({ alert, event: change, severity });
    }
    await this.follow(transaction, steps);
  }

  /** Closes open alerts: their condition is over. */
  async close(transaction: Transaction, alerts: readonly SteppingAlert[]): Promise<void> {
    const { recordedAt: closedAt } = transaction;
    await this.changeAll(transaction, alerts, { closedAt });
    await this.follow(
      transaction,
      alerts.map((alert) => ({ alert, event: 'closed', severity: alert.severity })),
    );
  }

  /** Notes that what stood on after somebody closed it is over now. */
  async end(transaction: Transaction, alerts: readonly SteppingAlert[]): Promise<void> {
    await this.changeAll(transaction, alerts, { endedAt: transaction.recordedAt });
    await this.follow(
      transaction,
      alerts.map((alert) => ({ alert, event: 'ended', severity: alert.severity })),
    );
  }

  /** Adds steps to the history and promises to tell of those that are told. What stands on the alerts is written already. */
  async follow(transaction: Transaction, steps: readonly AlertStep[]): Promise<void> {
    await this.history.add(transaction, steps);
    await this.promises.tell(
      transaction,
      steps.flatMap(({ alert, event, severity, personId = null, toPersonId = null }) => {
        const { id: alertId, kind, givenTo } = alert;
        const tellsOf = told[event];
        return tellsOf === undefined
          ? []
          : [{ alertId, kind, givenTo, event: tellsOf, severity, personId, toPersonId }];
      }),
    );
  }

  /**
   * The first turn of an alert that becomes urgent, comes back or is given to somebody, as it stands on the alert. Where
   * nobody is told of that it is turn 0: it is handed on as soon as something leads to somebody.
   * @param given of one that is given to somebody: who gave it; whoever takes it on themselves knows of it
   */
  async turn(
    transaction: Transaction,
    severity: Alert['severity'],
    givenTo: string | null,
    given?: { by: string | null },
  ): Promise<Pick<Alert, 'turn' | 'turnAt'>> {
    if (severity !== 'urgent') return { turn: null, turnAt: null };
    const first = nextTurn(await this.promises.audience(transaction), givenTo);
    const isTold = given ? given.by === givenTo || first?.personId === givenTo : first !== null;
    return { turn: isTold ? 1 : 0, turnAt: transaction.recordedAt };
  }

  private async changeAll(
    transaction: Transaction,
    alerts: readonly SteppingAlert[],
    changes: Partial<Alert>,
  ): Promise<void> {
    for (let start = 0; start < alerts.length; start += maximumRowsPerUpdate) {
      const batch = alerts.slice(start, start + maximumRowsPerUpdate).map(({ id }) => id);
      await transaction.updateAll(Alert, batch, changes);
    }
  }
}

function newAlert(
  { studioId, recordedAt }: Transaction,
  { kind, subjectKind, subjectId, severity, facts }: OpenCondition,
  turn: Pick<Alert, 'turn' | 'turnAt'>,
): Alert {
  return {
    studioId,
    id: uuidv7(),
    kind,
    subjectKind,
    subjectId,
    severity,
    facts,
    openedAt: recordedAt,
    acknowledgedAt: null,
    acknowledgedBy: null,
    closedAt: null,
    putOffUntil: null,
    givenTo: null,
    closedBy: null,
    endedAt: null,
    ...turn,
  };
}
