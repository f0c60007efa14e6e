import type { Outcome } from '../../../sessions/completion-rules.js';

const outcomes = {
  used: 'Used',
  'opened unused': 'Opened, not used',
  'back unopened': 'Back, unopened',
} satisfies Record<Outcome, string>;

const counted: Record<Outcome, string> = {
  used: 'used',
  'opened unused': 'opened, not used',
  'back unopened': 'back',
};

export const completionTexts = {
  completion: {
    title: 'Finish the session',
    doneTitle: 'Session finished',
    lead: 'Gloves off. What most likely happened is filled in; change what was otherwise.',
    outcomes,
    things: 'What became of each',
    thingsHint:
      'Pieces were used, bottles in a mix were used, other bottles go back: change what was otherwise. An opened wrapper is never “back”.',
    nothing: 'Nothing lies on the tray. What was used all the same can be added by its wrapper.',
    inMix: (amount: string, mix: string) => `${amount} in ${mix}`,
    wrapperShown: 'Its wrapper was shown.',
    heldQuestion: 'Was it used or not?',
    reason: 'Why it was used',
    reasonHint: 'May be left out. Kept under lock with the client’s record.',
    dropsOutside: (label: string) => `Drops of ${label} outside a mix`,
    dropsUnknown: 'amount not known',
    wrappers: 'Wrappers',
    wrappersHint:
      'Not needed. A wrapper of the tray marks its line; one that was never on the tray can be added as used.',
    lookUp: 'Look it up',
    unknownWrapper:
      'Nothing of this studio has that symbol or code. Look at the label again, or record it later in the session’s record.',
    notOnTray: 'This was not on the tray. Was it used? It is recorded all the same, whatever its dates.',
    oneMoreThanLaid:
      'All wrappers of these pieces were shown already. Was one more used than lay on the tray? If this one was shown twice, it was not.',
    usedBesidesOf: (label: string, code: string, state: string) => `Used: ${label}, ${code}, ${state}`,
    notUsed: 'It was not used',
    besides: 'Used besides the tray',
    besidesFact: 'Used, though it was not on the tray.',
    amountOf: (label: string) => `How much of ${label}`,
    lessOf: (label: string) => `−1: one less of ${label}`,
    moreOf: (label: string) => `+1: one more of ${label}`,
    remove: 'Leave it out',
    removeOf: (label: string) => `Leave it out: ${label}`,
    signing: 'Sign-off',
    signingHint: 'Whoever signs says that this is what happened.',
    complications: 'Complications',
    none: 'None',
    some: 'There were some',
    which: 'Which ones',
    whichHint: 'Kept under lock with the client’s record.',
    signedBy: 'Signed by',
    me: 'Whoever is signed in',
    waiting: (count: number) =>
      `${count} ${count === 1 ? 'thing' : 'things'} scanned or dropped still ${count === 1 ? 'waits' : 'wait'} to be sent. The session can be finished when they have arrived.`,
    ofOthers: (count: number) =>
      `${count} ${count === 1 ? 'thing' : 'things'} somebody else scanned or dropped at this tray still ${count === 1 ? 'waits' : 'wait'} on this device. Let them sign in here before the session is finished.`,
    undecided: (count: number) =>
      `${count === 1 ? 'One thing is' : `${count} things are`} on hold: say whether used or not.`,
    counted: (count: number, outcome: Outcome) => `${count} ${counted[outcome]}`,
    backToTray: 'Back to the tray',
    complete: 'Finish and sign',
    done: 'Finished and signed. Everything below is booked.',
    booked: 'What was booked',
    bookedHint: 'What turns out otherwise is corrected in the record; nothing is ever overwritten.',
    toRecord: 'The session’s record',
    toToday: 'Back to today',
  },
};
