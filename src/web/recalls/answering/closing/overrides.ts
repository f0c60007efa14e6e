import type { ClosingObstacle, ClosingOverride } from '../../../../recalls/vocabulary.js';

/** Why it is closed all the same, as far as that was said; undefined: an obstacle is not overridden. */
export type Reasons = Partial<Record<ClosingObstacle, string | undefined>>;

/** What is overridden of what still stands: a reason for what was mended meanwhile is not sent. */
export function overridesOf(obstacles: readonly ClosingObstacle[], reasons: Reasons): ClosingOverride[] {
  return obstacles.flatMap((obstacle) => {
    const reason = reasons[obstacle]?.trim() ?? '';
    return reason === '' ? [] : [{ obstacle, reason }];
  });
}

/** What stands without a reason. */
export function standingWithout(obstacles: readonly ClosingObstacle[], reasons: Reasons): ClosingObstacle[] {
  return obstacles.filter((obstacle) => (reasons[obstacle]?.trim() ?? '') === '');
}
