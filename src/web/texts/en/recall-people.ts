import type { ContactStanding } from '../../../recalls/contacts/contact-standing.js';
import type { ContactState } from '../../../recalls/exposures/contact-state.js';
import type { Certainty, ExposureReason } from '../../../recalls/exposures/exposure-certainty.js';
import type { HowSure } from '../../../recalls/messages/legal-element.js';
import type { MessageLanguage } from '../../../recalls/messages/message-facts.js';
import type { ContactAudience, ContactChannel } from '../../../recalls/vocabulary.js';

const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

export const recallPeopleTexts = {
  recallExposures: {
    totals: 'Whom it touched',
    totalsHint:
      'Directly, in a mix or through house blends, at every kind of visit. Possible ones are counted by themselves.',
    figures: {
      certain: 'clients, for certain',
      possible: 'clients, possibly',
      sessions: 'sessions',
      uses: 'uses',
    },
    ofKind: (kind: string, sessions: number) => `${kind}: ${count(sessions, 'session', 'sessions')}`,
    openLotUses: (number: number) =>
      `${count(number, 'use was', 'uses were')} recorded as another lot, picked from a list, on a day on which a recalled one was open: possible.`,
    unknownAmounts: (number: number) => `Of ${count(number, 'use', 'uses')} nobody knows how much it was.`,
    reversedUses: (number: number) =>
      `${count(number, 'use was', 'uses were')} recorded by mistake and taken back: not counted.`,
    erasedClients: (number: number) =>
      `${count(number, 'client was', 'clients were')} erased and cannot be told any more.`,
    spreadsheet: 'As a spreadsheet (XLSX)',
    csv: 'As a table (CSV)',
    certainties: { certain: 'touched for certain', possible: 'possibly touched' } satisfies Record<
      Certainty,
      string
    >,
    reasons: {
      'lot undecided': 'Possible: nobody has decided yet whether the lot is affected.',
      'lot picked from a list': 'Possible: its lot was picked from a list and may have been another.',
      'another open lot that day':
        'Possible: recorded as another lot, picked from a list, while a recalled one was open that day.',
    } satisfies Record<ExposureReason, string>,
    clients: 'Client by client',
    clientsHint: 'By reference; their names stand where they are told. Those touched for certain come first.',
    filter: 'Show',
    all: 'all',
    noClients: 'No client was touched.',
    noneOfThese: 'Nobody of this kind.',
    show: 'Sessions',
    showOf: (reference: string) => `Show the sessions of ${reference}`,
    hide: 'Hide',
    hideOf: (reference: string) => `Hide the sessions of ${reference}`,
    allSessions: 'Session by session',
    allSessionsHint: 'In the order in which they happened, with the reason where it is only possible.',
    showAllSessions: 'Show all sessions',
    sessionsOf: (reference: string) => `Sessions of ${reference}`,
    sessions: (number: number) => count(number, 'session', 'sessions'),
    span: (from: string, through: string) => `${from} – ${through}`,
    contactStates: {
      'not tried': 'not told yet',
      reached: 'told',
      refused: 'did not want to be told',
      'no answer': 'tried, no answer',
      'message left': 'a message was left',
      unreachable: 'cannot be reached',
      'erased, cannot be told': 'erased, cannot be told',
    } satisfies Record<ContactState, string>,
    by: (name: string) => `by ${name}`,
    recordedFrom: { late: 'recorded afterwards', paper: 'recorded afterwards, from paper' },
    lot: (code: string) => `lot ${code}`,
    noCode: 'no lot code',
    about: (volume: string) => `about ${volume}`,
    unknownAmount: 'amount not known',
    through: { mix: 'in a mix', 'house blend': 'a house blend' },
    openThatDay: (lot: string) => `Open that day: ${lot}`,
    inBlend: (lot: string) => `In it: ${lot}`,
    shareInBlend: (lot: string, volume: string) => `In it: ${lot}, about ${volume}`,
    againstRefusal: 'It had been refused, and was used all the same.',
    planned: 'Whom it would touch next',
    plannedHint: 'Sessions in setup or planned that would use a recalled lot, and what to take instead.',
    noPlanned: 'No session in setup or planned would use it.',
    onTray: (lot: string) => `On the tray: ${lot}`,
    inCup: (lot: string) => `In a mix on the tray: ${lot}`,
    follows: 'Its mix would be repeated from',
    kitEnough: (label: string) => `Its kit list asks for ${label}. Other lots are enough:`,
    kitShort: (label: string, pieces: number) =>
      `Its kit list asks for ${label}. Of other lots there are only ${pieces} in date.`,
    takeInstead: 'Take',
    until: (day: string) => `until ${day}`,
  },

  recallTelling: {
    standing: 'How far telling has come',
    standingHint: 'Lotward prepares the words and keeps what was tried. It sends nothing to anybody.',
    audiences: {
      client: 'Clients',
      artist: 'Artists',
      supplier: 'Suppliers',
      authority: 'Authorities',
    } satisfies Record<ContactAudience, string>,
    table: 'Who was told',
    audience: 'Who',
    toTell: 'to tell',
    told: 'told',
    outstanding: 'still to tell',
    nobody: 'nobody',
    level: (level: string) => `Effectiveness checks: level ${level} is met.`,
    noLevel: 'Effectiveness checks: no level is met yet.',
    levels: 'The levels, and what they ask',
    levelAsks: (level: string, percent: string, toCheck: number) => `${level}: ${percent}, here ${toCheck}`,
    levelAgreed: (level: string) => `${level}: as agreed case by case`,
    met: 'met',
    notMet: 'not met',
    source: (source: string, caveat: string | null) => (caveat === null ? source : `${source}: ${caveat}.`),
    contactList: 'Names and contacts of all (CSV)',
    contactListHint: 'For telling them. Each look at a name is noted.',
    drill: 'In a drill messages are prepared and read, and nobody is told: no attempt is recorded.',

    recipients: 'Who is to be told',
    recipientsHint: 'Until each was reached, did not want to know, or cannot be reached.',
    whom: 'Whom',
    onlyOutstanding: 'Only those who are still to be told',
    none: {
      client: 'No client is to be told.',
      artist: 'No artist used it or has it.',
      supplier: 'No delivery of it names a supplier.',
      authority: 'No authority was told yet. Name it below if one is to be told.',
    } satisfies Record<ContactAudience, string>,
    noneOutstanding: (audience: string) => `${audience}: nobody is left to be told.`,
    standings: {
      'not tried': 'not told yet',
      reached: 'told',
      refused: 'did not want to be told',
      'no answer': 'no answer',
      'message left': 'message left',
      unreachable: 'cannot be reached',
    } satisfies Record<ContactStanding, string>,
    erased: 'Erased: nobody knows any more who it was.',
    toldEarlier: 'Told before, while a lot that touched them was recalled only afterwards: tell them again.',
    attempts: (number: number, when: string) => `${count(number, 'attempt', 'attempts')}, the last ${when}`,
    read: 'Read the message',
    readFor: (name: string) => `Read the message for ${name}`,
    log: 'Record an attempt',
    logFor: (name: string) => `Record an attempt to tell ${name}`,

    notListed: 'Somebody who is not listed',
    another: {
      supplier: 'A supplier who is not listed',
      authority: 'An authority',
    },
    companyHint: {
      supplier: 'From whom the lot came.',
      authority: 'As you would address it.',
    },

    channel: 'How',
    channels: {
      telephone: 'by telephone',
      'e-mail': 'by e-mail',
      letter: 'by letter',
      message: 'by a message',
      'in person': 'in person',
    } satisfies Record<ContactChannel, string>,
    outcome: 'What came of it',
    outcomes: {
      reached: 'reached: they know',
      refused: 'they did not want to know',
      'no answer': 'no answer',
      'message left': 'a message was left',
      unreachable: 'cannot be reached',
    },
    note: 'What was said',
    noteHint: {
      client: 'It is kept sealed, and erased with the client.',
      others: 'Nothing of a client.',
    },
    save: 'Record the attempt',

    tried: 'What was tried',
    triedHint: 'The latest first.',
    noneTried: 'Nobody has tried yet.',
    attempt: (when: string, channel: string, outcome: string, who: string) =>
      `${when} ${channel}, ${outcome}, ${who}`,

    messageFor: (name: string) => `Message for ${name}`,
    back: 'Back to the list',
    language: 'Language of the message',
    languages: { en: 'In English', de: 'In German' } satisfies Record<MessageLanguage, string>,
    print: 'Print',
    copy: 'Copy the text',
    copyFailed: 'Copying did not work: mark the text above and copy it by hand.',
    mail: 'Write an e-mail',
    call: 'Call',
    contact: (contact: string) => `Reached by: ${contact}`,
    seeTo: 'See to this before you pass it on',
    about: (words: string) => `“${words}”`,
    asks: 'What the law asks a message to say, and where it says it',
    howSure: {
      P: 'read in the text itself',
      S: 'read in a second source',
      M: 'from memory',
    } satisfies Record<HowSure, string>,
    answered: (asks: string, source: string, howSure: string) => `${asks}. ${source}, ${howSure}.`,
    notAnswered: (asks: string) => `Not said: ${asks}`,
    picture: 'The product, as it was found',
    drillSheet: 'Drill: this message goes to nobody.',
  },

  /** Remarks on a prepared message, by code, where they are not said as the service says them. */
  messageRemarks: {} as Record<string, string | undefined>,
};
