import { describe, expect, it } from 'vitest';
import { decideStep, type SessionStep } from './session-states.js';
import { type SessionState, sessionStates } from './vocabulary.js';

/** Every transition there is; all others are refused. */
const transitions: [SessionState, SessionStep, SessionState][] = [
  ['planned', 'start setup', 'in setup'],
  ['planned', 'cancel', 'cancelled'],
  ['planned', 'not attended', 'not attended'],
  ['planned', 'change plan', 'planned'],
  ['in setup', 'use tray', 'in setup'],
  ['in setup', 'complete', 'completed'],
  ['in setup', 'cancel', 'cancelled'],
  ['in setup', 'not attended', 'not attended'],
  ['in setup', 'change plan', 'in setup'],
  ['completed', 'amend', 'completed'],
];
const steps: SessionStep[] = [
  'start setup',
  'use tray',
  'complete',
  'amend',
  'cancel',
  'not attended',
  'change plan',
];

describe('the life of a session', () => {
  it.each(transitions)('leads from %s by "%s" to %s', (state, step, next) => {
    expect(decideStep(step, { state, onTray: 0 })).toEqual({ allowed: true, state: next });
  });

  const refused = sessionStates.flatMap((state) =>
    steps
      .filter((step) => !transitions.some(([from, by]) => from === state && by === step))
      .map((step) => [state, step] as const),
  );
  it.each(refused)('does not lead on from %s by "%s", and says why', (state, step) => {
    const decision = decideStep(step, { state, onTray: 0 });
    expect(decision).toMatchObject({ allowed: false, why: 'wrong state' });
    expect('message' in decision && decision.message).toContain(`This session is ${state}. `);
  });

  it('says of a completed session how it is corrected', () => {
    expect(decideStep('complete', { state: 'completed', onTray: 0 })).toEqual({
      allowed: false,
      why: 'wrong state',
      message:
        'This session is completed. A session can be completed while it is in setup. A completed session is amended: what is wrong is reversed and recorded again, what it lacks is added.',
    });
  });

  it.each(['cancel', 'not attended'] as const)('refuses "%s" while things lie on the tray', (step) => {
    expect(decideStep(step, { state: 'in setup', onTray: 1 })).toMatchObject({
      allowed: false,
      why: 'tray not empty',
    });
    const decision = decideStep(step, { state: 'in setup', onTray: 3 });
    expect('message' in decision && decision.message).toContain('3 things are still on the tray');
  });

  it('completes and changes plans whatever lies on the tray', () => {
    expect(decideStep('complete', { state: 'in setup', onTray: 3 })).toEqual({
      allowed: true,
      state: 'completed',
    });
    expect(decideStep('change plan', { state: 'in setup', onTray: 3 })).toEqual({
      allowed: true,
      state: 'in setup',
    });
  });
});
