import type { ClaimState } from './vocabulary.js';

/** What a person may do with a claim. */
export const claimSteps = ['change', 'send', 'settle', 'drop'] as const;
export type ClaimStep = (typeof claimSteps)[number];

const byState: Readonly<Record<ClaimState, readonly ClaimStep[]>> = {
  open: ['change', 'send', 'settle', 'drop'],
  sent: ['settle', 'drop'],
  settled: [],
  dropped: [],
};

/** What may be done with a claim in this state. A supplier may settle what was only said on the telephone. */
export function claimStepsOf(state: ClaimState): readonly ClaimStep[] {
  return byState[state];
}

/** Where a step leads. */
export function claimStateAfter(step: Exclude<ClaimStep, 'change'>): ClaimState {
  return ({ send: 'sent', settle: 'settled', drop: 'dropped' } as const)[step];
}
