import type { PlanLineSummaryView } from '../../../reorder/plan/plans.views.js';

type Line = Pick<PlanLineSummaryView, 'lineNumber' | 'item' | 'level'>;

/** The lines whose minimum a plan would change: those that are free to, and those of which somebody set it by hand. */
export function levelChanges<Shown extends Line>(
  lines: readonly Shown[],
): { free: Shown[]; byHand: Shown[] } {
  const changing = lines.filter(
    // A minimum of nothing is no other than none.
    ({ level }) => level.minimumPieces !== null && level.minimumPieces !== (level.currentPieces ?? 0),
  );
  return {
    free: changing.filter(({ level }) => !level.setByHand),
    byHand: changing.filter(({ level }) => level.setByHand),
  };
}
