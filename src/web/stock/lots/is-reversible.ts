import type { MovementView } from '../../../stock/lot-list.views.js';

/** What belongs to something else is amended there: to a transfer or a move between boxes, or to a house blend. */
const partsOfMore: ReadonlySet<string> = new Set([
  'transferred in',
  'transferred out',
  'blended',
  'produced',
]);

/** Whether a movement can be taken back by itself; the service has the last word. */
export function isReversible({
  kind,
  reversesId,
  reversedById,
  sessionId,
}: Pick<MovementView, 'kind' | 'reversesId' | 'reversedById' | 'sessionId'>): boolean {
  return reversesId === null && reversedById === null && sessionId === null && !partsOfMore.has(kind);
}
