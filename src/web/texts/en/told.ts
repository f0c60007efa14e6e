import type { AlertDestinationView } from '../../../alerts/destinations/alert-destinations.views.js';
import type { AlertPreferenceView } from '../../../alerts/preferences/alert-preferences.views.js';

export const toldTexts = {
  /** How one person is told of alerts, on pages of their own. */
  told: {
    title: 'How you are told',
    lead: 'What reaches you while Lotward is closed, when, and by which way. Each chooses for themselves.',
    inAccount: 'How you are told of alerts',
    inAccountHint: 'By e-mail, by browser, in your calendar; and what may wake you.',
    ofStudio: (studio: string) => `How ${studio} tells you`,

    what: 'What you are told',
    whatHint: 'All of it stands under Alerts in any case. This is about what is sent to you.',
    isAssumed: 'You chose nothing yet: this is assumed of your role. Change something to choose.',
    nothingLeads:
      'Nothing is sent to you as it stands: there is no address and no browser below that is told.',
    toldFrom: 'Sent one by one',
    toldFromHint: 'What is milder stands in the summary of the morning.',
    toldFroms: {
      urgent: 'urgent ones only',
      warning: 'urgent ones, and what has to be seen to soon',
      notice: 'all of them',
      never: 'none',
    } satisfies Record<AlertPreferenceView['toldFrom'], string>,
    urgentTurn: 'Urgent ones',
    urgentTurnHint: 'Nobody answers? Then the next in the order of people is told.',
    urgentTurns: {
      'in turn': 'when it is my turn',
      'at once': 'at once, whoever’s turn it is',
    } satisfies Record<AlertPreferenceView['urgentTurn'], string>,
    summary: 'Summary of the morning',
    summaryHint: 'What to use first, to discard and to order. None is sent where there is nothing to say.',
    summaries: {
      daily: 'each morning on which there is something to say',
      never: 'not to me',
    } satisfies Record<AlertPreferenceView['summary'], string>,
    summaryAt: 'At what time',
    summaryAtHint: (morning: string) =>
      `By the clock of the studio. Left empty: ${morning}, the studio’s morning.`,
    quietFrom: 'Quiet from',
    quietHint:
      'Between these times only what is urgent is sent; the rest waits. Both left empty: never quiet.',
    quietUntil: 'Quiet until',
    kinds: (count: number) =>
      count === 0
        ? 'Kinds you are not told of: none'
        : `Kinds you are not told of: ${count === 1 ? 'one' : count}`,
    kindsLeftOut: 'Not told to me',
    kindsHint: 'Unless it is urgent.',

    mail: 'E-mail',
    mailHint: 'Messages name products, lots and places; never a client.',
    noMail: 'No address of yours is known here.',
    address: 'E-mail address',
    addressHint: 'Such as desk@studio.example. Up to three.',
    addMail: 'Add the address',
    noMailServer:
      'No mail server is set, so nothing is mailed: it waits. Whoever runs Lotward sets SMTP_URL and MAIL_FROM.',

    browsers: 'Browsers',
    browsersHint: 'A browser shows messages of Lotward while it is closed. Each device is asked by itself.',
    noBrowser: 'No browser of yours is told.',
    thisBrowser: 'this browser',
    tellThis: 'Tell this browser',
    tellThisHint: 'The browser asks whether you allow it.',
    unknownDevice: 'A browser',
    device: (browser: string, system: string) => `${browser} on ${system}`,

    calendar: 'Calendar',
    calendarHint:
      'A secret address that a calendar program reads: last days of what is here, touch-up windows, deliveries. Without names of clients.',
    noCalendar: 'You have no such address.',
    calendarSince: (when: string) =>
      `You have an address, made ${when}. It is not shown again; whoever has it can read the calendar.`,
    makeCalendar: 'Make an address',
    makeAnother: 'Make another address',
    makeAnotherQuestion: 'The address before ends at once: put the new one into your calendar program.',
    removeCalendar: 'Remove the address',
    removeCalendarQuestion: 'Whoever has the address reads nothing more.',
    calendarMade: 'Your calendar address',
    calendarMadeDetail:
      'Copy it now, it is not shown again. In the calendar program choose to subscribe to an address, and paste it there.',
    calendarLabel: 'Calendar address',
    testCalendar: 'Test the calendar',
    calendarAnswers: (entries: number) =>
      `It answers with ${entries === 0 ? 'no entry so far' : entries === 1 ? 'one entry' : `${entries} entries`}.`,
    noCalendarThere:
      'No calendar came. Look whether Lotward is reached, and make another address if it stays so.',

    openPages: 'Open pages',
    openPagesHint: 'Whatever page is open learns of alerts within about a second. There is nothing to set.',
    testLive: 'Test the open page',
    tellsLive: 'This page is told at once.',
    tellsNothingLive:
      'This page is not told at once: something between here and Lotward holds it back, or too many pages are open. It learns of alerts when you look at it.',
  },

  /** One place where alerts go. */
  destination: {
    states: {
      active: 'told',
      paused: 'paused',
      stopped: 'stopped',
      removed: 'removed',
    } satisfies Record<AlertDestinationView['state'], string>,
    erased: 'an address that was erased',
    addedAt: (when: string) => `added ${when}`,
    /** Before the reason, as the service says it; and so below. */
    stoppedBecause: 'Stopped:',
    pausedHint: 'Paused: what is promised to it waits.',
    pause: 'Pause',
    pauseOf: (name: string) => `Pause ${name}`,
    resume: 'Go on',
    resumeOf: (name: string) => `Go on telling ${name}`,
    remove: 'Remove',
    removeOf: (name: string) => `Remove ${name}`,
    removeQuestion: (name: string) =>
      `${name} is told nothing more. The address is wiped, and what is still promised to it is not sent.`,
    test: 'Test',
    testOf: (name: string) => `Send a test to ${name}`,
    testing: 'The test is under way …',
    testSent: 'The test was sent and taken. Look whether it is there.',
    testNotSent: 'The test could not be sent:',
    testLater: (when: string) => `Not yet, it is tried again ${when}. Because:`,
  },
};
