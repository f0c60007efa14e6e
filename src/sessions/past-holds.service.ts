import { Injectable } from '@nestjs/common';
import type { Read } from '../stock/container-facts.service.js';
import type { HoldFact } from './tray-thing.js';

interface PastHoldRow extends HoldFact {
  containerId: string;
}

/** The holds that stood at an instant gone by, which judge what is recorded afterwards. */
@Injectable()
export class PastHolds {
  /** By container id: on the container, on its lot, and on any lot that was blended into it. */
  async at(
    read: Read,
    studioId: string,
    containerIds: readonly string[],
    instant: string,
  ): Promise<Map<string, HoldFact[]>> {
    const ids = [...new Set(containerIds)];
    const holds = new Map<string, HoldFact[]>();
    if (ids.length === 0) return holds;
    const wanted = ids.map((_, index) => `$${index + 3}`).join(', ');
    const rows = await read<PastHoldRow>(
      `WITH RECURSIVE standing AS (
         SELECT hold.id, hold.kind, hold.reason, hold.lot_id, hold.container_id
         FROM hold
         WHERE hold.studio_id = $1 AND hold.occurred_at <= $2 AND NOT EXISTS (
           SELECT 1 FROM hold_release
           WHERE hold_release.studio_id = hold.studio_id AND hold_release.hold_id = hold.id
             AND hold_release.occurred_at <= $2)),
       reached (hold_id, lot_id, depth) AS (
         SELECT standing.id, standing.lot_id, 0 FROM standing WHERE standing.lot_id IS NOT NULL
         UNION
         SELECT standing.id, blend_parent.lot_id, 1
         FROM standing JOIN blend_parent
           ON blend_parent.studio_id = $1 AND blend_parent.parent_container_id = standing.container_id
         UNION
         SELECT reached.hold_id, blend_parent.lot_id, 1
         FROM reached JOIN blend_parent
           ON blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = reached.lot_id)
       SELECT container.id AS "containerId", standing.kind, standing.reason,
         CASE WHEN reached.depth = 0 THEN 'lot' ELSE 'parent lot' END AS "on"
       FROM reached
         JOIN standing ON standing.id = reached.hold_id
         JOIN container ON container.studio_id = $1 AND container.lot_id = reached.lot_id
       WHERE container.id IN (${wanted})
       UNION ALL
       SELECT container.id, standing.kind, standing.reason, 'container'
       FROM standing JOIN container ON container.studio_id = $1 AND container.id = standing.container_id
       WHERE container.id IN (${wanted})`,
      [studioId, instant, ...ids],
    );
    for (const { containerId, ...hold } of rows) {
      holds.set(containerId, [...(holds.get(containerId) ?? []), hold]);
    }
    return holds;
  }
}
