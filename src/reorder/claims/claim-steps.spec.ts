import { expect, it } from 'vitest';
import { claimStateAfter, claimStepsOf } from './claim-steps.js';
import { claimStates } from './vocabulary.js';

it('changes only what the supplier was not told of, and nothing that ended', () => {
  expect(claimStates.filter((state) => claimStepsOf(state).includes('change'))).toEqual(['open']);
  expect(claimStepsOf('settled')).toEqual([]);
  expect(claimStepsOf('dropped')).toEqual([]);
});

it('leads to a state of its own by each step', () => {
  expect((['send', 'settle', 'drop'] as const).map(claimStateAfter)).toEqual(['sent', 'settled', 'dropped']);
});
