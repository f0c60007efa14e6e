import { Injectable } from '@nestjs/common';
import type { Read } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { notFound, Problem } from '../platform/problem.js';
import { noteOfHold } from './note-of-hold.js';
import type { RecallKind, RecallState } from './vocabulary.js';

/** A recall as everything recorded of it begins with. */
export interface KnownRecall {
  id: string;
  kind: RecallKind;
  title: string;
  state: RecallState;
  chainWide: boolean;
  openedInStudioId: string;
  openedAt: string;
  endedAt: string | null;
  version: number;
  /** The number of the scope that counts. */
  scopeNumber: number;
}

type RecallRow = Omit<KnownRecall, 'chainWide'> & { chainWide: number };

/** Finds recalls, and locks one for what is recorded of it. */
@Injectable()
export class RecallRegister {
  /** @throws Problem not-found */
  async find(read: Read, studioId: string, recallId: string): Promise<KnownRecall> {
    const [row] = await read<RecallRow>(
      `SELECT id, kind, title, state, chain_wide AS "chainWide", opened_in_studio_id AS "openedInStudioId",
         opened_at AS "openedAt", ended_at AS "endedAt", version,
         (SELECT coalesce(max(number), 0) FROM recall_scope
          WHERE recall_scope.studio_id = recall.studio_id AND recall_scope.recall_id = recall.id) AS "scopeNumber"
       FROM recall WHERE studio_id = $1 AND id = $2`,
      [studioId, recallId],
    );
    if (!row) throw notFound('recall', recallId);
    return { ...row, chainWide: row.chainWide === 1 };
  }

  /**
   * Locks a recall until the end of the transaction.
   * @throws Problem not-found; wrong-state when it is not open any more
   */
  async lockOpen(transaction: Transaction, recallId: string): Promise<KnownRecall> {
    await transaction.lock('recall', [recallId]);
    const recall = await this.find(transaction.read, transaction.studioId, recallId);
    if (recall.state !== 'open') {
      throw new Problem(
        409,
        'wrong-state',
        `This recall is ${recall.state}, since ${recall.endedAt}. Widen it first if there is more to record; it is open again then.`,
      );
    }
    return recall;
  }

  /** What is said on holds of a recall. */
  async noteOf(read: Read, studioId: string, { id, title, scopeNumber }: KnownRecall): Promise<string> {
    const [row] = await read<{ reference: string | null }>(
      'SELECT reference FROM recall_scope WHERE studio_id = $1 AND recall_id = $2 AND number = $3',
      [studioId, id, scopeNumber],
    );
    return noteOfHold(title, row?.reference ?? null);
  }
}
