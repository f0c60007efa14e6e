import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { Recall } from './recall.entity.js';
import { RecallClosing } from './recall-closing.entity.js';
import { RecallConditions } from './recall-conditions.service.js';
import { RecallHolds } from './recall-holds.service.js';

export interface SaidWithdrawal {
  id: string;
  reason: string;
  /** Null: the service follows what was said in another studio. */
  signedBy: string | null;
  occurredAt: string;
}

/** Withdraws recalls, and opens them again, in the caller's transaction. */
@Injectable()
export class RecallEnding {
  constructor(
    private readonly holds: RecallHolds,
    private readonly conditions: RecallConditions,
  ) {}

  /** Ends the standing hold of a recall, and asks for the release of its holds, which takes another person. */
  async withdraw(
    transaction: Transaction,
    { id: recallId, version }: Pick<Recall, 'id' | 'version'>,
    { id, reason, signedBy, occurredAt }: SaidWithdrawal,
  ): Promise<void> {
    const { studioId, recordedAt, actor } = transaction;
    // Nothing is caught between the look at the holds and the end of the standing one.
    await transaction.lockStudio();
    await this.holds.askRelease(transaction, recallId, { reason, occurredAt });
    await this.holds.endStanding(transaction, recallId, reason, occurredAt);
    await transaction.change(Recall, 'recall', { studioId, id: recallId }, version, {
      state: 'withdrawn',
      endedAt: occurredAt,
    });
    await transaction.insert(RecallClosing, {
      studioId,
      id,
      recallId,
      outcome: 'withdrawn',
      reason,
      overrides: [],
      facts: {},
      signedBy,
      secondSignedBy: null,
      occurredAt,
      recordedAt,
      personId: actor.personId,
      via: actor.via,
    });
    await this.conditions.reevaluate(transaction, recallId);
  }

  /** Opens a recall that had ended. Its next scope holds what it holds. */
  async reopen(transaction: Transaction, { id, version }: Pick<Recall, 'id' | 'version'>): Promise<void> {
    const key = { studioId: transaction.studioId, id };
    await transaction.change(Recall, 'recall', key, version, { state: 'open', endedAt: null });
  }
}
