import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { DataKeys } from '../platform/encryption/data-keys.service.js';
import { notFound } from '../platform/problem.js';
import { Alert } from './alert.entity.js';
import { AlertEntry, type AlertEntryEvent } from './alert-entry.entity.js';
import type { AlertEntryView, AlertHistoryView, AlertView } from './alerts.views.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import type { AlertSeverity } from './open-condition.js';
import { toldSteps } from './told-steps.js';

const mostStepsShown = 200;

const sealedAsNote = (entryId: string) => `alert_entry.note:${entryId}`;

/** One step of an alert. */
export interface AlertStep {
  alert: Pick<Alert, 'id' | 'kind' | 'givenTo'>;
  event: AlertEntryEvent;
  /** As it is from then on. */
  severity: AlertSeverity;
  /** Left out: the service itself. */
  personId?: string | null;
  toPersonId?: string | null;
  until?: string;
  /** In the clear; it is kept sealed under a key of its own. */
  note?: string;
}

/** What happened to alerts, step by step; nothing of it is ever changed. */
@Injectable()
export class AlertHistory {
  constructor(
    private readonly database: Database,
    private readonly dataKeys: DataKeys,
    private readonly evaluators: ConditionEvaluators,
  ) {}

  /** Adds steps, numbered without gaps. The caller holds the studio's lock. */
  async add(transaction: Transaction, steps: readonly AlertStep[]): Promise<void> {
    if (steps.length === 0) return;
    const { studioId, recordedAt } = transaction;
    const [last] = await transaction.query<{ sequence: number | null }>(
      'SELECT max(sequence) AS sequence FROM alert_entry WHERE studio_id = $1',
      [studioId],
    );
    let sequence = last?.sequence ?? 0;
    const entries: AlertEntry[] = [];
    for (const { alert, event, severity, personId = null, toPersonId = null, until, note } of steps) {
      sequence += 1;
      const id = uuidv7();
      entries.push({
        studioId,
        id,
        sequence,
        alertId: alert.id,
        event,
        severity,
        personId,
        toPersonId,
        until: until ?? null,
        ...(await this.sealed(transaction, id, note)),
        recordedAt,
      });
    }
    await transaction.insert(AlertEntry, entries);
  }

  /** @throws Problem not-found */
  async of(actor: Actor, alertId: string): Promise<AlertHistoryView> {
    const { studioId } = actor;
    const { manager } = this.database.reader;
    const alert = await manager.findOneBy(Alert, { studioId, id: alertId });
    if (!alert) throw notFound('alert', alertId);
    const [latest, steps] = await manager.findAndCount(AlertEntry, {
      where: { studioId, alertId },
      order: { sequence: 'DESC' },
      take: mostStepsShown,
    });
    const keys = latest.flatMap(({ dataKeyId }) => dataKeyId ?? []);
    const sealers = await this.dataKeys.sealers(studioId, keys);
    const entries = latest.reverse().map((entry): AlertEntryView => {
      const { id, sequence, event, severity, personId, toPersonId, until, noteSealed, recordedAt } = entry;
      const isShown = actor.seesClients || (personId !== null && personId === actor.personId);
      const sealer = isShown ? sealers.get(entry.dataKeyId ?? '') : undefined;
      return {
        sequence,
        event,
        severity,
        personId,
        toPersonId,
        until,
        hasNote: noteSealed !== null,
        note: sealer?.open(noteSealed, sealedAsNote(id)) ?? null,
        recordedAt,
      };
    });
    const earlierSteps = steps - entries.length;
    // A history that is cut lacks nothing of its beginning but what was cut.
    if (earlierSteps === 0) for (const step of this.told(alert, entries)) putIn(entries, step);
    const view = viewOfAlert(alert, !this.evaluators.finds(alert.kind));
    return { alert: view, history: entries, earlierSteps };
  }

  private told(alert: Alert, entries: readonly AlertEntryView[]): AlertEntryView[] {
    const events = entries.map(({ event }) => event);
    return toldSteps(alert, events).map(
      (step): AlertEntryView => ({
        sequence: null,
        ...step,
        toPersonId: null,
        until: null,
        hasNote: false,
        note: null,
      }),
    );
  }

  private async sealed(
    transaction: Transaction,
    entryId: string,
    note: string | undefined,
  ): Promise<Pick<AlertEntry, 'dataKeyId' | 'noteSealed'>> {
    if (note === undefined) return { dataKeyId: null, noteSealed: null };
    const sealer = await this.dataKeys.make(transaction);
    return { dataKeyId: sealer.dataKeyId, noteSealed: sealer.seal(note, sealedAsNote(entryId)) };
  }
}

/** Puts a step before all that were recorded then or later. */
function putIn(history: AlertEntryView[], step: AlertEntryView): void {
  const place = history.findIndex(({ recordedAt }) => recordedAt >= step.recordedAt);
  history.splice(place < 0 ? history.length : place, 0, step);
}

/** @param endsWhenAcknowledged whether it tells what happened once */
export function viewOfAlert(
  { studioId: _, endedAt: __, turn: ___, turnAt: ____, ...view }: Alert,
  endsWhenAcknowledged: boolean,
): AlertView {
  return { ...view, endsWhenAcknowledged };
}
