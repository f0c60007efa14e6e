import { describe, expect, it } from 'vitest';
import { orderEndings, purchaseOrderStates } from './order-states.js';
import { afterReceipt, endingOf, stepsOf } from './order-steps.js';

describe('the steps of a purchase order', () => {
  it('change nothing of what was approved, and send nothing that was not', () => {
    const states = purchaseOrderStates.filter((state) => stepsOf(state).includes('change'));
    expect(states).toEqual(['draft']);
    expect(purchaseOrderStates.filter((state) => stepsOf(state).includes('send'))).toEqual(['approved']);
  });

  it('end with what has ended', () => {
    expect(stepsOf('closed')).toEqual([]);
    expect(stepsOf('called off')).toEqual([]);
  });
});

describe('an order after goods came', () => {
  const nothing = { receivedPieces: 0, outstandingPieces: 10 };
  const part = { receivedPieces: 4, outstandingPieces: 6 };
  const all = { receivedPieces: 10, outstandingPieces: 0 };

  it.each([
    ['sent', nothing, 'sent'],
    ['sent', part, 'received in part'],
    ['sent', all, 'closed'],
    ['received in part', all, 'closed'],
    // It was sent in a way nobody recorded.
    ['approved', part, 'received in part'],
    ['approved', nothing, 'approved'],
    // Goods never move on what was not approved, nor open what has ended.
    ['draft', all, 'draft'],
    ['closed', part, 'closed'],
    ['called off', all, 'called off'],
  ] as const)('%s with %o is %s', (state, receipt, after) => {
    expect(afterReceipt(state, receipt)).toBe(after);
  });
});

describe('an order that a person ends', () => {
  it.each([
    ['call off', 0, 'called off', 'called off'],
    ['call off', 1, 'closed', 'rest called off'],
    ['close', 0, 'closed', 'closed short'],
    ['close', 5, 'closed', 'closed short'],
  ] as const)('%s after %i pieces: %s, %s', (step, pieces, state, endedAs) => {
    expect(endingOf(step, pieces)).toEqual({ state, endedAs });
    expect(orderEndings).toContain(endedAs);
  });
});
