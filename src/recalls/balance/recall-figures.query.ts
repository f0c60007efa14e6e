import { emptyReason } from '../../stock/container-ending.service.js';

/**
 * The movements of the recall’s lots and blends, as `booked (sequence, id, lot_id, pieces, microlitres, figure)`, after
 * `reachedLots` of `recall-containers.query.ts`. A reversal counts under the figure of what it reverses; goods that were
 * sent to another studio and called back are taken off what was transferred out.
 */
export const bookedFigures = `booked AS (
    SELECT movement.sequence, movement.id, movement.lot_id, movement.pieces, movement.microlitres,
      CASE
        WHEN movement.kind = 'transferred out' AND line.id IS NULL THEN 'moved between boxes'
        WHEN movement.kind = 'transferred in' AND goods.id IS NULL THEN 'moved between boxes'
        WHEN movement.kind = 'transferred in' AND outcome.kind = 'withdrawn' THEN 'transferred out'
        WHEN movement.kind <> 'adjusted' THEN movement.kind
        WHEN CASE WHEN movement.reverses_id IS NULL THEN movement.reason ELSE original.reason END = '${emptyReason}'
          THEN 'emptied'
        WHEN coalesce(original.pieces, movement.pieces) < 0
          OR coalesce(original.microlitres, movement.microlitres) < 0 THEN 'counted fewer'
        ELSE 'counted more' END AS figure
    FROM reached_lots CROSS JOIN movement
      LEFT JOIN movement AS original
        ON original.studio_id = $1 AND original.id = movement.reverses_id
      LEFT JOIN transfer_line AS line
        ON movement.kind = 'transferred out' AND line.studio_id = $1
          AND line.movement_id = coalesce(movement.reverses_id, movement.id)
      LEFT JOIN transfer_goods AS goods
        ON movement.kind = 'transferred in' AND goods.studio_id = $1
          AND goods.movement_id = coalesce(movement.reverses_id, movement.id)
      LEFT JOIN transfer_outcome AS outcome
        ON outcome.studio_id = goods.studio_id AND outcome.id = goods.outcome_id
    WHERE movement.studio_id = $1 AND movement.lot_id = reached_lots.lot_id)`;
