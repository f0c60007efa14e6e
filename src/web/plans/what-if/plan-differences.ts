import type { PlanLineSummaryView } from '../../../reorder/plan/plans.views.js';

type Line = Pick<PlanLineSummaryView, 'item' | 'decision' | 'packs' | 'orderOn' | 'costMinor' | 'offerId'>;

export interface PlanDifference<Shown> {
  /** Null: the plan does not have it. */
  before: Shown | null;
  after: Shown;
}

/**
 * The items of which another thing would be decided, those with the greatest difference in cost first.
 * @param after of all items, or of those that were asked about
 */
export function planDifferences<Shown extends Line>(
  before: readonly Shown[],
  after: readonly Shown[],
): PlanDifference<Shown>[] {
  const known = new Map(before.map((line) => [keyOf(line), line]));
  return after
    .map((line) => ({ before: known.get(keyOf(line)) ?? null, after: line }))
    .filter((both) => both.before === null || isOther(both.before, both.after))
    .sort((one, other) => costOf(other) - costOf(one));
}

function keyOf({ item }: Line): string {
  return `${item.kind} ${item.key}`;
}

function isOther(before: Line, after: Line): boolean {
  return (
    before.decision !== after.decision ||
    before.packs !== after.packs ||
    before.orderOn !== after.orderOn ||
    before.offerId !== after.offerId
  );
}

function costOf({ before, after }: PlanDifference<Line>): number {
  return Math.abs((after.costMinor ?? 0) - (before?.costMinor ?? 0));
}
