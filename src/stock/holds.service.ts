import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { Hold, HoldRelease } from './hold.entity.js';
import type { PlaceHoldDto, ReleaseHoldDto } from './holds.dto.js';
import type { HoldView } from './holds.views.js';
import { reachedLots } from './standing-holds.service.js';
import { StockConditions } from './stock-conditions.service.js';
import { OtherEnds } from './transfers/other-ends.service.js';
import { SentGoods } from './transfers/sent-goods.service.js';
import { TransferConditions } from './transfers/transfer-conditions.service.js';

/**
 * Holds on lots and containers. A hold reaches every blend made of what it holds, and goods of it that were sent to other
 * studios: those on their way arrive on hold, and an alert opens where they are. It stands until a release of its own, and
 * neither row is ever changed.
 */
@Injectable()
export class Holds {
  constructor(
    private readonly transactions: Transactions,
    private readonly conditions: StockConditions,
    private readonly transferConditions: TransferConditions,
    private readonly sentGoods: SentGoods,
    private readonly otherEnds: OtherEnds,
  ) {}

  async place(actor: Actor, dto: PlaceHoldDto): Promise<HoldView> {
    if ((dto.lotId === undefined) === (dto.containerId === undefined)) {
      throw invalidField('lotId', 'Name either the lot or the one container that is held, not both.');
    }
    const told: string[] = [];
    const view = await this.transactions.write(
      actor,
      { id: dto.id, action: 'stock.hold', subject: { kind: 'hold', id: dto.id }, content: dto },
      async (transaction) => {
        const hold: Hold = {
          studioId: actor.studioId,
          id: dto.id,
          kind: dto.kind,
          lotId: dto.lotId ?? null,
          containerId: dto.containerId ?? null,
          reason: dto.reason,
          note: dto.note ?? null,
          occurredAt: occurredAt(dto.occurredAt, transaction.recordedAt),
          recordedAt: transaction.recordedAt,
          personId: actor.personId,
          via: actor.via,
        };
        const lotId = await this.lockHeld(transaction, hold);
        await transaction.insert(Hold, hold);
        told.push(...(await this.judge(transaction, hold.id, lotId)));
        return viewOf(hold, null);
      },
    );
    await this.otherEnds.judge(told);
    return view;
  }

  /** @throws Problem not-found; wrong-state when it is released already */
  async release(actor: Actor, holdId: string, dto: ReleaseHoldDto): Promise<HoldView> {
    const told: string[] = [];
    const view = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.release-hold',
        subject: { kind: 'hold', id: holdId },
        content: { ...dto, holdId },
      },
      async (transaction) => {
        const key = { studioId: actor.studioId, id: holdId };
        const hold = await transaction.manager.findOneBy(Hold, key);
        if (!hold) throw notFound('hold', holdId);
        const lotId = await this.lockHeld(transaction, hold);
        const earlier = await transaction.manager.findOneBy(HoldRelease, {
          studioId: actor.studioId,
          holdId,
        });
        if (earlier) {
          throw new Problem(409, 'wrong-state', `This hold was released already, at ${earlier.recordedAt}.`);
        }
        const release: HoldRelease = {
          studioId: actor.studioId,
          holdId,
          reason: dto.reason,
          occurredAt: occurredAt(dto.occurredAt, transaction.recordedAt),
          recordedAt: transaction.recordedAt,
          personId: actor.personId,
          via: actor.via,
        };
        await transaction.insert(HoldRelease, release);
        told.push(...(await this.judge(transaction, hold.id, lotId)));
        return viewOf(hold, release.occurredAt);
      },
    );
    await this.otherEnds.judge(told);
    return view;
  }

  /** @returns the studios that were told of it, since goods of the lot went there */
  private async judge(transaction: Transaction, holdId: string, lotId: string): Promise<string[]> {
    const told = await this.sentGoods.follow(transaction, [lotId]);
    await this.conditions.reevaluate(transaction, await this.reachedProducts(transaction, holdId));
    await this.transferConditions.reevaluate(transaction);
    return told;
  }

  /**
   * Locks the held lot, or the lot of the held container and then the container.
   * @returns the id of the lot
   */
  private async lockHeld(
    transaction: Transaction,
    { lotId, containerId }: Pick<Hold, 'lotId' | 'containerId'>,
  ): Promise<string> {
    const [row] = await transaction.query<{ lot_id: string }>(
      containerId === null
        ? 'SELECT id AS lot_id FROM lot WHERE studio_id = $1 AND id = $2'
        : 'SELECT lot_id FROM container WHERE studio_id = $1 AND id = $2',
      [transaction.studioId, containerId ?? lotId],
    );
    if (!row) {
      throw containerId === null ? notFound('lot', lotId ?? '') : notFound('container', containerId);
    }
    await transaction.lock('lot', [row.lot_id]);
    if (containerId !== null) await transaction.lock('container', [containerId]);
    return row.lot_id;
  }

  /** Products of what a recorded hold names and of every blend made of it, at any depth. */
  private async reachedProducts(transaction: Transaction, holdId: string): Promise<string[]> {
    const rows = await transaction.query<{ product_id: string }>(
      `WITH RECURSIVE held AS (
         SELECT id, lot_id, container_id FROM hold WHERE studio_id = $1 AND id = $2),
       ${reachedLots}
       SELECT DISTINCT product_id FROM lot
       WHERE studio_id = $1 AND (id IN (SELECT lot_id FROM reached) OR id IN (
         SELECT container.lot_id FROM held CROSS JOIN container
         WHERE container.studio_id = $1 AND container.id = held.container_id))
       ORDER BY product_id`,
      [transaction.studioId, holdId],
    );
    return rows.map((row) => row.product_id);
  }
}

/** Without the note: the answer of a write is kept, and a note is free text. */
function viewOf(
  { id, kind, lotId, containerId, reason, occurredAt }: Hold,
  releasedAt: string | null,
): HoldView {
  return { id, kind, lotId, containerId, reason, occurredAt, releasedAt };
}
