import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../../identity/local-day.js';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { HandingOn } from '../handing-on/handing-on.entity.js';
import type { AlertSeverity } from '../open-condition.js';
import { ToldPeople } from '../preferences/told-people.service.js';
import { type Channel, type OutboxEvent, OutboxRow } from './outbox-row.entity.js';
import { type Audience, type ToldEvent, whoIsTold } from './who-is-told.js';

const maximumAlertsPerQuery = 500;

/** A step of an alert that is to be told. */
export interface StepToTell {
  alertId: string;
  event: ToldEvent;
  kind: string;
  severity: AlertSeverity;
  givenTo: string | null;
  personId: string | null;
  toPersonId: string | null;
}

/** What a delivery is promised of, and to whom. */
export interface PromisedDelivery {
  event: OutboxEvent;
  alertId?: string;
  summaryId?: string;
  /** Destinations of the studio. */
  destinationIds: readonly string[];
  /** ISO 8601 instant; left out: at once. */
  notBefore?: string;
}

interface KnownAudience extends Audience {
  channels: ReadonlyMap<string, Channel>;
}

/**
 * Promises deliveries in the transaction of what they tell. Guarantees: a step of an alert that is told and the outbox
 * rows that promise it commit together or not at all; the log of the service is told of each.
 */
@Injectable()
export class Promises {
  /** Read once for a transaction, however many alerts it opens. */
  private readonly audiences = new WeakMap<Transaction, Promise<KnownAudience>>();

  constructor(private readonly toldPeople: ToldPeople) {}

  /** Whom the studio's alerts may reach, as it is at this transaction. */
  audience(transaction: Transaction): Promise<Audience> {
    return this.known(transaction);
  }

  /** Promises to tell of steps: in the log, and to whom it concerns. */
  async tell(transaction: Transaction, steps: readonly StepToTell[]): Promise<void> {
    if (steps.length === 0) return;
    const audience = await this.known(transaction);
    const closed = steps.filter(({ event }) => event === 'closed').map(({ alertId }) => alertId);
    const toldBefore = await this.webhooksToldOf(transaction, audience.webhooks.length > 0 ? closed : []);
    const at = transaction.recordedAt;
    const rows: OutboxRow[] = [];
    for (const { alertId, ...step } of steps) {
      const { event } = step;
      rows.push(promised(transaction, { event, alertId, channel: 'log', destinationId: null }));
      for (const { destinationId, notBefore } of whoIsTold(
        { ...step, toldBefore: toldBefore.get(alertId) ?? [], at },
        audience,
      )) {
        const channel = channelOf(audience.channels, destinationId);
        rows.push(promised(transaction, { event, alertId, channel, destinationId, notBefore }));
      }
    }
    await transaction.insert(OutboxRow, rows);
  }

  /**
   * Promises something to destinations.
   * @returns the ids of the deliveries, in the order of the destinations
   */
  async promise(transaction: Transaction, what: PromisedDelivery): Promise<string[]> {
    const { event, alertId = null, summaryId = null, destinationIds, notBefore = null } = what;
    const channels = await this.channelsOf(transaction, destinationIds);
    const rows = destinationIds.map((destinationId) =>
      promised(transaction, {
        event,
        alertId,
        summaryId,
        channel: channelOf(channels, destinationId),
        destinationId,
        notBefore,
      }),
    );
    await transaction.insert(OutboxRow, rows);
    return rows.map(({ id }) => id);
  }

  private known(transaction: Transaction): Promise<KnownAudience> {
    let audience = this.audiences.get(transaction);
    if (!audience) {
      audience = this.read(transaction);
      this.audiences.set(transaction, audience);
    }
    return audience;
  }

  private async read(transaction: Transaction): Promise<KnownAudience> {
    const { studioId, recordedAt } = transaction;
    const webhooks = await transaction.query<{ id: string; minimumSeverity: AlertSeverity }>(
      `SELECT id, minimum_severity AS "minimumSeverity" FROM alert_destination
       WHERE studio_id = $1 AND kind = 'webhook' AND state = 'active' ORDER BY created_at, id`,
      [studioId],
    );
    const [studio] = await transaction.query<{ timeZone: string }>(
      'SELECT time_zone AS "timeZone" FROM studio WHERE id = $1',
      [studioId],
    );
    const timeZone = studio?.timeZone ?? transaction.actor.timeZone;
    const chosen = await transaction.manager.findOneBy(HandingOn, { studioId });
    const personIds = chosen?.personIds ?? [];
    const day = localDay(recordedAt, timeZone);
    const people = await this.toldPeople.of(transaction.read, studioId, day, personIds);
    const channels = new Map<string, Channel>(webhooks.map(({ id }) => [id, 'webhook']));
    for (const { destinations } of people) for (const { id, kind } of destinations) channels.set(id, kind);
    return { webhooks, people, personIds, timeZone, channels };
  }

  /** The webhooks that were told of alerts, by the id of the alert. */
  private async webhooksToldOf(
    transaction: Transaction,
    alertIds: readonly string[],
  ): Promise<Map<string, string[]>> {
    const told = new Map<string, string[]>();
    for (let start = 0; start < alertIds.length; start += maximumAlertsPerQuery) {
      const batch = alertIds.slice(start, start + maximumAlertsPerQuery);
      const rows = await transaction.query<{ alertId: string; destinationId: string }>(
        `SELECT DISTINCT alert_id AS "alertId", destination_id AS "destinationId" FROM outbox
         WHERE studio_id = $1 AND channel = 'webhook' AND alert_id IN (${placeholders(batch, 2)})`,
        [transaction.studioId, ...batch],
      );
      for (const { alertId, destinationId } of rows)
        told.set(alertId, [...(told.get(alertId) ?? []), destinationId]);
    }
    return told;
  }

  private async channelsOf(transaction: Transaction, ids: readonly string[]): Promise<Map<string, Channel>> {
    if (ids.length === 0) return new Map();
    const rows = await transaction.query<{ id: string; kind: Channel }>(
      `SELECT id, kind FROM alert_destination WHERE studio_id = $1 AND id IN (${placeholders(ids, 2)})`,
      [transaction.studioId, ...ids],
    );
    return new Map(rows.map(({ id, kind }) => [id, kind]));
  }
}

function channelOf(channels: ReadonlyMap<string, Channel>, destinationId: string): Channel {
  const channel = channels.get(destinationId);
  if (channel === undefined) throw new Error(`There is no destination ${destinationId} in this studio.`);
  return channel;
}

function promised(
  { studioId, recordedAt }: Transaction,
  what: Pick<OutboxRow, 'event' | 'alertId' | 'channel' | 'destinationId'> &
    Partial<Pick<OutboxRow, 'summaryId' | 'notBefore'>>,
): OutboxRow {
  const { summaryId = null, notBefore = null, ...rest } = what;
  return {
    studioId,
    id: uuidv7(),
    ...rest,
    state: 'pending',
    attempts: 0,
    nextAttemptAt: notBefore ?? recordedAt,
    lastError: null,
    createdAt: recordedAt,
    settledAt: null,
    summaryId,
    begun: null,
    notBefore,
  };
}
