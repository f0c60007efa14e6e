import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { Hold, HoldRelease } from './hold.entity.js';
import type { PlaceHoldDto, ReleaseHoldDto } from './holds.dto.js';
import type { HoldView } from './holds.views.js';
import { StockConditions } from './stock-conditions.service.js';

interface HeldThing {
  lotId: string;
  containerId: string | null;
}

/**
 * Holds on lots and containers. A hold reaches every blend made of what it holds; it stands until a release of its own,
 * and neither row is ever changed.
 */
@Injectable()
export class Holds {
  constructor(
    private readonly transactions: Transactions,
    private readonly conditions: StockConditions,
  ) {}

  place(actor: Actor, dto: PlaceHoldDto): Promise<HoldView> {
    if ((dto.lotId === undefined) === (dto.containerId === undefined)) {
      throw invalidField('lotId', 'Name either the lot or the one container that is held, not both.');
    }
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'stock.hold', subject: { kind: 'hold', id: dto.id }, content: dto },
      async (transaction) => {
        const held = await this.locked(transaction, dto.lotId ?? null, dto.containerId ?? null);
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
        await transaction.insert(Hold, hold);
        await this.conditions.reevaluate(transaction, await this.reachedProducts(transaction, held));
        return viewOf(hold, null);
      },
    );
  }

  /** @throws Problem not-found; wrong-state when it is released already */
  release(actor: Actor, holdId: string, dto: ReleaseHoldDto): Promise<HoldView> {
    return this.transactions.write(
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
        const held = await this.locked(transaction, hold.lotId, hold.containerId);
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
        await this.conditions.reevaluate(transaction, await this.reachedProducts(transaction, held));
        return viewOf(hold, release.occurredAt);
      },
    );
  }

  private async locked(
    transaction: Transaction,
    lotId: string | null,
    containerId: string | null,
  ): Promise<HeldThing> {
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
    return { lotId: row.lot_id, containerId };
  }

  /** Products of the held lot and of every blend made of what is held, at any depth. */
  private async reachedProducts(
    transaction: Transaction,
    { lotId, containerId }: HeldThing,
  ): Promise<string[]> {
    const intoBlends = containerId === null ? 'parent_lot_id' : 'parent_container_id';
    const rows = await transaction.query<{ product_id: string }>(
      `WITH RECURSIVE reached (lot_id) AS (
         SELECT lot_id FROM blend_parent WHERE studio_id = $1 AND ${intoBlends} = $2
         UNION
         SELECT blend_parent.lot_id FROM reached
           JOIN blend_parent ON blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = reached.lot_id)
       SELECT DISTINCT product_id FROM lot
       WHERE studio_id = $1 AND (id = $3 OR id IN (SELECT lot_id FROM reached)) ORDER BY product_id`,
      [transaction.studioId, containerId ?? lotId, lotId],
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
