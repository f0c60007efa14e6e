import type { BasketReasonWord } from '../../../reorder/plan/plans.views.js';
import type { LineDecision, PlanState } from '../../../reorder/plan/vocabulary.js';
import {
  planOtherSetting,
  planReasons,
  planReasonsInGeneral,
  planSettingNames,
  planUnitPrices,
} from './plan-reasons.js';

const count = (written: string, amount: number, one: string, many: string) =>
  `${written} ${amount === 1 ? one : many}`;
const plural = (amount: number, one: string, many: string) => count(String(amount), amount, one, many);

/** What a sentence about a line is made of, as it is written; null: there is no such thing. */
export interface LineFacts {
  /** What may be used. */
  here: string;
  onTheWay: string | null;
  weekly: string;
  ordered: string | null;
  on: string | null;
  short: string;
  shortOn: string | null;
  shortAfter: string;
  /** Expected, in money. */
  waste: string | null;
  /** How many. */
  days: string;
  isOneDay: boolean;
  /** Whether it may be missing before an order comes. */
  isLate: boolean;
  /** Whether nobody is expected to need it. */
  isUnneeded: boolean;
}

type Said<Name extends keyof LineFacts> = Pick<LineFacts, Name>;
const here = ({ here, onTheWay }: Said<'here' | 'onTheWay'>) =>
  onTheWay === null ? `Here: ${here}` : `Here: ${here}, on the way: ${onTheWay}`;
const days = ({ days, isOneDay }: Said<'days' | 'isOneDay'>) => `${days} ${isOneDay ? 'day' : 'days'}`;
const waste = ({ waste }: Said<'waste'>) => (waste === null ? '' : ` Waste to expect: ${waste}.`);

