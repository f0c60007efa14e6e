import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../platform/actor.js';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { Hold, HoldRelease } from './hold.entity.js';
import type { PlaceHoldDto, ReleaseHoldDto } from './holds.dto.js';
import type { HoldView } from './holds.views.js';
import { HoldsInForce } from './holds-in-force.service.js';
import { type AdmittedRelease, ReleaseRequests } from './release-requests.service.js';
import { StockConditions } from './stock-conditions.service.js';
import { OtherEnds } from './transfers/other-ends.service.js';
import { SentGoods } from './transfers/sent-goods.service.js';
import { TransferConditions } from './transfers/transfer-conditions.service.js';

/** What several holds say that are placed at once. */
export type SaidOfHolds = Pick<Hold, 'kind' | 'reason' | 'note' | 'occurredAt'>;

/** Studios that were told of a change, since goods of the lots went there: for `OtherEnds.judge`, once it is committed. */
interface Told {
  told: string[];
}

/**
 * Holds on lots and containers. A hold reaches every blend made of what it holds, and goods of it that were sent to other
 * studios: those on their way arrive on hold, and an alert opens where they are. It stands until a release of its own, and
 * neither row is ever changed. What is recalled is released by two, but for what a decision on the recall releases.
 */
@Injectable()
export class Holds {
  constructor(
    private readonly transactions: Transactions,
    private readonly holdsInForce: HoldsInForce,
    private readonly conditions: StockConditions,
    private readonly transferConditions: TransferConditions,
    private readonly sentGoods: SentGoods,
    private readonly otherEnds: OtherEnds,
    private readonly releaseRequests: ReleaseRequests,
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
        told.push(...(await this.judge(transaction, [hold.id], [lotId])));
        return viewOf(hold, null);
      },
    );
    await this.otherEnds.judge(told);
    return view;
  }

  /** @throws Problem not-found; wrong-state when it is released already; second-person-needed */
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
        const admitted = await this.releaseRequests.admit(transaction, hold);
        const release = newRelease(
          transaction,
          holdId,
          { reason: dto.reason, occurredAt: occurredAt(dto.occurredAt, transaction.recordedAt) },
          admitted.request?.id,
        );
        await transaction.insert(HoldRelease, release);
        told.push(...(await this.judge(transaction, [hold.id], [lotId])));
        return viewOf(hold, release.occurredAt, admitted);
      },
    );
    await this.otherEnds.judge(told);
    return view;
  }

  /**
   * Holds many lots in the caller's transaction, whatever stands on them already: one hold each, with all that follows
   * from it judged once.
   * @returns the hold of each lot, by lot id
   * @throws Problem not-found naming the first lot that is not of the studio
   */
  async placeOnLots(
    transaction: Transaction,
    lotIds: readonly string[],
    said: SaidOfHolds,
  ): Promise<{ holdIds: Map<string, string> } & Told> {
    const ids = [...new Set(lotIds)];
    if (ids.length === 0) return { holdIds: new Map(), told: [] };
    const known = await transaction.query<{ id: string }>(
      `SELECT id FROM lot WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [transaction.studioId, ...ids],
    );
    if (known.length < ids.length) {
      const found = new Set(known.map(({ id }) => id));
      throw notFound('lot', ids.find((id) => !found.has(id)) ?? '');
    }
    await transaction.lock('lot', ids);
    const holds = ids.map((lotId) => newLotHold(transaction, lotId, said));
    await transaction.insert(Hold, holds);
    const told = await this.judge(
      transaction,
      holds.map(({ id }) => id),
      ids,
    );
    return { holdIds: new Map(holds.map(({ id, lotId }) => [lotId ?? '', id])), told };
  }

  /**
   * Releases many holds in the caller's transaction, with all that follows judged once. One that somebody released before
   * stays as it is.
   * @returns the holds that were released now
   * @throws Problem not-found naming the first hold that is not of the studio
   */
  async releaseMany(
    transaction: Transaction,
    holdIds: readonly string[],
    said: Pick<HoldRelease, 'reason' | 'occurredAt'>,
  ): Promise<{ releasedIds: string[] } & Told> {
    const ids = [...new Set(holdIds)];
    const lotOfHold = await this.lockLotsOf(transaction, ids);
    const unknown = ids.find((id) => !lotOfHold.has(id));
    if (unknown !== undefined) throw notFound('hold', unknown);
    const earlier = await this.releasedAmong(transaction, ids);
    const releasedIds = ids.filter((id) => !earlier.has(id));
    if (releasedIds.length === 0) return { releasedIds, told: [] };
    await transaction.insert(
      HoldRelease,
      releasedIds.map((holdId) => newRelease(transaction, holdId, said)),
    );
    const lotIds = releasedIds.map((id) => lotOfHold.get(id) ?? '');
    return { releasedIds, told: await this.judge(transaction, releasedIds, lotIds) };
  }

  /** @returns the studios that were told of it, since goods of the lots went there */
  private async judge(
    transaction: Transaction,
    holdIds: readonly string[],
    lotIds: readonly string[],
  ): Promise<string[]> {
    const told = await this.sentGoods.follow(transaction, lotIds);
    const { read, studioId } = transaction;
    const productIds = await this.holdsInForce.reachedProducts(read, studioId, holdIds);
    await this.conditions.reevaluate(transaction, productIds);
    await this.transferConditions.reevaluate(transaction);
    return told;
  }

  /** Locks the lots of holds, and the containers that are held by themselves. @returns lot ids by hold id */
  private async lockLotsOf(
    transaction: Transaction,
    holdIds: readonly string[],
  ): Promise<Map<string, string>> {
    if (holdIds.length === 0) return new Map();
    const rows = await transaction.query<{ id: string; lotId: string; containerId: string | null }>(
      `SELECT hold.id, coalesce(hold.lot_id, container.lot_id) AS "lotId", hold.container_id AS "containerId"
       FROM hold LEFT JOIN container
         ON container.studio_id = hold.studio_id AND container.id = hold.container_id
       WHERE hold.studio_id = $1 AND hold.id IN (${placeholders(holdIds)})`,
      [transaction.studioId, ...holdIds],
    );
    await transaction.lock(
      'lot',
      rows.map(({ lotId }) => lotId),
    );
    await transaction.lock(
      'container',
      rows.flatMap(({ containerId }) => containerId ?? []),
    );
    return new Map(rows.map(({ id, lotId }) => [id, lotId]));
  }

  private async releasedAmong(transaction: Transaction, holdIds: readonly string[]): Promise<Set<string>> {
    if (holdIds.length === 0) return new Set();
    const rows = await transaction.query<{ hold_id: string }>(
      `SELECT hold_id FROM hold_release WHERE studio_id = $1 AND hold_id IN (${placeholders(holdIds)})`,
      [transaction.studioId, ...holdIds],
    );
    return new Set(rows.map((row) => row.hold_id));
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
}

/** A hold on a whole lot, placed by the service itself. */
export function newLotHold(
  { studioId, recordedAt, actor }: Transaction,
  lotId: string,
  { kind, reason, note, occurredAt }: SaidOfHolds,
): Hold {
  const { personId, via } = actor;
  return {
    ...{ studioId, kind, lotId, reason, note, occurredAt, recordedAt, personId, via },
    id: uuidv7(),
    containerId: null,
  };
}

function newRelease(
  { studioId, recordedAt, actor }: Transaction,
  holdId: string,
  { reason, occurredAt }: Pick<HoldRelease, 'reason' | 'occurredAt'>,
  requestId: string | null = null,
): HoldRelease {
  const { personId, via } = actor;
  return { studioId, holdId, reason, requestId, occurredAt, recordedAt, personId, via };
}

/** Without the note: the answer of a write is kept, and a note is free text. */
function viewOf(
  { id, kind, lotId, containerId, reason, occurredAt }: Hold,
  releasedAt: string | null,
  { request, seenBy }: AdmittedRelease = { request: null, seenBy: null },
): HoldView {
  return {
    ...{ id, kind, lotId, containerId, reason, occurredAt, releasedAt },
    releaseRequest: request,
    releaseSeenBy: seenBy,
  };
}
