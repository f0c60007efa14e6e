import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { StudioActors } from '../../identity/studio-actors.service.js';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Alert } from '../alert.entity.js';
import type { AlertStep } from '../alert-history.service.js';
import { AlertSteps } from '../alert-steps.service.js';
import { Promises } from '../outbox/promises.service.js';
import { Schedules } from '../schedule/schedules.service.js';
import { dueTurns } from './due-turns.js';
import { HandingOn } from './handing-on.entity.js';
import { assumedMinutes } from './handing-on.service.js';
import { turnNow } from './turn-now.js';

const alertsPerWrite = 200;

/** Somebody else was quicker: nothing is written. */
class NothingDue extends Error {}

/** Urgent, and waiting for somebody to acknowledge it. */
const waiting = `closed_at IS NULL AND severity = 'urgent' AND acknowledged_at IS NULL AND put_off_until IS NULL
  AND turn_at IS NOT NULL`;

/** While nothing leads to anybody of the studio, none of its alerts can be handed on. */
const leadsToSomebody = `EXISTS (SELECT 1 FROM alert_destination AS destination
  WHERE destination.studio_id = alert.studio_id AND destination.person_id IS NOT NULL AND destination.state = 'active')`;

/** From these steps on an alert is told anew, beginning with the first of the order. */
const beginnings = `'opened', 'worse', 'due again', 'given'`;

type WaitingAlert = Pick<Alert, 'id' | 'kind' | 'severity' | 'givenTo'> & { turn: number; turnAt: string };

/**
 * Hands urgent alerts that nobody acknowledged in time on to the next person of the order. Whose turn it was, and when,
 * stands on the alert and is asked under the studio's lock, so that looking twice hands on once.
 */
