import { Injectable, type OnModuleInit } from '@nestjs/common';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import {
  type CaughtLot,
  StandingHoldFollowers,
} from '../stock/standing-holds/standing-hold-followers.service.js';
import { RecallConditions } from './recall-conditions.service.js';
import { RecallHold } from './recall-hold.entity.js';
import { RecallLot } from './recall-lot.entity.js';

interface StandingRecall {
  standingHoldId: string;
  recallId: string;
  scopeNumber: number;
}

/** Lots that arrive after a recall was opened become lots of it, in the transaction of their arrival. */
@Injectable()
export class RecallCatches implements OnModuleInit {
  constructor(
    private readonly followers: StandingHoldFollowers,
    private readonly conditions: RecallConditions,
  ) {}

  onModuleInit(): void {
    this.followers.register((transaction, caught) => this.follow(transaction, caught));
  }

  private async follow(transaction: Transaction, caught: readonly CaughtLot[]): Promise<void> {
    const recalls = await this.recallsOf(
      transaction,
      caught.map(({ standingHoldId }) => standingHoldId),
    );
    const { studioId, recordedAt } = transaction;
    for (const { standingHoldId, recallId, scopeNumber } of recalls) {
      const lots = caught.filter((lot) => lot.standingHoldId === standingHoldId);
      const known = await this.knownLots(transaction, recallId, scopeNumber);
      const fresh = lots.filter(({ lotId }) => !known.has(lotId));
      if (fresh.length > 0) {
        await transaction.insert(
          RecallLot,
          fresh.map(({ lotId, grade, itemIndex, reasons }) => ({
            ...{ studioId, recallId, scopeNumber, lotId, grade, itemIndex, reasons, recordedAt },
          })),
        );
      }
      await transaction.insert(
        RecallHold,
        lots.map(({ lotId, holdId }) => ({ studioId, recallId, holdId, lotId, recordedAt })),
      );
      await this.conditions.reevaluate(transaction, recallId);
    }
  }

  private async recallsOf(
    transaction: Transaction,
    standingHoldIds: readonly string[],
  ): Promise<StandingRecall[]> {
    const ids = [...new Set(standingHoldIds)];
    if (ids.length === 0) return [];
    return transaction.query<StandingRecall>(
      `SELECT recall_standing_hold.standing_hold_id AS "standingHoldId", recall_standing_hold.recall_id AS "recallId",
         (SELECT max(number) FROM recall_scope WHERE recall_scope.studio_id = $1
            AND recall_scope.recall_id = recall_standing_hold.recall_id) AS "scopeNumber"
       FROM recall_standing_hold
       WHERE recall_standing_hold.studio_id = $1
         AND recall_standing_hold.standing_hold_id IN (${placeholders(ids)})
       ORDER BY recall_standing_hold.recall_id`,
      [transaction.studioId, ...ids],
    );
  }

  private async knownLots(
    transaction: Transaction,
    recallId: string,
    scopeNumber: number,
  ): Promise<Set<string>> {
    const rows = await transaction.query<{ lotId: string }>(
      'SELECT lot_id AS "lotId" FROM recall_lot WHERE studio_id = $1 AND recall_id = $2 AND scope_number = $3',
      [transaction.studioId, recallId, scopeNumber],
    );
    return new Set(rows.map(({ lotId }) => lotId));
  }
}
