import type { OrderEnding, PurchaseOrderState } from './order-states.js';

/** What a person may do with an order. */
export const orderSteps = ['change', 'approve', 'draft again', 'send', 'call off', 'close'] as const;
export type OrderStep = (typeof orderSteps)[number];

const byState: Readonly<Record<PurchaseOrderState, readonly OrderStep[]>> = {
  draft: ['change', 'approve', 'call off'],
  approved: ['draft again', 'send', 'call off'],
  sent: ['call off', 'close'],
  'received in part': ['call off', 'close'],
  closed: [],
  'called off': [],
};

/** What may be done with an order in this state. */
export function stepsOf(state: PurchaseOrderState): readonly OrderStep[] {
  return byState[state];
}

/** Whether anything is still to come of it. */
export function isUnderway(state: PurchaseOrderState): boolean {
  return state === 'sent' || state === 'received in part';
}

/**
 * Where an order stands after its lines were received anew. An order that was never sent is not moved on by goods that name
 * it, but for one that was approved: it was sent in a way nobody recorded. One that ended stays ended, whatever comes.
 *
 * @param receivedPieces of all its lines, each counted up to what was ordered
 * @param outstandingPieces what is missing of all its lines
 */
export function afterReceipt(
  state: PurchaseOrderState,
  { receivedPieces, outstandingPieces }: { receivedPieces: number; outstandingPieces: number },
): PurchaseOrderState {
  if (state === 'draft' || state === 'closed' || state === 'called off') return state;
  if (outstandingPieces === 0) return 'closed';
  return receivedPieces > 0 ? 'received in part' : state;
}

/** Where an order ends that is called off or closed by a person, and as what. */
export function endingOf(
  step: 'call off' | 'close',
  receivedPieces: number,
): { state: 'closed' | 'called off'; endedAs: OrderEnding } {
  if (step === 'close') return { state: 'closed', endedAs: 'closed short' };
  if (receivedPieces > 0) return { state: 'closed', endedAs: 'rest called off' };
  return { state: 'called off', endedAs: 'called off' };
}
