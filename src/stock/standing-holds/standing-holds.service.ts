import { Injectable } from '@nestjs/common';
import type { Transaction } from '../../platform/database/transaction.js';
import type { LotScope } from '../lot-matching/lot-scope.js';

/** PLACEHOLDER by the lead, so that the tree compiles: the matching engineer replaces this file. */
@Injectable()
export class StandingHolds {
  async place(
    _transaction: Transaction,
    _said: { scope: LotScope; note: string | null; occurredAt: string },
  ): Promise<string> {
    throw new Error('not built yet');
  }
  async end(
    _transaction: Transaction,
    _id: string,
    _said: { reason: string; occurredAt: string },
  ): Promise<void> {
    throw new Error('not built yet');
  }
}
