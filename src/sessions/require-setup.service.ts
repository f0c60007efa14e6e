import { Problem } from '../platform/problem.js';

/** @throws Problem wrong-state when the tray of a session is not open */
export function requireSetup(state: string): void {
  if (state === 'in setup') return;
  const next =
    state === 'planned'
      ? 'Start its setup first.'
      : state === 'completed'
        ? 'What was used besides is added to the completed session by an amendment.'
        : 'Plan a new session.';
  throw new Problem(409, 'wrong-state', `The session is ${state}; its tray is open only in setup. ${next}`, {
    state,
  });
}
