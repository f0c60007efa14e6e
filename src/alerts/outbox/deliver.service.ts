import { Injectable, Logger } from '@nestjs/common';
import { StudioActors } from '../../identity/studio-actors.service.js';
import { Clock } from '../../platform/clock.js';
import { Database, type SqlValue } from '../../platform/database/database.js';
import { fromDatabaseRow, rowShape } from '../../platform/database/rows.js';
import { Transactions } from '../../platform/database/transactions.js';
import { inTime } from '../../platform/time-limit.js';
import { AlertChannels } from '../channels/alert-channels.service.js';
import { SendFailure } from '../channels/send-failure.js';
import { AlertDestination } from '../destinations/alert-destination.entity.js';
import type { DeliveryJob } from '../queue/alert-queue.interface.js';
import { afterFailure, beyondAnyWait, deliveryBackoff, deliveryLease, leaseEnd } from './backoff.js';
import { OutboxRow } from './outbox-row.entity.js';
import { OutboxStates } from './outbox-states.service.js';
import { isDue } from './released.sql.js';
import { unknownAttempts } from './unknown-attempts.js';

const longestError = 300;

/**
 * Carries out what an outbox row promises. Guarantees: an attempt is noted as begun before it is made and belongs to one
 * process at a time; a row is settled once, as sent or as undeliverable with its cause; it is marked sent only after the
 * channel took it, so that a stop in between sends it again under the same delivery id, and never loses it.
 */
@Injectable()
export class Deliver {
  private readonly logger = new Logger('alert delivery');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly states: OutboxStates,
    private readonly channels: AlertChannels,
    private readonly studioActors: StudioActors,
  ) {}

  /** Tries one delivery, if it is due. A channel that fails is no error here: the row says when it is tried again. */
  async deliver(job: DeliveryJob): Promise<void> {
    const row = await this.dueRow(job);
    if (!row) return;
    const destination = await this.destinationOf(row);
    // It waits until the destination is resumed; the relay brings it then.
    if (destination?.state === 'paused') return;
    const gone = goneWords(row, destination) ?? (await this.overWords(row, destination));
    if (gone !== undefined) {
      await this.states.giveUp(job, this.clock.now(), gone);
      return;
    }
    const now = this.clock.now();
    const begun = await this.states.begin(job, now, leaseEnd(now, unknownAttempts(row)));
    if (begun === undefined) return;
    const failure = await this.send({ ...row, begun }, destination);
    if (failure === null) await this.states.end(job, begun, this.clock.now(), { state: 'sent' });
    else await this.noteFailure(job, { ...row, begun }, destination, failure);
  }

  private async noteFailure(
    job: DeliveryJob,
    row: OutboxRow & { begun: number },
    destination: AlertDestination | null,
    failure: SendFailure,
  ): Promise<void> {
    const attempts = row.attempts + 1;
    const now = this.clock.now();
    const error = failure.message.slice(0, longestError);
    const isLasting = failure.isLasting || failure.isGone;
    const after = afterFailure(attempts, now, Math.random(), deliveryBackoff, {
      isLasting,
      retryAt: failure.retryAt,
    });
    await this.states.end(job, row.begun, now, { ...after, error });
    if (failure.isGone && destination !== null) await this.stop(destination, error);
    if (after.state === 'undeliverable') {
      this.logger.error(
        `Delivery ${job.deliveryId} is given up after ${attempts} attempts: ${error}. It stands under Settings, Alerts, from where it can be sent again.`,
      );
    }
  }

  /** @returns null when the channel took it */
  private async send(row: OutboxRow, destination: AlertDestination | null): Promise<SendFailure | null> {
    try {
      await inTime(this.channels.send(row, destination), deliveryLease.longestSendSeconds * 1_000);
      return null;
    } catch (error) {
      if (error instanceof SendFailure) return error;
      return new SendFailure(error instanceof Error ? error.message : String(error));
    }
  }

  /** Why a person need not be told any more of what was to wait for the end of quiet hours; undefined: they are told. */
  private async overWords(row: OutboxRow, destination: AlertDestination | null): Promise<string | undefined> {
    if (row.notBefore === null || row.begun !== null || (destination?.personId ?? null) === null)
      return undefined;
    const [alert] = await this.database.read<{ closedAt: string | null }>(
      'SELECT closed_at AS "closedAt" FROM alert WHERE studio_id = $1 AND id = $2',
      [row.studioId, row.alertId],
    );
    return alert === undefined || alert.closedAt === null
      ? undefined
      : 'It was over before it was to be told.';
  }

  private async dueRow({ studioId, deliveryId }: DeliveryJob): Promise<OutboxRow | undefined> {
    const now = this.clock.now();
    const [row] = await this.database.read<Record<string, SqlValue>>(
      `SELECT * FROM outbox
       WHERE studio_id = $1 AND id = $2 AND state = 'pending' AND ${isDue('$3', '$4')}`,
      [studioId, deliveryId, now, beyondAnyWait(now)],
    );
    return row && fromDatabaseRow<OutboxRow>(rowShape(this.database.reader, OutboxRow), row);
  }

  private async destinationOf({ studioId, destinationId }: OutboxRow): Promise<AlertDestination | null> {
    if (destinationId === null) return null;
    return this.database.reader.manager.findOneBy(AlertDestination, { studioId, id: destinationId });
  }

  /** Nothing more goes to a destination whose receiver said that it is no more; whoever it belongs to sees why. */
  private async stop({ studioId, id }: AlertDestination, reason: string): Promise<void> {
    const actor = await this.studioActors.of(studioId);
    if (!actor) return;
    await this.transactions.write(
      actor,
      {
        id: null,
        action: 'alerts.stop-destination',
        subject: { kind: 'alert destination', id },
        content: null,
      },
      async (transaction) => {
        const standing = await transaction.manager.findOneBy(AlertDestination, { studioId, id });
        if (standing?.state !== 'active' && standing?.state !== 'paused') return;
        const { version } = standing;
        await transaction.change(AlertDestination, 'destination', { studioId, id }, version, {
          state: 'stopped',
          stateReason: reason,
        });
      },
    );
  }
}

/** Why a delivery leads nowhere any more; undefined: it does. */
function goneWords(row: OutboxRow, destination: AlertDestination | null): string | undefined {
  if (row.destinationId === null) return undefined;
  switch (destination?.state) {
    case 'removed':
      return 'Where it was to go was removed before it was sent.';
    case 'stopped':
      return `Where it was to go was stopped before it was sent: ${destination.stateReason ?? 'its receiver is no more'}`.slice(
        0,
        longestError,
      );
    default:
      return undefined;
  }
}
