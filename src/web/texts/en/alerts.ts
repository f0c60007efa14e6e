import type { AlertDeliveryView, AlertEntryView, AlertView } from '../../../alerts/alerts.views.js';
import type { SummaryNowView, SummaryPartView } from '../../../alerts/summaries/morning-summaries.views.js';
import type { PushObstacle } from '../../alerts/push-obstacles.js';

export const alertsTexts = {
  alertPages: {
    title: 'Alerts',
    lead: 'What has to be seen to, the worst first. What stands closes by itself when it has ended; what happened once, when somebody has seen it.',
    pages: { all: 'What is open', notSent: 'Could not be sent', morning: 'This morning' },
    urgentInMenu: (count: string) => `${count} urgent`,
    filters: 'Which alerts',
    show: 'Show',
    which: 'Which',
    states: {
      open: 'open now',
      'put off': 'put off',
      closed: 'closed',
      all: 'all, also closed ones',
    },
    givenToMe: 'given to me',
    kind: 'What is wrong',
    anyKind: 'anything',
    severity: 'How urgent',
    anySeverity: 'any',
    order: 'Order',
    orders: { worst: 'the worst first', latest: 'the latest first' },
    parts: { urgent: 'Urgent', warning: 'Soon', notice: 'To know' } satisfies Record<
      AlertView['severity'],
      string
    >,
    partHints: {
      urgent: 'Before anything else.',
      warning: 'In the next days.',
      notice: 'Nothing is lost if it waits.',
    } satisfies Record<AlertView['severity'], string>,
    noneOfSeverity: 'None.',
    noneFound: 'No alert is like that.',
    openedAt: (when: string) => `Open since ${when}`,
    closedAt: (when: string) => `Open until ${when}`,
    givenTo: (name: string) => `given to ${name}`,
    putOffUntil: (day: string) => `put off until ${day}`,
    /** Who did something, and to whom something was given, where it is whoever reads. */
    me: 'You',
    toMe: 'you',
    nextStep: 'What to do next',
    act: 'To where it is done',
    details: (alert: string, what: string) => `${alert}: ${what}`,

    /** By the kind of the alert: what to do next. */
    nextSteps: {
      'low stock': 'Order more, or receive what came. How little is low is set under Stock.',
      'use-by near': 'Use it first. What will be left after that day is discarded.',
      'opened life ending': 'Use it first, and discard what is left after its last day.',
      'expired on the shelf': 'Take it off the shelf today, and record it as discarded.',
      'backup failed': 'Read the cause, mend it, and make a backup now.',
      'notice source failing':
        'Look whether this machine reaches the address. Until it does, look at the authority’s own pages.',
      'backup overdue': 'Make a backup now, and look why none was made by itself.',
      'use against a refusal':
        'Look at the session, and judge as a professional what follows. The label and local codes come first.',
      'same code, other use-by':
        'Compare the labels in hand, and correct the lot that was written down wrongly.',
      'in transit too long':
        'Ask the other studio where it is. Then it is put away there, or withdrawn here.',
      'held where it came from': 'Set it apart so that nobody takes it, and ask the other studio why.',
      'recall open':
        'Answer the recall: decide what is possible, find what is here, and tell who had it. Local codes come first.',
      'recall notice found': 'Read the notice. Answer it, or say why it does not concern you.',
      'drill due': 'Play a recall drill; it takes as long as you like, and holds nothing.',
      'held stock on hand':
        'Set it apart so that nobody takes it. What is recalled is returned or destroyed as the recall says; what was only set aside is released or discarded.',
      'kit cannot be filled': 'Order what lacks in time, or plan the session for another day.',
      'touch-up mix out of date':
        'Plan the touch-up before that day, or mix the same shade from a lot that is in date then.',
      'order due': 'Look at the plan, and draft the order from its basket.',
      'order not sent': 'Mend the cause and send the order again, or send it by hand.',
      'no plan made':
        'Have a plan made again. If that fails, too, tell whoever runs the service; until then go by the levels of the stock.',
      'delivery late':
        'Ask the supplier. Then say the new day, call it off, or receive it when it comes after all.',
      'queue unhealthy':
        'Read what was seen, and mend it. Nothing is lost: what was promised is sent as soon as it goes again.',
    } as Record<string, string | undefined>,
    nextStepElse: 'Look at what it is about, and decide.',

    one: {
      facts: 'How it stands',
      about: 'What is wrong',
      since: 'Open since',
      until: 'Closed',
      closedByItself: (when: string) => `${when}, by itself`,
      closedBy: (when: string, who: string) => `${when}, by ${who}`,
      taken: 'Taken on by',
      seen: 'Seen by',
      takenAt: (who: string, when: string) => `${who}, ${when}`,
      given: 'Given to',
      putOff: 'Put off until',
      answer: 'What you can do',
      answerHint: 'Each step stays in the history; none of them is taken back.',
      isOver: 'It is over. What was done stays below.',
      putOffIt: 'Put it off',
      putOffHint:
        'Until the morning of that day nobody is reminded of it; when it gets worse, it is told at once.',
      putOffUntil: 'Until the morning of',
      giveIt: 'Give it to somebody',
      giveHint: 'They are told, and it stands among what they have to do.',
      giveTo: 'To whom',
      choose: 'choose',
      noteIt: 'Add a note',
      note: 'Note',
      noteHint: 'Whoever works here reads the note. Nothing about a client belongs here.',
      closeIt: 'Close it',
      closeNote: 'Why it is closed',
      closeHint:
        'It is closed for good, and opens anew only when it gets worse or happens again. Mended things close by themselves.',
      history: 'What happened',
      historyHint: 'Who did what and when. Nothing here is changed or taken back.',
      earlierSteps: (count: number) =>
        count === 1 ? 'One earlier step is not shown.' : `${count} earlier steps are not shown.`,
      hiddenNote: 'A note that your role is not shown, since it may speak of a client.',
      service: 'Lotward',
      deliveries: 'Who was told',
      deliveriesHint: 'Each message by where it went, and what came of it.',
      noDeliveries: 'Nobody was told of it by a message of its own. A summary of the morning may name it.',
      gone: 'There is no such alert',
      toAll: 'To all alerts',
    },

    events: {
      opened: 'Opened',
      worse: 'Got worse',
      milder: 'Got milder',
      acknowledged: 'Taken on',
      'put off': 'Put off',
      'due again': 'Due again',
      given: 'Given to somebody',
      'handed on': 'Handed on',
      noted: 'Note',
      closed: 'Closed',
      ended: 'What was wrong has ended',
    } satisfies Record<AlertEntryView['event'], string>,
    wasSeen: 'Seen, and over',
    nobodyTookIt: 'Nobody took it on; all who are in turn were told once more',
    wasGivenTo: (name: string) => `Given to ${name}`,
    handedOnTo: (name: string) => `Handed on to ${name}`,
    wasPutOffUntil: (day: string) => `Put off until ${day}`,
    nowOf: (event: string, severity: string) => `${event}: ${severity}`,

    channels: {
      log: 'Log of the service',
      mail: 'E-mail',
      webhook: 'Webhook',
      push: 'Browser',
    } satisfies Record<AlertDeliveryView['channel'], string>,
    told: {
      opened: 'It opened',
      worse: 'It got worse',
      'due again': 'It is due again',
      'handed on': 'Nobody took it on',
      given: 'It was given to somebody',
      closed: 'It is closed',
      summary: 'Summary of the morning',
      test: 'A test',
    } satisfies Record<AlertDeliveryView['event'], string>,
    deliveryStates: {
      pending: 'under way',
      sent: 'sent',
      undeliverable: 'could not be sent',
    } satisfies Record<AlertDeliveryView['state'], string>,
    promisedAt: (when: string) => `promised ${when}`,
    settledAt: (when: string) => `settled ${when}`,
    nextTry: (when: string) => `tried next ${when}`,
    attempts: (count: number) => (count === 1 ? 'one attempt' : `${count} attempts`),
    unknownAttempts: (count: number) =>
      `It may have been received ${count === 1 ? 'once' : `${count} times`} more: so many attempts were cut off before an answer came. Each has the same id.`,
    /** Before the cause, as the service says it. */
    cause: 'Because:',
    sendAgain: 'Send again',
    sendAgainOf: (what: string) => `Send again: ${what}`,

    notSent: {
      title: 'Could not be sent',
      lead: 'Messages that were given up, each with its cause. Mend the cause, then send them again; whoever got one already knows it by its id.',
      list: 'Messages that could not be sent',
      some: 'Some messages could not be sent.',
      toThem: 'Look at them',
      none: 'Everything that was promised was sent, or is still being tried.',
      waiting: 'Still being tried',
      waitingHint:
        'Each is tried again by itself at the time shown. What is not urgent waits for the end of quiet hours.',
      noneWaiting: 'Nothing waits.',
      toAlert: (alert: string) => `About: ${alert}`,
      nowhere: {
        removed: 'Where it was to go was removed. It is sent nowhere any more.',
        stopped: 'Where it was to go takes nothing any more. Set it up anew under Settings or My account.',
        paused: 'Where it goes is paused. It waits until that is over.',
      },
    },

    morning: {
      title: 'This morning',
      lead: 'Once a morning, what to use first, what to discard, what to order, and what needs an answer.',
      now: 'As it would be said now',
      nowHint: 'To you, at this moment. Nothing is sent by looking.',
      nothing: 'Nothing to say. All that was looked at is in order.',
      earlier: 'Earlier mornings',
      earlierHint: 'As they were sent to you.',
      noneEarlier: 'None was written for you yet.',
      nothingSent: 'There was nothing to say, so nothing was sent.',
      show: 'What it said',
      showOf: (day: string) => `What it said on ${day}`,
      nextAt: (when: string) => `The next summary is sent to you ${when}.`,
      whyNone: {
        'not wanted': 'No summary is sent to you at present.',
        'no mail address and no browser that is told':
          'No summary is sent to you: Lotward knows no mail address of yours, and no browser of yours is told.',
      } satisfies Record<NonNullable<SummaryNowView['whyNone']>, string>,
      choose: 'How you are told',
      parts: {
        'answer today': 'To answer today',
        'use first': 'To use first',
        discard: 'To discard',
        order: 'To order',
        'orders due': 'Orders due by the plan',
        'touch-ups at risk': 'Touch-ups at risk',
      } satisfies Record<SummaryPartView['name'], string>,
      leftOut: (count: number) => (count === 1 ? 'and one more' : `and ${count} more`),
    },

    live: {
      region: 'Urgent alerts',
      urgent: 'Urgent',
      look: 'Look at it',
      lookAt: (what: string) => `Look at it, urgent: ${what}`,
      seen: 'Seen',
      seenOf: (what: string) => `Seen: ${what}`,
      more: (count: number) => (count === 1 ? 'One more is urgent.' : `${count} more are urgent.`),
      toAll: 'To all alerts',
    },
  },

  /** What is said where a browser cannot be told of alerts. */
  pushObstacles: {
    'insecure address':
      'Browsers are told only at an address they trust: HTTPS with a certificate this device trusts, or localhost. Ask whoever runs Lotward for such an address.',
    'not in this browser':
      'This browser cannot be told of anything while Lotward is closed. Use another, or e-mail.',
    'home screen first':
      'On this device only apps of the home screen are told. Choose Share, Add to Home Screen, open Lotward from there, and come back to this page.',
    'app not kept':
      'This browser does not keep the app, as in a private window or when the certificate is not trusted. Load the page anew, or open it in a normal window.',
    'not allowed':
      'This browser does not let Lotward show messages. Allow them in its settings for this address, then try again.',
    'not answered': 'The browser asked, and was not answered. Try again, and allow it when it asks.',
    'not reached':
      'The message service of this browser’s maker gave no address. Look whether this device reaches the internet, then try again.',
  } satisfies Record<PushObstacle, string>,
};
