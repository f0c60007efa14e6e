import type { TrayThingView } from '../../../sessions/tray.views.js';
import type { NoLonger } from '../../tray/part-to-repeat.js';
import { completionTexts } from './completion.js';
import { walkInTexts } from './walk-in.js';

export const trayTexts = {
  ...completionTexts,
  ...walkInTexts,

  tray: {
    title: 'Tray',
    of: (reference: string, procedure: string) => `For ${reference}, ${procedure}`,
    scan: 'Scan',
    scanHint: 'A hand-held scanner types here. Without one, type the lot or the code of the label.',
    judge: 'Judge it',
    nothingShown: 'Show the first thing. What may be used is said here.',
    notInSetup: (state: string) => `This session is ${state}, so nothing is laid out for it now.`,
    usableThrough: (day: string) => `Usable through ${day}`,
    expiredOn: (day: string) => `Use-by ${day}: that day is over.`,
    wasOpenThrough: (day: string, whose: string) => `Open too long: usable through ${day}, by ${whose}.`,
    onTrayNow: (count: number) => `${count} on the tray`,
    takeInstead: (label: string, code: string) => `Take ${label}, ${code}, instead.`,
    waiting: (count: number) =>
      `${count} ${count === 1 ? 'scan waits' : 'scans wait'} to be sent. What waits stays on this device and counts once, however often it is sent.`,
    pressesWait: (count: number) =>
      `${count} ${count === 1 ? 'press waits' : 'presses wait'} to be sent. What waits stays on this device and counts once, however often it is sent.`,
    sendAgain: 'Send again',
    oneMore: '+1, another piece',
    openIt: 'I open it now',
    takeBack: 'Take it back off',
    choice: (label: string, code: string, state: string) => `${label}, ${code}, ${state}`,
    lines: 'On the tray',
    linesCount: (count: number) => `On the tray (${count})`,
    linesHint:
      'What was admitted. Sterile barriers are checked by eye; the label and local codes come first.',
    runningTotal: (pieces: number, bottles: number) =>
      `${pieces} ${pieces === 1 ? 'piece' : 'pieces'}, ${bottles} ${bottles === 1 ? 'bottle' : 'bottles'}`,
    empty: 'Nothing yet.',
    lot: (code: string) => `lot ${code}`,
    pieces: (count: number) => `${count} ${count === 1 ? 'piece' : 'pieces'}`,
    takeOff: 'Take off',
    takeOneOff: 'Take one off',
    takeOffOf: (label: string, pieces: number) => `Take ${pieces > 1 ? 'one ' : ''}off: ${label}`,
    lacking: 'Still lacking:',
    gap: (count: number, label: string) => (count === 1 ? label : `${count} × ${label}`),
    moreLacking: (count: number) => `${count} more`,
    nothingLacking: 'Nothing of the kit list is lacking.',
    finish: 'Finish',

    mixes: 'Mixes',
    mixesCount: (count: number) => `Mixes (${count})`,
    newMix: 'New mix',
    mixNumber: (number: number) => `Mix ${number}`,
    bottlesOf: (mix: string) => `Bottles for ${mix}`,
    noBottles: 'No pigment lies on the tray yet. Scan the bottle first, so that its dates are judged.',
    drops: (count: number, written: string) => `${written} ${count === 1 ? 'drop' : 'drops'}`,
    microlitres: (written: string) => `about ${written} µl`,
    dropMore: '+1 drop',
    dropMoreOf: (label: string) => `+1 drop of ${label}`,
    dropBack: '−1',
    dropBackOf: (label: string) => `−1 drop of ${label}`,
    totalOf: (mix: string, amount: string) => `${mix}: ${amount}`,
  },

  lastVisit: {
    title: 'Last visit',
    none: 'There is no earlier visit on record that was mixed for.',
    was: (kind: string, procedure: string, day: string) => `${procedure}, ${kind}, on ${day}.`,
    noMix: 'Nothing was mixed then.',
    mix: (label: string) => `Mixed then: ${label}`,
    fromLot: (code: string | null) => (code === null ? 'from a lot without a code' : `from lot ${code}`),
    noLonger: {
      held: 'on hold now',
      finished: 'finished',
      'practice only': 'for practice only',
      expired: 'expired',
      'open too long': 'open too long',
    } satisfies Record<NoLonger, string>,
    onTray: 'On the tray: the same bottle.',
    otherBottle: (label: string) => `On the tray instead: another bottle of this lot, ${label}.`,
    otherLot: (code: string) => `On the tray instead: another lot, ${code}. Compare the colour.`,
    scanIt: (code: string | null) =>
      code === null
        ? 'Not on the tray: scan the bottle.'
        : `Not on the tray: scan the bottle of lot ${code}.`,
    takeLot: (code: string | null, label: string) =>
      `Take ${code === null ? label : `lot ${code} (${label})`} instead, and scan it.`,
    nothingInstead: 'No other bottle of it that may be used is here.',
    repeat: (leftOut: number) =>
      leftOut === 0
        ? 'Mix it again'
        : `Mix it again without ${leftOut === 1 ? 'the one that is' : `the ${leftOut} that are`} not on the tray`,
    repeated: 'Mixed again',
  },

  takeOver: {
    open: 'Somebody else takes over',
    title: 'Who takes over?',
    lead: 'This tray stays open. From then on, what is scanned and signed is theirs.',
    waiting: (count: number) =>
      `${count} ${count === 1 ? 'thing waits' : 'things wait'} to be sent. What was scanned stays with whoever scanned it, and is sent when they are signed in here again.`,
    noTablet: 'This device is no shared tablet any more. Sign out, then sign in by name.',
  },

  /** Why, in a word that is read at arm's length; the sentence beside it is the service's. */
  reasonWords: {
    recalled: 'Recalled',
    'on hold': 'On hold',
    expired: 'Expired',
    'open too long': 'Open too long',
    'practice only': 'For practice only',
    'already used': 'Used already',
    'none left': 'None left',
    'no date known': 'No date known',
    'date differs from the record': 'Two dates',
    'out of date before the touch-up': 'Too old for the touch-up',
    'an earlier-expiring one is here': 'An older one is here',
    'another bottle is open': 'Another one is open',
    "another artist's": 'Belongs to another artist',
    'not on the kit list': 'Not on the kit list',
    'another one?': 'Another one?',
    'which container?': 'Which bottle or box?',
    'which lot?': 'Which lot?',
  } as Record<string, string | undefined>,

  /** Whose opened life was counted. */
  whose: {
    label: 'the label’s opened life',
    assumed: 'the opened life this studio assumes',
    'sending studio': 'the word of the studio it came from',
    none: 'its opened life',
  } satisfies Record<TrayThingView['openedLifeFrom'], string>,
};
