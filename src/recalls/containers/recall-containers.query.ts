import { recallLots, recallReach } from '../recall-lots.query.js';

/**
 * Each lot in which a recall is, once, as `reached_lots (lot_id, undecided, is_blend)`: `undecided` is 1 when all of the
 * recall’s lots that are in it are undecided. For the recall `$2` in the studio `$1`, after `WITH RECURSIVE`.
 */
export const reachedLots = `${recallLots}, ${recallReach}, reached_lots AS (
    SELECT lot_id, min(CASE standing WHEN 'affected' THEN 0 ELSE 1 END) AS undecided,
      CASE WHEN min(depth) > 0 THEN 1 ELSE 0 END AS is_blend
    FROM recall_reach GROUP BY lot_id)`;

/**
 * Every container of these lots, as `recall_containers (id, lot_id, undecided, is_blend, state, pieces, microlitres,
 * finding_id, standing, listed)`, after `reachedLots`. `listed` is 0 for what was used up before anybody looked. The walk
 * starts from the lots, of which a recall has few, and goes by the balances, which are indexed by their lot.
 */
export const recallContainers = `recall_containers AS (
    SELECT judged.id, judged.lot_id, judged.undecided, judged.is_blend, judged.state, judged.pieces, judged.microlitres,
      judged.finding_id,
      CASE WHEN judged.pieces > 0 OR judged.microlitres > 0 THEN coalesce((
          SELECT result FROM recall_finding
          WHERE recall_finding.studio_id = $1 AND recall_finding.id = judged.finding_id), 'not looked for')
        WHEN judged.disposed = 1 THEN 'disposed' ELSE 'gone' END AS standing,
      CASE WHEN judged.pieces > 0 OR judged.microlitres > 0 OR judged.finding_id IS NOT NULL OR judged.disposed = 1
        THEN 1 ELSE 0 END AS listed
    FROM (
      SELECT container.id, container.lot_id, reached_lots.undecided, reached_lots.is_blend, container.state,
        balance.pieces, balance.microlitres,
        (SELECT looked.id FROM recall_finding AS looked
         WHERE looked.studio_id = $1 AND looked.recall_id = $2 AND looked.container_id = container.id
         ORDER BY looked.recorded_at DESC, looked.id DESC LIMIT 1) AS finding_id,
        CASE WHEN EXISTS (
          SELECT 1 FROM recall_disposition
          WHERE recall_disposition.studio_id = $1 AND recall_disposition.recall_id = $2
            AND recall_disposition.container_id = container.id) THEN 1 ELSE 0 END AS disposed
      FROM reached_lots CROSS JOIN balance CROSS JOIN container
      WHERE balance.studio_id = $1 AND balance.lot_id = reached_lots.lot_id
        AND container.studio_id = $1 AND container.id = balance.container_id) AS judged)`;
