import { Injectable } from '@nestjs/common';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { BlendDates } from '../stock/blend-dates.service.js';
import { Container } from '../stock/container.entity.js';
import { SentGoods } from '../stock/transfers/sent-goods.service.js';
import { earlierOpening, openingAfterReversal } from './derived-opening.js';
import type { SessionUse } from './session-use.entity.js';

/** A use that was not reversed. */
const useStands = `NOT EXISTS (
  SELECT 1 FROM session_use_reversal
  WHERE session_use_reversal.studio_id = session_use.studio_id AND session_use_reversal.use_id = session_use.id)`;

const useOfDrop = `SELECT 1 FROM session_use
  WHERE session_use.studio_id = mix_component.studio_id AND session_use.session_id = mix_component.session_id
    AND session_use.mix_id = mix_component.mix_id AND session_use.container_id = mix_component.container_id`;

/**
 * What was dropped first opened the bottle, also when it was taken back, wasted, or is in a cup of today; only where each
 * use of it turned out to be a mistake was there no drop.
 */
const dropStands = `mix_component.microlitres > 0
  AND (NOT EXISTS (${useOfDrop}) OR EXISTS (${useOfDrop} AND ${useStands}))`;

interface Bottle {
  id: string;
  lotId: string;
  productId: string;
  openedAt: string | null;
  openingToldAt: string | null;
  version: number;
}

interface Touch {
  containerId: string;
  occurredAt: string;
}

/**
 * What a session tells of the opening of its bottles: whatever was dropped, used or wasted of a bottle was taken out of
 * an open one, so its opened life runs from then on, whether or not anybody said that it was opened, or said it of later.
 */
@Injectable()
export class SessionOpenings {
  constructor(
    private readonly blendDates: BlendDates,
    private readonly sentGoods: SentGoods,
  ) {}

  /**
   * Records as opened what is still recorded as sealed, and as opened earlier what was opened later by the record: at its
   * first drop into a cup of the session or at the instant that is told, whichever came first. The lots of what was
   * touched are locked.
   * @param settled whether the tray is settled by it: then every bottle that was dropped from is recorded
   * @returns the products whose conditions are to be judged anew, those of blends that must end earlier among them
   */
  async record(
    transaction: Transaction,
    sessionId: string,
    touched: readonly Touch[],
    settled = false,
  ): Promise<string[]> {
    const drops = await this.standingDrops(transaction, sessionId);
    const ids = new Set(touched.map((thing) => thing.containerId));
    if (settled) {
      await transaction.lock(
        'lot',
        drops.map((drop) => drop.lotId),
      );
      for (const { containerId } of drops) ids.add(containerId);
    }
    const changed = new Set<string>();
    const movedBack: { containerId: string; from: string; to: string }[] = [];
    for (const bottle of await this.bottles(transaction, [...ids])) {
      const told = [...touched, ...drops].filter((thing) => thing.containerId === bottle.id);
      const openedAt = earlierOpening(
        bottle.openedAt,
        told.map((thing) => thing.occurredAt),
      );
      if (openedAt === null) continue;
      changed.add(bottle.productId);
      if (bottle.openedAt === null) await this.open(transaction, bottle, openedAt);
      else {
        movedBack.push({ containerId: bottle.id, from: bottle.openedAt, to: openedAt });
        for (const productId of await this.moveBack(transaction, bottle, bottle.openedAt, openedAt)) {
          changed.add(productId);
        }
      }
    }
    if (movedBack.length > 0) transaction.note({ openingsMovedBack: movedBack });
    return [...changed];
  }

  private async open(transaction: Transaction, { id, version }: Bottle, openedAt: string): Promise<void> {
    const { studioId, actor } = transaction;
    await transaction.change(Container, 'container', { studioId, id }, version, {
      state: 'opened',
      openedAt,
      openedBy: actor.personId,
      openingToldAt: null,
    });
  }

  /** Keeps an opening that was recorded for itself, for when the earlier use turns out to be a mistake. */
  private async moveBack(
    transaction: Transaction,
    bottle: Bottle,
    from: string,
    openedAt: string,
  ): Promise<string[]> {
    const { id, lotId, version } = bottle;
    const derived = await this.standing(transaction, { lotId, containerId: id });
    const openingToldAt = derived.includes(from) ? bottle.openingToldAt : from;
    const key = { studioId: transaction.studioId, id };
    await transaction.change(Container, 'container', key, version, { openedAt, openingToldAt });
    await this.sentGoods.follow(transaction, [lotId]);
    return this.blendDates.follow(transaction, { lotId, containerId: id });
  }

