import type { ClaimState } from './vocabulary.js';

/** What a person may do with a claim. */
export type ClaimStep = 'change' | 'send' | 'settle' | 'drop';

const byState: Readonly<Record<ClaimState, readonly ClaimStep[]>> = {
  open: ['change', 'send', 'settle', 'drop'],
  sent: ['change', 'settle', 'drop'],
  settled: [],
  dropped: [],
};

/** What may be done with a claim in this state. A supplier may settle what was only said on the telephone. */
export function claimStepsOf(state: ClaimState): readonly ClaimStep[] {
  return byState[state];
}

/** Where a step leads. What the supplier was told of and was changed since has to be sent again. */
export function claimStateAfter(step: ClaimStep): ClaimState {
  return ({ change: 'open', send: 'sent', settle: 'settled', drop: 'dropped' } as const)[step];
}
