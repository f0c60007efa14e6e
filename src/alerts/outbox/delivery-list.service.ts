import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type SqlValue } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { notFound, Problem } from '../../platform/problem.js';
import type { WriteDto } from '../../platform/request.dto.js';
import type { AlertDeliveryView } from '../alerts.views.js';
import { AlertDestination } from '../destinations/alert-destination.entity.js';
import type { DeliveryPageDto } from './deliveries.dto.js';
import type { PromisedDeliveryPageView, PromisedDeliveryView } from './deliveries.views.js';
import { OutboxRow } from './outbox-row.entity.js';
import { Relay } from './relay.service.js';
import { unknownAttempts } from './unknown-attempts.js';

interface ListedRow extends Omit<AlertDeliveryView, 'unknownAttempts'> {
  begun: number | null;
  alertId: string | null;
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: 'notice' | 'warning' | 'urgent';
  facts: string;
  closedAt: string | null;
  personId: string | null;
  destinationState: 'active' | 'paused' | 'stopped' | 'removed';
  stateReason: string | null;
}

const listed = `SELECT outbox.id, outbox.event, outbox.channel, outbox.destination_id AS "destinationId", outbox.state,
    outbox.attempts, outbox.begun, outbox.next_attempt_at AS "nextAttemptAt", outbox.last_error AS "lastError",
    outbox.created_at AS "createdAt", outbox.settled_at AS "settledAt", outbox.alert_id AS "alertId",
    alert.kind, alert.subject_kind AS "subjectKind", alert.subject_id AS "subjectId", alert.severity, alert.facts,
    alert.closed_at AS "closedAt", destination.person_id AS "personId", destination.state AS "destinationState",
    destination.state_reason AS "stateReason"
  FROM outbox
    LEFT JOIN alert ON alert.studio_id = outbox.studio_id AND alert.id = outbox.alert_id
    LEFT JOIN alert_destination AS destination
      ON destination.studio_id = outbox.studio_id AND destination.id = outbox.destination_id
  WHERE outbox.studio_id = $1 AND outbox.state = $2`;

/**
 * Whether there is anything to be done about an outbox row, as a condition in SQL: else what could not be sent would be
 * told of for ever.
 * @param today where the local day stands among the parameters
 */
const isActionable = (today: string) => `outbox.event <> 'test'
  AND (outbox.alert_id IS NULL OR alert.closed_at IS NULL)
  AND (outbox.summary_id IS NULL OR EXISTS (
    SELECT 1 FROM morning_summary AS summary
    WHERE summary.studio_id = outbox.studio_id AND summary.id = outbox.summary_id AND summary.day >= ${today}))
  AND (outbox.destination_id IS NULL OR destination.state IN ('active', 'paused'))
  AND (destination.person_id IS NULL OR EXISTS (
    SELECT 1 FROM person
    WHERE person.studio_id = outbox.studio_id AND person.id = destination.person_id AND person.state = 'active'
      AND (person.until IS NULL OR person.until >= ${today})))`;

