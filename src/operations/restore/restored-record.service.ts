import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { type AppliedErasures, ErasureList } from '../../clients/erasure-list.service.js';
import { OneTimeLink } from '../../identity/sign-in/one-time-link.entity.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { PurchaseOrderMail } from '../../reorder/purchase-orders/purchase-order.entity.js';
import type { Manifest } from '../backup/manifest.js';
import { restoreAction } from './restore-entry.js';

/** What has to be done to an older state of the record before it may be used as the present one. */
@Injectable()
export class RestoredRecord {
  constructor(
    private readonly transactions: Transactions,
    private readonly studioActors: StudioActors,
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
    for (const actor of await this.studioActors.all()) {
      const { studioId } = actor;
      const head = heads.find((one) => one.studioId === studioId);
      await this.transactions.write(
        { ...actor, via: 'cli' },
        {
          id: uuidv7(),
          action: restoreAction,
          subject: { kind: 'studio', id: studioId },
          content: { name, madeAt },
        },
        async (transaction) => {
          const links = await transaction.query<{ id: string }>(
            'SELECT id FROM one_time_link WHERE studio_id = $1 AND ended_at IS NULL ORDER BY id',
            [studioId],
          );
          await transaction.updateAll(
            OneTimeLink,
            links.map(({ id }) => id),
            { endedAt: transaction.recordedAt },
          );
          await giveUpMails(transaction);
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

/** An order that waited to be mailed may have been sent since the backup was made: nobody sends it twice unasked. */
async function giveUpMails(transaction: Transaction): Promise<void> {
  const mails = await transaction.query<{ id: string }>(
    "SELECT id FROM purchase_order_mail WHERE studio_id = $1 AND state = 'waiting' ORDER BY id",
    [transaction.studioId],
  );
  await transaction.updateAll(
    PurchaseOrderMail,
    mails.map(({ id }) => id),
    {
      state: 'failed',
      lastError:
        'The record was restored from a backup, and whether this was sent since is not known. Ask the supplier before it is sent again.',
      settledAt: transaction.recordedAt,
    },
  );
}
