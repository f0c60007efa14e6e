import type { SessionState } from './vocabulary.js';

export type SessionStep =
  | 'start setup'
  | 'use tray'
  | 'complete'
  | 'amend'
  | 'cancel'
  | 'not attended'
  | 'change plan';

/** What stands in the way of leaving setup without completing. */
export interface SessionProgress {
  state: SessionState;
  /** Single-use things that lie on the tray of this session now; shared bottles do not count. */
  onTray: number;
}

export type StepDecision =
  | { allowed: true; state: SessionState }
  | { allowed: false; why: 'wrong state' | 'tray not empty'; message: string };

interface Step {
  from: readonly SessionState[];
  to: SessionState | 'the same';
  /** What can be done, in words. */
  words: string;
  trayMustBeEmpty: boolean;
}

const steps: Record<SessionStep, Step> = {
  'start setup': {
    from: ['planned'],
    to: 'in setup',
    words: 'A session can be set up',
    trayMustBeEmpty: false,
  },
  'use tray': {
    from: ['in setup'],
    to: 'the same',
    words: 'Its tray and its mixes can be used',
    trayMustBeEmpty: false,
  },
  complete: {
    from: ['in setup'],
    to: 'completed',
    words: 'A session can be completed',
    trayMustBeEmpty: false,
  },
  amend: { from: ['completed'], to: 'the same', words: 'A session can be amended', trayMustBeEmpty: false },
  cancel: {
    from: ['planned', 'in setup'],
    to: 'cancelled',
    words: 'A session can be cancelled',
    trayMustBeEmpty: true,
  },
  'not attended': {
    from: ['planned', 'in setup'],
    to: 'not attended',
    words: 'A session can be marked as not attended',
    trayMustBeEmpty: true,
  },
  'change plan': {
    from: ['planned', 'in setup'],
    to: 'the same',
    words: 'A session can be planned anew',
    trayMustBeEmpty: false,
  },
};

const nextFrom: Record<SessionState, string> = {
  planned: 'Start its setup first.',
  'in setup': 'Change its tray, complete it, or cancel it.',
  completed:
    'A completed session is amended: what is wrong is reversed and recorded again, what it lacks is added.',
  cancelled: 'Plan a new session.',
  'not attended': 'Plan a new session.',
};

/**
 * Decides a step in the life of a session:
 * planned → in setup → completed; planned or in setup → cancelled or not attended. A session ends once. Its tray is open
 * only in setup; only what is completed is amended.
 * Whoever leaves setup without completing first empties the tray, for each thing on it must be accounted for.
 *
 * @returns the state the step leads to, or what stands in its way, in words for a person
 */
export function decideStep(step: SessionStep, progress: SessionProgress): StepDecision {
  const { from, to, words, trayMustBeEmpty } = steps[step];
  const { state, onTray } = progress;
  if (!from.includes(state)) {
    return {
      allowed: false,
      why: 'wrong state',
      message: `This session is ${state}. ${words} while it is ${from.join(' or ')}. ${nextFrom[state]}`,
    };
  }
  if (trayMustBeEmpty && onTray > 0) {
    const things = onTray === 1 ? '1 thing is' : `${onTray} things are`;
    return {
      allowed: false,
      why: 'tray not empty',
      message: `${things} still on the tray of this session. ${words} once its tray is empty. Take each off the tray first, with the outcome "opened unused" when it was opened: it is then recorded as wasted.`,
    };
  }
  return { allowed: true, state: to === 'the same' ? state : to };
}
