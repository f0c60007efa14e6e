import type { AlertView } from '../../../alerts/alerts.views.js';
import type { DayPart } from '../../today/day-plan.js';
import type { FirstStepName } from '../../today/first-steps-of.js';

export const todayTexts = {
  day: {
    title: 'Today',
    lead: 'What is to be done.',
    leadOf: (day: string) => `${day}. Clients stand here by their reference only.`,
    parts: {
      now: 'To do now',
      later: 'Later',
      given: 'Given to others',
      over: 'Over',
    } satisfies Record<DayPart, string>,
    partHints: {
      now: 'Trays that are laid or begin within the hour, and what nobody has seen to yet.',
      later: 'Sessions later today, and what can wait.',
      given: "Other artists' sessions, and what others have taken on.",
      over: 'Completed, cancelled, or not attended.',
    } satisfies Record<DayPart, string>,
    none: 'Nothing to do now.',
    setUp: 'Lay the tray',
    setUpOf: (reference: string) => `Lay the tray for ${reference}`,
    toTray: 'To the tray',
    toRecord: 'To the record',
  },

  alerts: {
    severities: {
      urgent: 'urgent',
      warning: 'soon',
      notice: 'to know',
    } satisfies Record<AlertView['severity'], string>,
    take: 'I take it on',
    takeOn: (alert: string, what: string) => `I take it on: ${alert}, ${what}`,
    look: 'Look at it',
    lookAt: (alert: string, what: string) => `Look at it: ${alert}, ${what}`,
    takenBy: (name: string) => `taken on by ${name}`,
    you: 'you',
    somebody: 'somebody',
    more: (count: number) =>
      `These are the latest ${count} of what is open; see to them, and the others follow.`,
    /** By the kind of the alert. */
    kinds: {
      'low stock': 'Low stock',
      'use-by near': 'Use-by date near',
      'opened life ending': 'Opened life ending',
      'expired on the shelf': 'Expired on the shelf',
      'backup failed': 'A backup failed',
      'notice source failing': 'Published notices cannot be fetched',
      'backup overdue': 'No good backup for too long',
      'use against a refusal': 'Used against a refusal',
      'same code, other use-by': 'One lot code, several use-by dates',
      'in transit too long': 'Under way for long',
      'held where it came from': 'Held where it came from',
      'recall open': 'Recall open',
      'recall notice found': 'A published notice meets something here',
      'drill due': 'A recall drill is due',
    } as Record<string, string | undefined>,
    /** By the name of the fact. */
    facts: {
      pieces: 'pieces',
      usablePieces: 'usable',
      minimumPieces: 'low at',
      lastDay: 'last day',
      daysLeft: 'days left',
      status: 'state',
      boundBy: 'ends by',
      openedLifeFrom: 'opened life by',
      held: 'on hold',
      lotCode: 'lot',
      labelCode: 'label',
      code: 'lot',
      useBy: 'use-by',
      otherUseBy: 'also with use-by',
      reasons: 'against',
      configuration: 'cartridge',
      lastGoodAt: 'last good one',
      cause: 'because',
      direction: 'direction',
      sentOn: 'sent on',
      lines: 'lines',
      holdKinds: 'kind',
      affectedLots: 'lots affected',
      undecidedLots: 'lots to decide',
      reference: 'number',
      dueOn: 'due by',
    } as Record<string, string | undefined>,
    /** Words that stand as values of facts, where they are not said as they are. */
    values: {} as Record<string, string | undefined>,
  },

  firstSteps: {
    title: 'The first tray',
    lead: 'From an empty studio to the first finished tray. This stands here until a session was completed.',
    done: '– done',
    steps: {
      place: 'Say where things lie',
      product: 'Name what you work with',
      receive: 'Receive what is there',
      procedure: 'Name what you offer',
      session: 'Begin a session',
      finish: 'Lay its tray, and finish it',
    } satisfies Record<FirstStepName, string>,
    hints: {
      place: 'A shelf, a cupboard, a fridge: one is enough.',
      product:
        'Makers, pigments with their opened life and drop size, cartridges by configuration. Or bring all of it from a file, under Stock, Opening stock.',
      receive:
        'Scan or type what is on the shelf: product, lot, use-by date, how many. Labels are printed from there.',
      procedure: 'Such as powder brows: where on the body, when the touch-up is due, and what its kit needs.',
      session: 'Somebody is here now: begin a walk-in below. Or plan a session under Records.',
      finish: 'Lay the tray, scan what you take, and say at the end what was used.',
    } satisfies Record<FirstStepName, string>,
  },
};
