import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { Holds } from '../stock/holds.service.js';
import type { LotScope } from '../stock/lot-matching/lot-scope.js';
import { ReleaseRequests } from '../stock/release-requests.service.js';
import { StandingHolds } from '../stock/standing-holds/standing-holds.service.js';
import { RecallHold, RecallStandingHold } from './recall-hold.entity.js';

/** A recall whose holds are meant, and when it was done. */
export interface HoldingRecall {
  recallId: string;
  /** Said on each hold. */
  note: string;
  occurredAt: string;
}

/** Studios to be told once all is committed: see `OtherEnds`. */
export type Told = string[];

/** Holds of a recall: on lots that are here, and standing ones for lots that may still arrive. */
@Injectable()
export class RecallHolds {
  constructor(
    private readonly holds: Holds,
    private readonly standingHolds: StandingHolds,
    private readonly releaseRequests: ReleaseRequests,
  ) {}

  /** Holds those of the lots that this recall does not hold already. */
  async hold(
    transaction: Transaction,
    { recallId, note, occurredAt }: HoldingRecall,
    lotIds: readonly string[],
  ): Promise<Told> {
    const held = await this.open(transaction, recallId);
    const missing = lotIds.filter((lotId) => !held.has(lotId));
    if (missing.length === 0) return [];
    const { holdIds, told } = await this.holds.placeOnLots(transaction, missing, {
      kind: 'recall',
      reason: 'recall notice',
      note,
      occurredAt,
    });
    const { studioId, recordedAt } = transaction;
    await transaction.insert(
      RecallHold,
      [...holdIds].map(([lotId, holdId]) => ({ studioId, recallId, holdId, lotId, recordedAt })),
    );
    return told;
  }

  /** Asks that what this recall holds of the lots be released, left out: of all; another person then releases it. */
  async askRelease(
    transaction: Transaction,
    recallId: string,
    said: { reason: string; occurredAt: string },
    lotIds?: readonly string[],
  ): Promise<void> {
    const held = await this.open(transaction, recallId);
    const meant = lotIds === undefined ? [...held.keys()] : lotIds;
    const holdIds = meant.flatMap((lotId) => held.get(lotId) ?? []);
    await this.releaseRequests.askMany(transaction, holdIds, said);
  }

  /** Releases what this recall holds of the lots. */
  async release(
    transaction: Transaction,
    recallId: string,
    { reason, occurredAt }: { reason: string; occurredAt: string },
    lotIds: readonly string[],
  ): Promise<Told> {
    const held = await this.open(transaction, recallId);
    const holdIds = lotIds.flatMap((lotId) => held.get(lotId) ?? []);
    if (holdIds.length === 0) return [];
    const { told } = await this.holds.releaseMany(transaction, holdIds, { reason, occurredAt });
    return told;
  }

  /** Holds by this scope from now on whatever arrives, and by no earlier one of this recall. */
  async stand(transaction: Transaction, { recallId, note, occurredAt }: HoldingRecall, scope: LotScope) {
    const id = await this.standingHolds.place(transaction, { scope, note, occurredAt });
    await this.endStanding(transaction, recallId, 'The scope of the recall was amended.', occurredAt);
    const { studioId, recordedAt } = transaction;
    await transaction.insert(RecallStandingHold, { studioId, recallId, standingHoldId: id, recordedAt });
  }

  async endStanding(transaction: Transaction, recallId: string, reason: string, occurredAt: string) {
    const rows = await transaction.query<{ id: string }>(
      `SELECT recall_standing_hold.standing_hold_id AS id FROM recall_standing_hold
       WHERE recall_standing_hold.studio_id = $1 AND recall_standing_hold.recall_id = $2 AND NOT EXISTS (
         SELECT 1 FROM standing_hold_end
         WHERE standing_hold_end.studio_id = $1
           AND standing_hold_end.standing_hold_id = recall_standing_hold.standing_hold_id)`,
      [transaction.studioId, recallId],
    );
    for (const { id } of rows) await this.standingHolds.end(transaction, id, { reason, occurredAt });
  }

  /** The lots on which a hold of this recall is in force. */
  async heldLots(transaction: Transaction, recallId: string): Promise<string[]> {
    return [...(await this.open(transaction, recallId)).keys()];
  }

  /** The holds of this recall that are in force, by lot. */
  private async open(transaction: Transaction, recallId: string): Promise<Map<string, string[]>> {
    const rows = await transaction.query<{ lotId: string; holdId: string }>(
      `SELECT recall_hold.lot_id AS "lotId", recall_hold.hold_id AS "holdId" FROM recall_hold
       WHERE recall_hold.studio_id = $1 AND recall_hold.recall_id = $2 AND NOT EXISTS (
         SELECT 1 FROM hold_release
         WHERE hold_release.studio_id = $1 AND hold_release.hold_id = recall_hold.hold_id)
       ORDER BY recall_hold.lot_id`,
      [transaction.studioId, recallId],
    );
    const held = new Map<string, string[]>();
    for (const { lotId, holdId } of rows) held.set(lotId, [...(held.get(lotId) ?? []), holdId]);
    return held;
  }
}
