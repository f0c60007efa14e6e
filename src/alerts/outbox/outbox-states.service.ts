import { setImmediate as turnOver } from 'node:timers/promises';
import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { beyondAnyWait } from './backoff.js';
import { isDue } from './released.sql.js';

/** Names an outbox row. */
export interface RowName {
  studioId: string;
  deliveryId: string;
}

/** What an attempt ended with. */
export type Ended =
  | { state: 'sent' }
  | { state: 'undeliverable'; error: string }
  | { state: 'pending'; error: string; nextAttemptAt: string };

interface Step {
  row: RowName;
  change: (query: Read) => Promise<unknown>;
  done: (answer: unknown) => void;
  failed: (error: unknown) => void;
}

const maximumStepsPerTransaction = 100;

/**
 * Writes how deliveries stand. Guarantees: one attempt at a time is begun of a row, whoever else begins one; a row is
 * settled once, and what an attempt that lost its lease came to is only counted. What many deliveries write at the same
 * time shares a transaction, so that ten thousand alerts are ten thousand waits for the disk no more.
 */
@Injectable()
export class OutboxStates {
  private waiting: Step[] = [];
  private writing = false;

  constructor(private readonly transactions: Transactions) {}

  /**
   * Begins an attempt, if the row is due and nobody else has it.
   * @param leaseEnd ISO 8601 instant until when it belongs to this attempt
   * @returns how many were begun with this one; undefined: it is not to be tried now
   */
  async begin(row: RowName, now: string, leaseEnd: string): Promise<number | undefined> {
    const [begun] = await this.write(row, (query) =>
      query<{ begun: number }>(
        `UPDATE outbox SET begun = COALESCE(begun, attempts) + 1, next_attempt_at = $1
         WHERE studio_id = $2 AND id = $3 AND state = 'pending' AND ${isDue('$4', '$5')} RETURNING begun`,
        [leaseEnd, row.studioId, row.deliveryId, now, beyondAnyWait(now)],
      ),
    );
    return begun?.begun;
  }

  /**
   * Notes what an attempt came to.
   * @param begun what `begin` returned
   */
  async end(row: RowName, begun: number, now: string, ended: Ended): Promise<void> {
    const { studioId, deliveryId } = row;
    await this.write(row, async (query) => {
      const settled =
        ended.state === 'sent'
          ? // Sent is sent, also when another attempt has begun meanwhile.
            await query(
              `UPDATE outbox SET state = 'sent', settled_at = $1, attempts = attempts + 1, last_error = NULL
               WHERE studio_id = $2 AND id = $3 AND state = 'pending' RETURNING id`,
              [now, studioId, deliveryId],
            )
          : await query(
              `UPDATE outbox SET state = $1, settled_at = $2, attempts = attempts + 1, last_error = $3,
                 next_attempt_at = COALESCE($4, next_attempt_at)
               WHERE studio_id = $5 AND id = $6 AND state = 'pending' AND begun = $7 RETURNING id`,
              [
                ended.state,
                ended.state === 'undeliverable' ? now : null,
                ended.error,
                ended.state === 'pending' ? ended.nextAttemptAt : null,
                studioId,
                deliveryId,
                begun,
              ],
            );
      if (settled.length > 0) return;
      await query(
        `UPDATE outbox SET attempts = attempts + 1 WHERE studio_id = $1 AND id = $2 AND attempts < begun`,
        [studioId, deliveryId],
      );
    });
  }

  /** Gives a row up without an attempt, and says why. */
  async giveUp(row: RowName, now: string, error: string): Promise<void> {
    await this.write(row, (query) =>
      query(
        `UPDATE outbox SET state = 'undeliverable', settled_at = $1, last_error = $2
         WHERE studio_id = $3 AND id = $4 AND state = 'pending'`,
        [now, error, row.studioId, row.deliveryId],
      ),
    );
  }

  private write<Answer>(row: RowName, change: (query: Read) => Promise<Answer>): Promise<Answer> {
    return new Promise<Answer>((resolve, failed) => {
      this.waiting.push({ row, change, done: (answer) => resolve(answer as Answer), failed });
      if (!this.writing) void this.writeAll();
    });
  }

  private async writeAll(): Promise<void> {
    this.writing = true;
    while (this.waiting.length > 0) {
      const group = this.waiting.splice(0, maximumStepsPerTransaction);
      // In one order in all processes, so that none waits for one that waits for it.
      group.sort((one, other) => (one.row.deliveryId < other.row.deliveryId ? -1 : 1));
      try {
        const answers = await this.transactions.aside(async (query) => {
          const all: unknown[] = [];
          for (const { change } of group) all.push(await change(query));
          return all;
        });
        for (const [index, step] of group.entries()) step.done(answers[index]);
      } catch (error) {
        for (const step of group) step.failed(error);
      }
      // SQLite answers at once, so that without a turn of their own people would wait until everything is delivered.
      await turnOver();
    }
    this.writing = false;
  }
}