/** Shows what waits to be delivered and what could not be, and lets it be tried anew. */
@Injectable()
export class DeliveryList {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly relay: Relay,
    private readonly clock: Clock,
  ) {}

  async page(
    { studioId, timeZone }: Actor,
    { state = 'undeliverable', actionable = false, limit = defaultPageSize, after }: DeliveryPageDto,
  ): Promise<PromisedDeliveryPageView> {
    await refuseUnknownStart(this.database.read, 'outbox', studioId, after);
    const parameters: SqlValue[] = [studioId, state];
    const conditions: string[] = [];
    if (actionable) {
      parameters.push(localDay(this.clock.now(), timeZone));
      conditions.push(`AND ${isActionable(`$${parameters.length}`)}`);
    }
    if (after !== undefined) {
      parameters.push(after);
      conditions.push(`AND (outbox.created_at, outbox.id) <
        (SELECT created_at, id FROM outbox WHERE studio_id = $1 AND id = $${parameters.length})`);
    }
    const rows = await this.database.read<ListedRow>(
      `${listed} ${conditions.join(' ')} ORDER BY outbox.created_at DESC, outbox.id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown.map(viewOfListed), next };
  }

  /**
   * What could not be sent is pending again and is tried at once, as if it were new; the attempts whose end is unknown
   * stay counted, since the receiver may have got it by them.
   * @throws Problem not-found, wrong-state
   */
  async sendAgain(actor: Actor, deliveryId: string, dto: WriteDto): Promise<AlertDeliveryView> {
    const view = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'alerts.send-again',
        subject: { kind: 'delivery', id: deliveryId },
        content: { ...dto, deliveryId },
      },
      async (transaction) => {
        const key = { studioId: actor.studioId, id: deliveryId };
        const row = await transaction.manager.findOneBy(OutboxRow, key);
        if (!row) throw notFound('delivery', deliveryId);
        if (row.state !== 'undeliverable') throw notUndeliverable(row);
        await this.refuseWhatLeadsNowhere(row, (id) =>
          transaction.manager.findOneBy(AlertDestination, { studioId: actor.studioId, id }),
        );
        const changes = {
          state: 'pending' as const,
          attempts: 0,
          begun: unknownAttempts(row),
          nextAttemptAt: transaction.recordedAt,
          settledAt: null,
        };
        // As its attempts do, this leaves the row's digest alone: of an outbox row only the making is covered.
        const again = await transaction.query<{ id: string }>(
          `UPDATE outbox SET state = $1, attempts = $2, begun = $3, next_attempt_at = $4, settled_at = NULL
           WHERE studio_id = $5 AND id = $6 AND state = 'undeliverable' RETURNING id`,
          [changes.state, 0, changes.begun, changes.nextAttemptAt, actor.studioId, deliveryId],
        );
        // Somebody else was first, at the same moment.
        if (again.length === 0) throw notUndeliverable(changes);
        transaction.note({ attemptsBefore: row.attempts });
        return deliveryView({ ...row, ...changes });
      },
    );
    this.relay.wake();
    return view;
  }

  private async refuseWhatLeadsNowhere(
    { destinationId }: OutboxRow,
    find: (id: string) => Promise<AlertDestination | null>,
  ): Promise<void> {
    if (destinationId === null) return;
    const destination = await find(destinationId);
    if (destination?.state !== 'removed' && destination?.state !== 'stopped') return;
    throw new Problem(
      409,
      'wrong-state',
      `Where it was to go is ${destination.state}${destination.stateReason === null ? '' : ` (${destination.stateReason})`}. Only what has somewhere to go can be sent again: set the destination up anew under Settings, Alerts.`,
    );
  }
}

function notUndeliverable({ state }: Pick<OutboxRow, 'state'>): Problem {
  const seen =
    state === 'sent'
      ? 'It was sent already'
      : 'It still waits and is tried again by itself at the time shown';
  return new Problem(409, 'wrong-state', `${seen}. Only what could not be sent can be sent again.`);
}

/** How a delivery of an alert is shown. */
export function deliveryView(
  row: Omit<OutboxRow, 'studioId' | 'alertId' | 'summaryId' | 'notBefore'>,
): AlertDeliveryView {
  const {
    id,
    event,
    channel,
    destinationId,
    state,
    attempts,
    nextAttemptAt,
    lastError,
    createdAt,
    settledAt,
  } = row;
  return {
    id,
    event,
    channel,
    destinationId,
    state,
    attempts,
    unknownAttempts: unknownAttempts(row),
    nextAttemptAt,
    lastError,
    createdAt,
    settledAt,
  };
}

function viewOfListed(row: ListedRow): PromisedDeliveryView {
  const { alertId, kind, subjectKind, subjectId, severity, facts, closedAt } = row;
  const { destinationId, personId, destinationState, stateReason } = row;
  return {
    ...deliveryView(row),
    alert:
      alertId === null
        ? null
        : {
            id: alertId,
            kind,
            subjectKind,
            subjectId,
            severity,
            facts: JSON.parse(facts) as Record<string, unknown>,
            closedAt,
          },
    destination:
      destinationId === null ? null : { id: destinationId, personId, state: destinationState, stateReason },
  };
}
