import { Injectable, Logger } from '@nestjs/common';
import { systemActor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import type { AlertAnnouncement } from '../channels/alert-words.js';
import { LogChannel } from '../channels/log/log-channel.service.js';
import type { DeliveryJob } from '../queue/in-process-queue.service.js';
import { afterFailure } from './backoff.js';
import { OutboxRow } from './outbox-row.entity.js';

const longestError = 300;

interface DeliveryRow {
  attempts: number;
  begun: number | null;
  event: 'opened' | 'closed';
  kind: string;
  severity: AlertAnnouncement['severity'];
  facts: string;
  chain_id: string;
  time_zone: string;
}

/**
 * Carries out what an outbox row promises. Guarantees: a row is settled once, as sent or as undeliverable; it is marked
 * sent only after the channel took it, so that a stop in between sends it again under the same delivery id, and never
 * loses it.
 */
@Injectable()
export class Deliver {
  private readonly logger = new Logger('alert delivery');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly channel: LogChannel,
  ) {}

  /** Tries one delivery, if it is due. A channel that fails is no error here: the row says when it is tried again. */
  async deliver({ studioId, deliveryId }: DeliveryJob): Promise<void> {
    const [row] = await this.database.read<DeliveryRow>(
      `SELECT outbox.attempts, outbox.begun, outbox.event, alert.kind, alert.severity, alert.facts, studio.chain_id, studio.time_zone
       FROM outbox
         JOIN alert ON alert.studio_id = outbox.studio_id AND alert.id = outbox.alert_id
         JOIN studio ON studio.id = outbox.studio_id
       WHERE outbox.studio_id = $1 AND outbox.id = $2 AND outbox.state = 'pending' AND outbox.next_attempt_at <= $3`,
      [studioId, deliveryId, this.clock.now()],
    );
    if (!row) return;
    const { event, kind, severity } = row;
    const begun = (row.begun ?? 0) + 1;
    const facts = JSON.parse(row.facts) as Record<string, unknown>;
    const attempts = row.attempts + 1;
    let failure: string | null = null;
    try {
      await this.channel.send(deliveryId, { event, kind, severity, facts });
    } catch (error) {
      failure = (error instanceof Error ? error.message : String(error)).slice(0, longestError);
    }
    const now = this.clock.now();
    const changes: Partial<OutboxRow> =
      failure === null
        ? { attempts, begun, state: 'sent', settledAt: now, lastError: null }
        : { attempts, begun, lastError: failure, ...settledOrLater(attempts, now) };
    const actor = systemActor({ id: studioId, chainId: row.chain_id, timeZone: row.time_zone });
    await this.transactions.quietly(actor, (transaction) =>
      // Whoever settled it in the meantime has settled it.
      transaction.update(
        OutboxRow,
        { studioId, id: deliveryId, state: 'pending', attempts: row.attempts },
        changes,
      ),
    );
    if (changes.state === 'undeliverable') {
      this.logger.error(
        `Delivery ${deliveryId} is given up after ${attempts} attempts: ${failure}. The alert stands in the list of alerts.`,
      );
    }
  }
}

function settledOrLater(attempts: number, now: string): Partial<OutboxRow> {
  const after = afterFailure(attempts, now, Math.random());
  return after.state === 'undeliverable' ? { ...after, settledAt: now } : after;
}