@Injectable()
export class HandOn implements OnModuleInit {
  private readonly logger = new Logger('handing on');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly studioActors: StudioActors,
    private readonly steps: AlertSteps,
    private readonly promises: Promises,
    private readonly schedules: Schedules,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose: 'handing on', look: () => this.look() });
  }

  /** Hands on what is due. One studio's fault is not the others'; it is tried again at the next look. */
  async look(): Promise<void> {
    const studios = await this.database.read<{
      studioId: string;
      minutes: number | null;
      turnAt: string;
      latest: string;
      fewestTurns: number;
    }>(
      `SELECT alert.studio_id AS "studioId", min(turn_at) AS "turnAt", max(turn_at) AS latest, min(turn) AS "fewestTurns",
         CASE WHEN min(handing_on.studio_id) IS NULL THEN ${assumedMinutes} ELSE min(handing_on.after_minutes) END AS minutes
       FROM alert LEFT JOIN handing_on ON handing_on.studio_id = alert.studio_id
       WHERE ${waiting} AND ${leadsToSomebody} GROUP BY alert.studio_id ORDER BY alert.studio_id`,
    );
    for (const { studioId, minutes, turnAt, latest, fewestTurns } of studios) {
      const isOver = overTurns(this.clock.now(), minutes);
      if (fewestTurns > 0 && !isOver(turnAt) && !isOver(latest)) continue;
      try {
        while ((await this.handOn(studioId)) >= alertsPerWrite);
      } catch (error) {
        if (error instanceof NothingDue) continue;
        this.logger.error(`Nothing could be handed on in studio ${studioId}: ${String(error)}`);
      }
    }
  }

  /** @returns how many were handed on */
  private async handOn(studioId: string): Promise<number> {
    const actor = await this.studioActors.of(studioId);
    if (!actor) return 0;
    return this.transactions.write(
      actor,
      { id: null, action: 'alerts.hand-on', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        await transaction.lockStudio();
        const steps = await this.handOnDue(transaction);
        if (steps.length === 0) throw new NothingDue();
        await this.steps.follow(transaction, steps);
        return steps.length;
      },
    );
  }

  private async handOnDue(transaction: Transaction): Promise<AlertStep[]> {
    const { studioId, recordedAt } = transaction;
    const chosen = await transaction.manager.findOneBy(HandingOn, { studioId });
    const isOver = overTurns(recordedAt, chosen === null ? assumedMinutes : chosen.afterMinutes);
    const audience = await this.promises.audience(transaction);
    const due = (await this.waiting(transaction)).filter(({ turn, turnAt }) => turn === 0 || isOver(turnAt));
    const steps: AlertStep[] = [];
    for (let start = 0; start < due.length && steps.length < alertsPerWrite; start += alertsPerWrite) {
      const some = due.slice(start, start + alertsPerWrite);
      const toldOf = await this.toldOf(transaction, some);
      for (const alert of some) {
        const { id, givenTo, severity, turn, turnAt } = alert;
        const told = toldOf.get(id) ?? new Set();
        const toPersonId = turnNow({ givenTo, turn, isOver: isOver(turnAt), told }, audience);
        if (toPersonId === undefined) continue;
        // At the end of the order everybody is told once more, and no more after that.
        const changes = toPersonId === null ? { turnAt: null } : { turn: turn + 1, turnAt: recordedAt };
        await transaction.update(Alert, { studioId, id }, changes);
        steps.push({ alert, event: 'handed on', severity, toPersonId });
      }
    }
    return steps;
  }

  private waiting(transaction: Transaction): Promise<WaitingAlert[]> {
    return transaction.query<WaitingAlert>(
      `SELECT id, kind, severity, given_to AS "givenTo", turn, turn_at AS "turnAt" FROM alert
       WHERE studio_id = $1 AND ${waiting} ORDER BY turn_at, id`,
      [transaction.studioId],
    );
  }

  /**
   * Who was told of alerts since they were last told anew, by the id of the alert. When it began to be told, that stands
   * in the deliveries of that moment; to whom it went on, in its history. Whoever gave it to somebody knows of it.
   */
  private async toldOf(
    transaction: Transaction,
    alerts: readonly WaitingAlert[],
  ): Promise<Map<string, Set<string>>> {
    const ids = alerts.map(({ id }) => id);
    const told = new Map<string, Set<string>>();
    const rows = await transaction.query<{ alertId: string; personId: string }>(
      `WITH beginning AS (
         SELECT entry.alert_id, entry.sequence, entry.event, entry.person_id, entry.recorded_at FROM alert_entry AS entry
         WHERE entry.studio_id = $1 AND entry.alert_id IN (${placeholders(ids, 2)}) AND entry.event IN (${beginnings})
           AND NOT EXISTS (SELECT 1 FROM alert_entry AS later WHERE later.studio_id = $1
             AND later.alert_id = entry.alert_id AND later.sequence > entry.sequence AND later.event IN (${beginnings})))
       SELECT beginning.alert_id AS "alertId", destination.person_id AS "personId"
       FROM beginning
         JOIN outbox ON outbox.studio_id = $1 AND outbox.alert_id = beginning.alert_id
           AND outbox.created_at = beginning.recorded_at
         JOIN alert_destination AS destination
           ON destination.studio_id = $1 AND destination.id = outbox.destination_id
       WHERE destination.person_id IS NOT NULL
       UNION
       SELECT entry.alert_id, entry.to_person_id
       FROM beginning JOIN alert_entry AS entry ON entry.studio_id = $1 AND entry.alert_id = beginning.alert_id
         AND entry.sequence >= beginning.sequence
       WHERE entry.to_person_id IS NOT NULL
       UNION
       SELECT alert_id, person_id FROM beginning WHERE event = 'given' AND person_id IS NOT NULL`,
      [transaction.studioId, ...ids],
    );
    for (const { alertId, personId } of rows)
      told.set(alertId, (told.get(alertId) ?? new Set()).add(personId));
    return told;
  }
}

/** Which turns are over; none where the studio hands nothing on. */
function overTurns(now: string, minutes: number | null): (turnAt: string) => boolean {
  if (minutes === null) return () => false;
  const { from, until } = dueTurns(now, minutes);
  return (turnAt) => turnAt <= until || turnAt >= from;
}
