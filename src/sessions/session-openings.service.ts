import { Injectable } from '@nestjs/common';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Container } from '../stock/container.entity.js';
import { openingAfterReversal } from './derived-opening.js';
import type { SessionUse } from './session-use.entity.js';

/**
 * What a session tells of the opening of its bottles: whatever was dropped, used or wasted of a sealed bottle was taken
 * out of an open one, so its opened life runs from then on, whether or not anybody said that it was opened.
 */
@Injectable()
export class SessionOpenings {
  /**
   * Records as opened what is still recorded as sealed: at its first drop into a cup of the session, else at the instant
   * that is told. The lots are locked.
   */
  async record(
    transaction: Transaction,
    sessionId: string,
    touched: readonly { containerId: string; occurredAt: string }[],
  ): Promise<void> {
    const { studioId, actor } = transaction;
    const ids = [...new Set(touched.map((thing) => thing.containerId))];
    if (ids.length === 0) return;
    const sealed = await transaction.query<{ id: string; version: number }>(
      `SELECT id, version FROM container
       WHERE studio_id = $1 AND form = 'bottle' AND state = 'sealed' AND id IN (${placeholders(ids)}) ORDER BY id`,
      [studioId, ...ids],
    );
    if (sealed.length === 0) return;
    const drops = await this.firstDrops(
      transaction,
      sessionId,
      sealed.map(({ id }) => id),
    );
    for (const { id, version } of sealed) {
      const told = touched.filter((thing) => thing.containerId === id).map((thing) => thing.occurredAt);
      const [first] = told.sort();
      const openedAt = drops.get(id) ?? first;
      if (openedAt === undefined) continue;
      await transaction.change(Container, 'container', { studioId, id }, version, {
        state: 'opened',
        openedAt,
        openedBy: actor.personId,
      });
    }
  }

  /** Takes back an opening that was only derived from a use which has just been reversed. The lot is locked. */
  async takeBack(transaction: Transaction, use: SessionUse): Promise<void> {
    const { studioId } = transaction;
    const { containerId: id, sessionId } = use;
    const container = await transaction.manager.findOneBy(Container, { studioId, id });
    if (container?.form !== 'bottle' || container.state !== 'opened' || container.openedAt === null) return;
    const { openedAt, version } = container;
    const drops = await this.firstDrops(transaction, sessionId, [id]);
    const derivedAt = [use.occurredAt, ...drops.values()];
    const after = openingAfterReversal({
      openedAt,
      derivedAt,
      standing: await this.standing(transaction, use),
    });
    if (after.openedAt === openedAt) return;
    const openedBy = after.state === 'sealed' ? null : container.openedBy;
    await transaction.change(Container, 'container', { studioId, id }, version, { ...after, openedBy });
  }

  /** By container id. A slip that was taken back again is no drop, but what was dropped first still opened the bottle. */
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

  /** When everything that still stands had the bottle open: uses with their drops, waste, blends, and cups of today. */
  private async standing(transaction: Transaction, { lotId, containerId }: SessionUse): Promise<string[]> {
    const ofBottle = `studio_id = $1 AND lot_id = $2 AND container_id = $3`;
    const rows = await transaction.query<{ at: string }>(
      `WITH standing_use AS (
         SELECT session_use.mix_id, session_use.occurred_at FROM session_use
         WHERE ${ofBottle} AND NOT EXISTS (
           SELECT 1 FROM session_use_reversal
           WHERE session_use_reversal.studio_id = session_use.studio_id
             AND session_use_reversal.use_id = session_use.id))
       SELECT occurred_at AS at FROM standing_use
       UNION
       SELECT mix_component.occurred_at
       FROM standing_use JOIN mix_component
         ON mix_component.studio_id = $1 AND mix_component.mix_id = standing_use.mix_id
       WHERE mix_component.container_id = $3 AND mix_component.microlitres > 0
       UNION
       SELECT mix_component.occurred_at
       FROM session JOIN mix_component
         ON mix_component.studio_id = session.studio_id AND mix_component.session_id = session.id
       WHERE session.studio_id = $1 AND session.state = 'in setup'
         AND mix_component.container_id = $3 AND mix_component.microlitres > 0
       UNION
       SELECT movement.occurred_at FROM movement
       WHERE ${ofBottle} AND movement.kind IN ('wasted', 'blended') AND movement.reverses_id IS NULL
         AND NOT EXISTS (
           SELECT 1 FROM movement AS later
           WHERE later.studio_id = movement.studio_id AND later.reverses_id = movement.id)
       UNION
       SELECT session.completed_at
       FROM tray_line JOIN session
         ON session.studio_id = tray_line.studio_id AND session.id = tray_line.session_id
       WHERE tray_line.studio_id = $1 AND tray_line.container_id = $3 AND tray_line.settled_as = 'opened unused'
         AND session.completed_at IS NOT NULL`,
      [transaction.studioId, lotId, containerId],
    );
    return rows.map((row) => row.at);
  }
}