export const plansTexts = {
  /** What to order, and why. */
  plans: {
    pages: { plan: 'Plan', whatIf: 'What if' },
    title: 'What to order',
    titleOf: (day: string) => `Plan of ${day}`,
    lead: (day: string, days: number) =>
      `Worked out on ${day}, for the ${plural(days, 'day', 'days')} from then on.`,
    older: (day: string) => `This plan is of ${day}. What happened since is not in it: have one made anew.`,

    pieces: (written: string, amount: number) => count(written, amount, 'piece', 'pieces'),
    packs: (packs: number) => plural(packs, 'pack', 'packs'),
    days: (days: number) => plural(days, 'day', 'days'),
    chances: {
      hardly: 'hardly ever',
      oneIn: (number: string) => `1 in ${number}`,
      nearlyCertain: 'nearly certain',
    },

    none: 'There is no plan yet',
    noneHint:
      'A plan weighs what is booked, what usually comes, what is here and when it ends, and says what to order, how much and when.',
    noneSteps: [
      'Say who sells you what, in which packs and at what price: offers of your suppliers.',
      'Keep sessions, stock and kit lists as usual: what is needed is learnt from them, and assumed until then.',
      'Have the first plan made. One is made each night from then on.',
    ],
    toSuppliers: 'To suppliers and their offers',
    nothingPlanned: 'Nothing in this plan',
    nothingPlannedHint:
      'No product was used, is here, is offered or stands in a kit list, so there was nothing to plan. Add products and offers, or lay out sessions, and plan anew.',

    make: 'Make a plan now',
    makeAnew: 'Plan anew',
    states: {
      waiting: 'waits its turn',
      running: 'is worked out',
      done: 'done',
      cancelled: 'stopped',
      failed: 'failed',
    } satisfies Record<PlanState, string>,
    running: 'The plan is being worked out',
    waiting: 'The plan waits its turn',
    progress: (done: number, all: number) => `${done} of ${plural(all, 'item', 'items')}`,
    stop: 'Stop it',
    stopped: 'The run was stopped before it was done.',
    failed: 'The run failed.',
    olderShown: 'What is shown was worked out before it; have it made anew when you like.',
    tryAgain: 'Have it made anew; if it fails again, tell whoever runs the service.',
    same: 'Nothing that counts has changed since the plan before, so its lines are shown and nothing was computed again.',

    sums: 'What it comes to',
    sumsNames: {
      today: 'to order today',
      withDelivery: 'with delivery',
      waste: 'waste to expect',
      held: 'held, left out',
    },
    containers: (containers: number) => plural(containers, 'container', 'containers'),
    caution:
      'A plan only counts. It never lets a date or a hold pass: what is held or past its date is left out of it, and what the label says decides.',

    today: 'Order today',
    nothingToday: 'Nothing has to be ordered today.',
    orderTo: (supplier: string) => `Order to ${supplier}`,
    orderToday: 'to order today',
    orderBy: (day: string) => `to order on ${day}`,
    lineNumber: (line: number) => `line ${line}`,
    lines: (lines: number) => plural(lines, 'line', 'lines'),
    goods: 'goods',
    delivery: 'delivery',
    freeDelivery: 'free',
    freeFrom: (money: string) => `Delivery is free with ${money} more.`,
    total: 'in all',
    minimumOrder: 'smallest order',
    minimumReached: 'reached',
    minimumReachedByAdding: 'reached by what was added',
    minimumMissing: (money: string) => `${money} missing`,
    minimumChoices: {
      anyway: (money: string) => `Order as it is, if the supplier takes it with ${money} missing.`,
      wait: (day: string, money: string) =>
        `Wait until ${day}, when more is due. Expected to cost ${money} more.`,
      add: (packs: string, what: string, money: string) => `Add ${packs} of ${what}, for ${money}.`,
    },
    minimumChoicesTitle: 'What can be done about the smallest order',
    basketReasons: {
      due: '',
      'shares the delivery': 'taken along, so that the delivery is shared',
      'reaches the minimum': 'added, so that the smallest order is reached',
      'reaches free delivery': 'added, so that delivery is free',
    } satisfies Record<BasketReasonWord, string>,
    draft: 'Draft this order',
    draftAgain: (supplier: string) => `Draft it once more: ${supplier}`,
    drafted: 'In an order already:',
    orderOfPlan: (number: number, state: string) => `Order ${number}, ${state}`,
    toDrafted: 'To the order it stands in',
    draftOf: (supplier: string) => `Draft this order to ${supplier}`,

    decisions: {
      'order now': 'order today',
      'order later': 'order later',
      'order for the appointment': 'order for the appointment',
      'let run out': 'let run out',
      enough: 'enough is here',
      'cannot be ordered': 'cannot be ordered',
    } satisfies Record<LineDecision, string>,
    sections: {
      'order now': 'Order today',
      'order later': 'Order later',
      'order for the appointment': 'Order for the appointment',
      'let run out': 'Let run out',
      enough: 'Enough is here',
      'cannot be ordered': 'Cannot be ordered',
    } satisfies Record<LineDecision, string>,
    sectionHints: {
      'order now': '',
      'order later': 'On the day named, or sooner with another order.',
      'order for the appointment':
        'Too slow for the shelf: most of it would end unused. It is ordered when somebody is booked for it.',
      'let run out': 'Used up while it is in date, and not ordered any more.',
      enough: 'What is here and on the way lasts.',
      'cannot be ordered': 'No supplier is known to sell it. Add an offer, and plan anew.',
    } satisfies Record<LineDecision, string>,
    addOffer: 'Add an offer',
    figures: {
      order: 'order',
      cost: 'cost',
      on: 'on',
      here: 'here',
      onTheWay: 'on the way',
      weekly: 'a week',
      short: 'runs short otherwise',
    },
    notes: {
      'pack exceeds need': 'smallest pack is more than can be used in date',
      'price break taken': 'price for more taken',
      'minimum packs forced': 'at least so many are sold',
      'order day forced earlier': 'ordered earlier, by the supplier’s days',
      'on hold ignored': 'some is on hold',
      'lead time beyond life': 'takes longer to come than it keeps',
      'no order day': 'no day to order on',
      'nothing fits the date': 'nothing can be used in date',
      'full target bounded': 'target of 100%',
      'target of zero': 'target of 0%',
      'too late': 'comes too late',
      'no order in time': 'what is missing cannot be here any sooner',
    } as Record<string, string | undefined>,

    assumptions: 'What was assumed',
    assumptionsHint: 'Until it is set or learnt. Each may change what is advised.',
    noAssumptions: 'Nothing: all of it was set or learnt.',
    forItems: (items: number) => `For ${plural(items, 'item', 'items')}.`,
    toSettings: 'To the settings of planning',

    all: 'All of them',
    somebody: 'somebody',
    sameInBrief: 'nothing had changed',
    onlyWhatIf: 'This only asks what if: nothing is ordered from it.',
    earlier: 'Earlier plans',
    earlierHint: 'The latest first.',
    toEarlier: 'Earlier plans',
    added: (packs: number) => `${plural(packs, 'pack', 'packs')} more than its own`,
    toLatest: 'To the latest plan',
    noneEarlier: 'None yet.',
    byItself: 'by itself',
    askedFor: (name: string, when: string) => `${when}, ${name}`,
    dueToday: (lines: number) => `${plural(lines, 'line', 'lines')} to order that day`,
    took: (seconds: number) =>
      seconds < 1 ? 'took less than a second' : `took ${plural(seconds, 'second', 'seconds')}`,

    toLevels: 'Take the reorder points into the levels',

    fan: {
      none: 'Too little is known to draw it.',
      median: 'the middle, as likely more as less',
      narrow: 'in half of all cases (25 to 75%)',
      wide: 'in nine of ten cases (5 to 95%)',
      asTable: 'The same in numbers',
      day: 'Day',
      levels: { p5: '5%', p25: '25%', p50: '50%', p75: '75%', p95: '95%' },
    },
  },

  /** The sentence of a line by its decision. */
  planSentences: {
    'order now': ({ ordered, short, shortOn, shortAfter, isLate, ...facts }) =>
      `Order ${ordered ?? 'nothing'} today. ${here(facts)}; without an order it runs short${shortOn === null ? '' : ` around ${shortOn}`} (chance: ${short}). ${isLate ? 'Some may be missing before it comes. ' : ''}Chance with it: ${shortAfter}.${waste(facts)}`,
    'order later': ({ ordered, on, ...facts }) =>
      `Order ${ordered ?? 'more'} ${on === null ? 'later' : `on ${on}`}. ${here(facts)}, which lasts about ${days(facts)}.${waste(facts)}`,
    'order for the appointment': ({ weekly, ordered, on, ...facts }) =>
      ordered === null
        ? `Order it when somebody is booked for it. Only ${weekly} a week are needed. ${here(facts)}.${waste(facts)}`
        : `Order ${ordered}${on === null ? '' : ` on ${on}`} for those who are booked. ${here(facts)}.${waste(facts)}`,
    'let run out': ({ weekly, ...facts }) =>
      `Use it up and order no more. ${here(facts)}; ${weekly} a week are needed.${waste(facts)}`,
    enough: ({ short, isUnneeded, ...facts }) =>
      isUnneeded
        ? `${here(facts)}. Nobody is expected to need it.${waste(facts)}`
        : `${here(facts)}, which lasts about ${days(facts)}. Chance of running short: ${short}.${waste(facts)}`,
    'cannot be ordered': ({ short, ...facts }) =>
      `No supplier offers it. ${here(facts)}. Chance of running short: ${short}.${waste(facts)}`,
  } as Record<LineDecision, (facts: LineFacts) => string>,

  planReasons,
  planReasonsInGeneral,
  planSettingNames,
  planOtherSetting,
  planUnitPrices,
};
