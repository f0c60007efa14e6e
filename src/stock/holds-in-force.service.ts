import { Injectable } from '@nestjs/common';
import { placeholders, type Read, type SqlValue } from '../platform/database/database.js';
import type { HoldKind, HoldReason } from './vocabulary.js';

/** A hold that stands on a container by itself, on its lot, or on a lot that was blended into it at any depth. */
export interface HoldInForce {
  holdId: string;
  kind: HoldKind;
  reason: HoldReason;
  /** Where it was placed; `parent lot`: on a lot that was blended into this one. */
  on: 'container' | 'lot' | 'parent lot';
}

/** Which containers: a condition on the columns of `container`, whose first parameter is the studio. */
export interface ContainersMeant {
  where: string;
  parameters: readonly SqlValue[];
}

interface HoldRow extends HoldInForce {
  containerId: string;
}

/**
 * The holds of the studio `$1` that stand: placed and not released.
 * @param at placeholder of an instant gone by, by whose record it is judged; left out: now
 */
function standing(at?: string): string {
  const by = (table: string) => (at === undefined ? '' : ` AND ${table}.occurred_at <= ${at}`);
  return `SELECT hold.id, hold.kind, hold.reason, hold.lot_id, hold.container_id
    FROM hold
    WHERE hold.studio_id = $1${by('hold')} AND NOT EXISTS (
      SELECT 1 FROM hold_release
      WHERE hold_release.studio_id = hold.studio_id AND hold_release.hold_id = hold.id${by('hold_release')})`;
}

/**
 * The lots that holds reach, as `reached (hold_id, lot_id, depth)` of a recursive query whose `held` names the holds: the
 * held lot at depth 0, and every blend made of what is held. The walk starts from the holds, of which most studios have
 * few. SQLite keeps the order of cross joins, so that it never begins at all containers or all blends instead.
 */
const reachedLots = `reached (hold_id, lot_id, depth) AS (
    SELECT held.id, held.lot_id, 0 FROM held WHERE held.lot_id IS NOT NULL
    UNION
    SELECT held.id, blend_parent.lot_id, 1
    FROM held CROSS JOIN container CROSS JOIN blend_parent
    WHERE container.studio_id = $1 AND container.id = held.container_id
      AND blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = container.lot_id
      AND blend_parent.parent_container_id = container.id
    UNION
    SELECT reached.hold_id, blend_parent.lot_id, 1
    FROM reached CROSS JOIN blend_parent
    WHERE blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = reached.lot_id)`;

/** The holds that stand, now or at an instant gone by, inside a transaction or outside. */
@Injectable()
export class HoldsInForce {
  /**
   * By container id: on the container, on its lot, and on any lot blended into it.
   * @param at instant gone by, which judges what is recorded afterwards; left out: now
   */
  async reaching(
    read: Read,
    { where, parameters }: ContainersMeant,
    at?: string,
  ): Promise<Map<string, HoldInForce[]>> {
    const instant = at === undefined ? undefined : `$${parameters.length + 1}`;
    const rows = await read<HoldRow>(
      `WITH RECURSIVE held AS (${standing(instant)}), ${reachedLots}
       SELECT container.id AS "containerId", held.id AS "holdId", held.kind, held.reason,
         CASE WHEN reached.depth = 0 THEN 'lot' ELSE 'parent lot' END AS "on"
       FROM reached CROSS JOIN held CROSS JOIN container
       WHERE held.id = reached.hold_id AND container.lot_id = reached.lot_id AND ${where}
       UNION ALL
       SELECT container.id, held.id, held.kind, held.reason, 'container'
       FROM held CROSS JOIN container
       WHERE container.id = held.container_id AND ${where}`,
      at === undefined ? parameters : [...parameters, at],
    );
    const holds = new Map<string, HoldInForce[]>();
    for (const { containerId, ...hold } of rows) {
      const known = holds.get(containerId);
      if (known) known.push(hold);
      else holds.set(containerId, [hold]);
    }
    return holds;
  }

  /** The same for containers named by their ids. */
  async reachingContainers(
    read: Read,
    studioId: string,
    containerIds: readonly string[],
    at?: string,
  ): Promise<Map<string, HoldInForce[]>> {
    const ids = [...new Set(containerIds)];
    if (ids.length === 0) return new Map();
    const where = `container.studio_id = $1 AND container.id IN (${placeholders(ids)})`;
    return this.reaching(read, { where, parameters: [studioId, ...ids] }, at);
  }

  /** Products of what recorded holds name and of every blend made of it, at any depth. */
  async reachedProducts(read: Read, studioId: string, holdIds: readonly string[]): Promise<string[]> {
    if (holdIds.length === 0) return [];
    const rows = await read<{ product_id: string }>(
      `WITH RECURSIVE held AS (
         SELECT id, lot_id, container_id FROM hold WHERE studio_id = $1 AND id IN (${placeholders(holdIds)})),
       ${reachedLots}
       SELECT DISTINCT product_id FROM lot
       WHERE studio_id = $1 AND (id IN (SELECT lot_id FROM reached) OR id IN (
         SELECT container.lot_id FROM held CROSS JOIN container
         WHERE container.studio_id = $1 AND container.id = held.container_id))
       ORDER BY product_id`,
      [studioId, ...holdIds],
    );
    return rows.map((row) => row.product_id);
  }
}
