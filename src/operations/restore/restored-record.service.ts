import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { type AppliedErasures, ErasureList } from '../../clients/erasure-list.service.js';
import { OneTimeLink } from '../../identity/sign-in/one-time-link.entity.js';
import { systemActor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import type { Manifest } from '../backup/manifest.js';

/** What has to be done to an older state of the record before it may be used as the present one. */
@Injectable()
export class RestoredRecord {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly erasures: ErasureList,
  ) {}

  /**
   * Erases again who was erased since the backup was made.
   * @param lists files of erasures; those that are not there are passed over
   */
  async eraseAgain(lists: readonly string[]): Promise<AppliedErasures> {
    const all: AppliedErasures = { erasedAgain: 0, nothingToDo: 0, unreadableLines: [] };
    for (const file of new Set([this.erasures.file, ...lists])) {
      const applied = await this.erasures.applyAgain(file);
      all.erasedAgain += applied.erasedAgain;
      all.nothingToDo += applied.nothingToDo;
      all.unreadableLines.push(...applied.unreadableLines);
    }
    return all;
  }

  /** Ends what may have been ended or used up since the backup was made, and records in each studio that it was restored. */
  async settle(name: string, { madeAt, heads }: Manifest): Promise<void> {
    await this.transactions.aside((query, now) =>
      query('UPDATE sign_in SET ended_at = $1 WHERE ended_at IS NULL', [now]),
    );
    const studios = await this.database.read<{ id: string; chainId: string; timeZone: string }>(
      'SELECT id, chain_id AS "chainId", time_zone AS "timeZone" FROM studio ORDER BY id',
    );
    for (const studio of studios) {
      const head = heads.find(({ studioId }) => studioId === studio.id);
      await this.transactions.write(
        { ...systemActor(studio), via: 'cli' },
        {
          id: uuidv7(),
          action: 'record.restore',
          subject: { kind: 'studio', id: studio.id },
          content: { name, madeAt },
        },
        async (transaction) => {
          const links = await transaction.query<{ id: string }>(
            'SELECT id FROM one_time_link WHERE studio_id = $1 AND ended_at IS NULL ORDER BY id',
            [studio.id],
          );
          await transaction.updateAll(
            OneTimeLink,
            links.map(({ id }) => id),
            { endedAt: transaction.recordedAt },
          );
          transaction.note({
            backup: name,
            madeAt,
            sequence: head?.sequence ?? null,
            hash: head?.hash ?? null,
          });
        },
      );
    }
  }
}
