/**
 * A row of `recall_lot` that counts: a lot that was possible at first and became certain, as its code was corrected, has two.
 */
export const surestGrade = `(recall_lot.grade = 'certain' OR NOT EXISTS (
      SELECT 1 FROM recall_lot AS surer
      WHERE surer.studio_id = recall_lot.studio_id AND surer.recall_id = recall_lot.recall_id
        AND surer.scope_number = recall_lot.scope_number AND surer.lot_id = recall_lot.lot_id
        AND surer.grade = 'certain'))`;

/** How a row of `recall_lot` stands: `affected`, `not affected` or `undecided`, by the latest decision; certain is affected. */
export const standingOfLot = `CASE WHEN recall_lot.grade = 'certain' THEN 'affected' ELSE coalesce((
      SELECT decided.decision FROM recall_lot_decision AS decided
      WHERE decided.studio_id = recall_lot.studio_id AND decided.recall_id = recall_lot.recall_id
        AND decided.lot_id = recall_lot.lot_id
      ORDER BY decided.recorded_at DESC, decided.id DESC LIMIT 1), 'undecided') END`;

/**
 * How the lots of the recall `$2` in the studio `$1` stand now, as `recall_lots (lot_id, item_index, grade, reasons,
 * standing)`: what its latest scope meets, with the latest decision on what is only possible.
 */
export const recallLots = `recall_lots AS (
    SELECT recall_lot.lot_id, recall_lot.item_index, recall_lot.grade, recall_lot.reasons,
      ${standingOfLot} AS standing
    FROM recall_lot
    WHERE recall_lot.studio_id = $1 AND recall_lot.recall_id = $2 AND recall_lot.scope_number = (
      SELECT max(number) FROM recall_scope WHERE studio_id = $1 AND recall_id = $2)
      AND ${surestGrade})`;

/**
 * With `recallLots` before it in one `WITH RECURSIVE`: the lots in which a recall's lots are, as `recall_reach (lot_id,
 * source_lot_id, standing, depth)`: the affected and the undecided ones themselves at depth 0, every house blend made of
 * them at depth 1. A blend has a row for each lot of the recall that is in it.
 */
export const recallReach = `recall_reach (lot_id, source_lot_id, standing, depth) AS (
    SELECT lot_id, lot_id, standing, 0 FROM recall_lots WHERE standing <> 'not affected'
    UNION
    SELECT blend_parent.lot_id, recall_reach.source_lot_id, recall_reach.standing, 1
    FROM recall_reach CROSS JOIN blend_parent
    WHERE blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = recall_reach.lot_id)`;