  /** Takes back an opening that was only derived from a use which has just been reversed. The lot is locked. */
  async takeBack(transaction: Transaction, use: SessionUse): Promise<void> {
    const { studioId } = transaction;
    const { containerId: id, sessionId } = use;
    const container = await transaction.manager.findOneBy(Container, { studioId, id });
    if (container?.form !== 'bottle' || container.state !== 'opened' || container.openedAt === null) return;
    const { openedAt, openingToldAt, version } = container;
    const drops = await this.firstDrops(transaction, sessionId, [id]);
    const derivedAt = [use.occurredAt, ...drops.values()];
    const after = openingAfterReversal({
      openedAt,
      derivedAt,
      standing: [
        ...(await this.standing(transaction, use)),
        ...(openingToldAt === null ? [] : [openingToldAt]),
      ],
    });
    if (after.openedAt === openedAt) return;
    const openedBy = after.state === 'sealed' ? null : container.openedBy;
    await transaction.change(Container, 'container', { studioId, id }, version, {
      ...after,
      openedBy,
      openingToldAt: after.openedAt === openingToldAt ? null : openingToldAt,
    });
  }

  /** By container id, mistaken or not. */
  private async firstDrops(
    transaction: Transaction,
    sessionId: string,
    containerIds: readonly string[],
  ): Promise<Map<string, string>> {
    const rows = await transaction.query<{ containerId: string; at: string }>(
      `SELECT container_id AS "containerId", min(occurred_at) AS at FROM mix_component
       WHERE studio_id = $1 AND session_id = $2 AND microlitres > 0 AND container_id IN (${placeholders(containerIds, 3)})
       GROUP BY container_id`,
      [transaction.studioId, sessionId, ...containerIds],
    );
    return new Map(rows.map((row) => [row.containerId, row.at]));
  }

  /** The first drop of each container into the cups of the session. */
  private standingDrops(transaction: Transaction, sessionId: string): Promise<(Touch & { lotId: string })[]> {
    return transaction.query(
      `SELECT container_id AS "containerId", lot_id AS "lotId", min(occurred_at) AS "occurredAt" FROM mix_component
       WHERE studio_id = $1 AND session_id = $2 AND ${dropStands}
       GROUP BY container_id, lot_id`,
      [transaction.studioId, sessionId],
    );
  }

  /** Sealed bottles, and those that were opened once; neither what is for practice nor what ended unopened. */
  private async bottles(transaction: Transaction, ids: readonly string[]): Promise<Bottle[]> {
    if (ids.length === 0) return [];
    return transaction.query(
      `SELECT container.id, container.lot_id AS "lotId", lot.product_id AS "productId",
         container.opened_at AS "openedAt", container.opening_told_at AS "openingToldAt", container.version
       FROM container JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
       WHERE container.studio_id = $1 AND container.form = 'bottle'
         AND (container.state = 'sealed' OR container.opened_at IS NOT NULL)
         AND container.id IN (${placeholders(ids)}) ORDER BY container.id`,
      [transaction.studioId, ...ids],
    );
  }

  /** When everything that still stands had the bottle open: uses, drops, waste, blends, and what was opened unused. */
  private async standing(
    transaction: Transaction,
    { lotId, containerId }: Pick<SessionUse, 'lotId' | 'containerId'>,
  ): Promise<string[]> {
    const ofBottle = 'studio_id = $1 AND lot_id = $2 AND container_id = $3';
    const rows = await transaction.query<{ at: string }>(
      `SELECT occurred_at AS at FROM session_use WHERE ${ofBottle} AND ${useStands}
       UNION
       SELECT occurred_at FROM mix_component WHERE ${ofBottle} AND ${dropStands}
       UNION
       SELECT movement.occurred_at FROM movement
       WHERE ${ofBottle} AND movement.kind IN ('wasted', 'blended') AND movement.reverses_id IS NULL
         AND NOT EXISTS (
           SELECT 1 FROM movement AS later
           WHERE later.studio_id = movement.studio_id AND later.reverses_id = movement.id)
       UNION
       SELECT settled_at FROM tray_line WHERE ${ofBottle} AND settled_as = 'opened unused'`,
      [transaction.studioId, lotId, containerId],
    );
    return rows.map((row) => row.at);
  }
}
