import { Injectable, type OnModuleInit } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import {
  type CaughtLot,
  type MetLot,
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
    this.followers.register(
      (transaction, caught) => this.follow(transaction, caught),
      (transaction, standingHoldId, lots) => this.settled(transaction, standingHoldId, lots),
    );
  }

  private async follow(transaction: Transaction, caught: readonly CaughtLot[]): Promise<void> {
    const recalls = await this.recallsOf(
      transaction,
      caught.map(({ standingHoldId }) => standingHoldId),
    );
    const { studioId, recordedAt } = transaction;
    for (const { standingHoldId, recallId, scopeNumber } of recalls) {
      const lots = caught.filter((lot) => lot.standingHoldId === standingHoldId);
      const listed = await this.listedLots(transaction, recallId, scopeNumber);
      const fresh = lots.filter(({ lotId, grade }) => !isListed(listed, lotId, grade));
      if (fresh.length > 0) {
        await transaction.insert(
          RecallLot,
          fresh.map(({ lotId, grade, itemIndex, reasons }) => ({
            ...{
              studioId,
              id: uuidv7(),
              recallId,
              scopeNumber,
              lotId,
              grade,
              itemIndex,
              reasons,
              recordedAt,
            },
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

  /** Lots that the recall holds already, and possible ones of which a person decided that they are not affected. */
  private async settled(
    transaction: Transaction,
    standingHoldId: string,
    lots: readonly MetLot[],
  ): Promise<string[]> {
    const [recall] = await this.recallsOf(transaction, [standingHoldId]);
    if (!recall) return [];
    const { studioId } = transaction;
    const ids = lots.map(({ lotId }) => lotId);
    const rows = await transaction.query<{ lotId: string; held: number; decision: string | null }>(
      `SELECT lot.id AS "lotId",
         (SELECT count(*) FROM recall_hold
          WHERE recall_hold.studio_id = $1 AND recall_hold.recall_id = $2 AND recall_hold.lot_id = lot.id
            AND NOT EXISTS (SELECT 1 FROM hold_release
              WHERE hold_release.studio_id = $1 AND hold_release.hold_id = recall_hold.hold_id)) AS held,
         (SELECT decided.decision FROM recall_lot_decision AS decided
          WHERE decided.studio_id = $1 AND decided.recall_id = $2 AND decided.lot_id = lot.id
          ORDER BY decided.recorded_at DESC, decided.id DESC LIMIT 1) AS decision
       FROM lot WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(ids, 3)})`,
      [studioId, recall.recallId, ...ids],
    );
    const known = new Map(rows.map((row) => [row.lotId, row]));
    const listed = await this.listedLots(transaction, recall.recallId, recall.scopeNumber);
    return lots.flatMap(({ lotId, grade }) => {
      // What becomes a lot of the recall, or one for certain, is told of again.
      if (!isListed(listed, lotId, grade)) return [];
      const { held = 0, decision } = known.get(lotId) ?? {};
      return held > 0 || (grade === 'possible' && decision === 'not affected') ? [lotId] : [];
    });
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

  /** The grades under which each lot of the scope is listed, by lot id. */
  private async listedLots(
    transaction: Transaction,
    recallId: string,
    scopeNumber: number,
  ): Promise<Map<string, Set<string>>> {
    const rows = await transaction.query<{ lotId: string; grade: string }>(
      `SELECT lot_id AS "lotId", grade FROM recall_lot
       WHERE studio_id = $1 AND recall_id = $2 AND scope_number = $3`,
      [transaction.studioId, recallId, scopeNumber],
    );
    const listed = new Map<string, Set<string>>();
    for (const { lotId, grade } of rows) listed.set(lotId, (listed.get(lotId) ?? new Set()).add(grade));
    return listed;
  }
}

/** Whether a lot is listed with no weaker a grade. */
function isListed(listed: Map<string, Set<string>>, lotId: string, grade: MetLot['grade']): boolean {
  const grades = listed.get(lotId);
  return grades !== undefined && (grade === 'possible' || grades.has('certain'));
}
