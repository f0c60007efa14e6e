export type SessionState = 'planned' | 'in setup' | 'completed' | 'cancelled' | 'not attended';
export type SessionStep = 'start setup' | 'complete' | 'cancel' | 'not attended' | 'change plan';

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
  /** Completes "A session can be … ". */
  words: string;
  trayMustBeEmpty: boolean;
}

const steps: Record<SessionStep, Step> = {
  'start setup': { from: ['planned'], to: 'in setup', words: 'set up', trayMustBeEmpty: false },
  complete: { from: ['in setup'], to: 'completed', words: 'completed', trayMustBeEmpty: false },
  cancel: { from: ['planned', 'in setup'], to: 'cancelled', words: 'cancelled', trayMustBeEmpty: true },
  'not attended': {
    from: ['planned', 'in setup'],
    to: 'not attended',
    words: 'marked as not attended',
    trayMustBeEmpty: true,
  },
  'change plan': {
    from: ['planned', 'in setup'],
    to: 'the same',
    words: 'planned anew',
    trayMustBeEmpty: false,
  },
};

const nextFrom: Record<SessionState, string> = {
  planned: 'Start its setup first.',
  'in setup': 'Complete it, or cancel it.',
  completed: 'What is wrong in a completed session is corrected by reversing a use and recording it again.',
  cancelled: 'Plan a new session.',
  'not attended': 'Plan a new session.',
};

/**
 * Decides a step in the life of a session:
 * planned → in setup → completed; planned or in setup → cancelled or not attended. A session ends once.
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
      message: `This session is ${state}. A session can be ${words} while it is ${from.join(' or ')}. ${nextFrom[state]}`,
    };
  }
  if (trayMustBeEmpty && onTray > 0) {
    const things = onTray === 1 ? '1 thing is' : `${onTray} things are`;
    return {
      allowed: false,
      why: 'tray not empty',
      message: `${things} still on the tray of this session. It can be ${words} once the tray is empty. Take each off the tray first; what was opened is then recorded as wasted.`,
    };
  }
  return { allowed: true, state: to === 'the same' ? state : to };
}
