import { expect, it } from 'vitest';
import { claimStateAfter, claimStepsOf } from './claim-steps.js';
import { claimStates } from './vocabulary.js';

it('changes what the supplier was told of too, and nothing that ended', () => {
  expect(claimStates.filter((state) => claimStepsOf(state).includes('change'))).toEqual(['open', 'sent']);
  expect(claimStepsOf('settled')).toEqual([]);
  expect(claimStepsOf('dropped')).toEqual([]);
});

it('leads to a state of its own by each step; what was changed is sent again', () => {
  const steps = ['change', 'send', 'settle', 'drop'] as const;
  expect(steps.map(claimStateAfter)).toEqual(['open', 'sent', 'settled', 'dropped']);
  expect(claimStepsOf(claimStateAfter('change'))).toContain('send');
});
