import type { ClosingObstacle } from '../../recalls/vocabulary.js';

/** The pages of one recall, in the order in which it is answered. Each is below the recall, `overview` is the recall itself. */
export const recallParts = [
  'overview',
  'containers',
  'exposures',
  'telling',
  'balance',
  'closing',
  'studios',
] as const;
export type RecallPart = (typeof recallParts)[number];

/** Where what stands against closing is mended. */
export const partOfObstacle: Record<ClosingObstacle, RecallPart> = {
  'undecided lots': 'overview',
  'clients not told': 'telling',
  'containers not found': 'containers',
  'stock without disposition': 'containers',
  'pieces unexplained': 'balance',
};

/** How much each part still asks for; of containers those that are not found, else those that still lie there. */
export function outstandingOf(
  obstacles: readonly { obstacle: ClosingObstacle; count: number }[],
): Partial<Record<RecallPart, number>> {
  const outstanding: Partial<Record<RecallPart, number>> = {};
  for (const { obstacle, count } of obstacles) {
    const part = partOfObstacle[obstacle];
    outstanding[part] = Math.max(outstanding[part] ?? 0, count);
  }
  return outstanding;
}
