import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { notFound } from '../../platform/problem.js';
import { Hold } from '../hold.entity.js';
import { newLotHold } from '../holds.service.js';
import { HoldsInForce } from '../holds-in-force.service.js';
import { LotGrader } from '../lot-matching/grade-lot.js';
import type { LotFacts } from '../lot-matching/lot-facts.js';
import { LotFactsReader } from '../lot-matching/lot-facts.service.js';
import type { LotScope } from '../lot-matching/lot-scope.js';
import { StandingHold, StandingHoldCatch, StandingHoldEnd } from '../standing-hold.entity.js';
import { StockConditions } from '../stock-conditions.service.js';
import { type CaughtLot, StandingHoldFollowers } from './standing-hold-followers.service.js';

interface OpenStandingHold {
  id: string;
  scope: LotScope;
  note: string | null;
  occurredAt: string;
}

interface EarlierCatch {
  lotId: string;
  grade: CaughtLot['grade'];
}

/** A statement takes so many parameters on either engine. */
const lotsAskedAtOnce = 5_000;

/**
 * Holds on lots that are yet to arrive. Guarantees: whatever way a lot comes on record, or comes to bear a code, it is
 * compared with every standing hold in the transaction of its arrival, and one that is or may be meant is on hold when that
 * transaction ends. What is only possible is held too, until a person decides. A lot is caught once by each standing hold,
 * and once more if it becomes certain: a release stands.
 */
@Injectable()
export class StandingHolds {
  constructor(
    private readonly facts: LotFactsReader,
    private readonly holdsInForce: HoldsInForce,
    private readonly conditions: StockConditions,
    private readonly followers: StandingHoldFollowers,
  ) {}

  /**
   * Catches what comes from now on; what is on record already is left to the caller, who locks the studio before looking, so
   * that nothing arrives between the look and this.
   * @returns its id
   */
  async place(
    transaction: Transaction,
    { id = uuidv7(), scope, note, occurredAt }: Omit<OpenStandingHold, 'id'> & { id?: string },
  ): Promise<string> {
    const { studioId, recordedAt, actor } = transaction;
    const { personId, via } = actor;
    await transaction.insert(StandingHold, {
      ...{ studioId, id, scope, note, occurredAt, recordedAt, personId, via },
    });
    return id;
  }

  /**
   * Catches nothing more. Holds that were placed stand on. One that has ended stays as it is.
   * @throws Problem not-found
   */
  async end(
    transaction: Transaction,
    standingHoldId: string,
    { reason, occurredAt }: Pick<StandingHoldEnd, 'reason' | 'occurredAt'>,
  ): Promise<void> {
    const { studioId, recordedAt, actor } = transaction;
    const [row] = await transaction.query<{ hasEnded: number }>(
      `SELECT (SELECT count(*) FROM standing_hold_end
         WHERE standing_hold_end.studio_id = $1 AND standing_hold_end.standing_hold_id = $2) AS "hasEnded"
       FROM standing_hold WHERE studio_id = $1 AND id = $2`,
      [studioId, standingHoldId],
    );
    if (!row) throw notFound('standing hold', standingHoldId);
    if (row.hasEnded > 0) return;
    const { personId, via } = actor;
    await transaction.insert(StandingHoldEnd, {
      ...{ studioId, standingHoldId, reason, occurredAt, recordedAt, personId, via },
    });
  }

  /**
   * Compares lots that arrived, or whose codes or dates were corrected, and holds those that are or may be meant. Call it once
   * the lots are written and before `SentGoods.follow`.
   * @param occurredAt instant of the arrival
   * @returns the lots that were caught now
   */
  async catchLots(
    transaction: Transaction,
    lotIds: readonly string[],
    occurredAt: string,
  ): Promise<CaughtLot[]> {
    const ids = [...new Set(lotIds)];
    if (ids.length === 0) return [];
    // Whoever places a standing hold has looked at these lots, or is seen here.
    await transaction.lockStudio();
    const open = await this.open(transaction);
    if (open.length === 0) return [];
    const lots = await this.factsOf(transaction, ids);
    const caught: CaughtLot[] = [];
    for (const standingHold of open) {
      caught.push(...(await this.catchBy(transaction, standingHold, lots, occurredAt)));
    }
    if (caught.length === 0) return [];
    const holdIds = caught.map(({ holdId }) => holdId);
    const productIds = await this.holdsInForce.reachedProducts(
      transaction.read,
      transaction.studioId,
      holdIds,
    );
    await this.conditions.reevaluate(transaction, productIds);
    await this.followers.follow(transaction, caught);
    return caught;
  }

