import type { PlanState } from './vocabulary.js';

/** So often a night's plan is tried that fails. */
export const mostAttempts = 3;

/**
 * What is to be done for the plan of a day: it is asked for until one is done, a person ends one, or so many have failed.
 *
 * @param states of the plans of that day
 */
export function nightlyStep(states: readonly PlanState[]): 'ask' | 'wait' | 'rest' {
  if (states.includes('done')) return 'rest';
  if (states.includes('waiting') || states.includes('running')) return 'wait';
  if (states.includes('cancelled')) return 'rest';
  return states.length < mostAttempts ? 'ask' : 'rest';
}
