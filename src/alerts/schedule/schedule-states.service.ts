import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';

/** When what is done by time was last done in each studio: what every process goes by, so that it is done once. */
@Injectable()
export class ScheduleStates {
  /** When it was last done, ISO 8601 instant, by studio; a studio where it never was is not in it. */
  async all(read: Read, purpose: string): Promise<Map<string, string>> {
    const states = await read<{ studioId: string; doneAt: string }>(
      'SELECT studio_id AS "studioId", done_at AS "doneAt" FROM schedule_state WHERE purpose = $1',
      [purpose],
    );
    return new Map(states.map(({ studioId, doneAt }) => [studioId, doneAt]));
  }

  /** The same for one studio, which has been locked, so that it stays so until the transaction ends. */
  async doneAt(transaction: Transaction, purpose: string): Promise<string | null> {
    const [state] = await transaction.query<{ doneAt: string }>(
      'SELECT done_at AS "doneAt" FROM schedule_state WHERE studio_id = $1 AND purpose = $2',
      [transaction.studioId, purpose],
    );
    return state?.doneAt ?? null;
  }

  /** @param at ISO 8601 instant */
  async noteDone(transaction: Transaction, purpose: string, at: string): Promise<void> {
    await transaction.query(
      `INSERT INTO schedule_state (studio_id, purpose, done_at) VALUES ($1, $2, $3)
       ON CONFLICT (studio_id, purpose) DO UPDATE SET done_at = $3`,
      [transaction.studioId, purpose, at],
    );
  }
}