  private async catchBy(
    transaction: Transaction,
    standingHold: OpenStandingHold,
    lots: readonly LotFacts[],
    occurredAt: string,
  ): Promise<CaughtLot[]> {
    const { studioId, recordedAt } = transaction;
    const grader = new LotGrader(standingHold.scope);
    const graded = lots.flatMap((lot) => {
      const { grade, itemIndex, reasons } = grader.grade(lot);
      return grade === 'not' ? [] : [{ lotId: lot.lotId, grade, itemIndex, reasons }];
    });
    if (graded.length === 0) return [];
    const earlier = await this.caughtEarlier(transaction, standingHold.id);
    const fresh = graded.filter(
      (lot) =>
        !earlier.some(
          (one) => one.lotId === lot.lotId && (one.grade === 'certain' || lot.grade === 'possible'),
        ),
    );
    const caught = await this.followers.unsettled(transaction, standingHold.id, fresh);
    if (caught.length === 0) return [];
    // Nothing is on hold before there was a cause.
    const since = occurredAt > standingHold.occurredAt ? occurredAt : standingHold.occurredAt;
    const holds = caught.map(({ lotId }) =>
      newLotHold(transaction, lotId, {
        kind: 'recall',
        reason: 'recall notice',
        note: standingHold.note,
        occurredAt: since,
      }),
    );
    await transaction.insert(Hold, holds);
    const all = caught.map((lot, index): CaughtLot => {
      const holdId = holds[index]?.id ?? '';
      return { ...lot, standingHoldId: standingHold.id, holdId };
    });
    await transaction.insert(
      StandingHoldCatch,
      all.map(
        ({ standingHoldId, holdId, lotId, grade, reasons }): StandingHoldCatch => ({
          ...{ studioId, standingHoldId, holdId, lotId, grade, reasons, recordedAt },
        }),
      ),
    );
    return all;
  }

  private async open(transaction: Transaction): Promise<OpenStandingHold[]> {
    const rows = await transaction.query<Omit<OpenStandingHold, 'scope'> & { scope: string }>(
      `SELECT id, scope, note, occurred_at AS "occurredAt" FROM standing_hold
       WHERE studio_id = $1 AND NOT EXISTS (
         SELECT 1 FROM standing_hold_end
         WHERE standing_hold_end.studio_id = $1 AND standing_hold_end.standing_hold_id = standing_hold.id)
       ORDER BY recorded_at, id`,
      [transaction.studioId],
    );
    return rows.map((row) => ({ ...row, scope: JSON.parse(row.scope) as LotScope }));
  }

  private async factsOf(
    { read, studioId, actor }: Transaction,
    lotIds: readonly string[],
  ): Promise<LotFacts[]> {
    const productIds = new Set<string>();
    for (let start = 0; start < lotIds.length; start += lotsAskedAtOnce) {
      const ids = lotIds.slice(start, start + lotsAskedAtOnce);
      const rows = await read<{ product_id: string }>(
        `SELECT DISTINCT product_id FROM lot WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
        [studioId, ...ids],
      );
      for (const row of rows) productIds.add(row.product_id);
    }
    const products = await this.facts.products(read, actor.chainId, [...productIds]);
    return this.facts.lots(read, studioId, products, lotIds);
  }

  private async caughtEarlier(transaction: Transaction, standingHoldId: string): Promise<EarlierCatch[]> {
    return transaction.query<EarlierCatch>(
      `SELECT lot_id AS "lotId", grade FROM standing_hold_catch WHERE studio_id = $1 AND standing_hold_id = $2`,
      [transaction.studioId, standingHoldId],
    );
  }
}
