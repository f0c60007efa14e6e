import type { ReplayCalibrationView } from '../../../reorder/replay/replays.views.js';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const planReplayTexts = {
  /** What would have come of it had plans been followed. */
  replay: {
    page: 'Looking back',
    title: 'Had you followed the plans',
    lead: 'The record is gone through again, each week with only what was known then: what would have been missing and wasted by the plans, beside what was really ordered and beside fixed levels.',
    make: 'Look back now',
    makeAnew: 'Look back anew',
    progress: {
      running: 'The past is being gone through',
      waiting: 'It waits its turn',
      done: (done: number, all: number) => `${done} of ${plural(all, 'step', 'steps')}`,
    },
    none: 'Nobody looked back yet',
    noneHint: 'It takes a while, and can be stopped at any time. Nothing is changed by it.',
    tooShort: (recorded: number, needed: number) =>
      `The record is too short to look back: it has ${plural(recorded, 'day', 'days')}, and ${needed} are needed. Ask again later.`,
    all: 'All items together',
    span: (from: string, until: string, items: number) =>
      `From ${from} to ${until}, ${plural(items, 'item', 'items')}.`,
    what: 'What',
    ways: { plan: 'By the plans', asOrdered: 'As it was ordered', fixed: 'By fixed levels' },
    shortDays: 'Days on which something was missing',
    shortItems: 'Items that were ever missing',
    waste: 'Waste',
    orders: 'Orders',
    cost: 'Cost',
    costHint:
      'Cost is waste, shortage, ordering and keeping stock, not the goods themselves, nor what was left: whoever has more left has paid for more. A day on which two items were missing counts twice.',
    withoutOffer: (items: number) => `${plural(items, 'item', 'items')} left out, since nobody offers them.`,
    beyondLimit: (items: number) => `${plural(items, 'item', 'items')} left out, since there are so many.`,
    calibration: 'Was enough really enough?',
    calibrationHint: (weeks: number) =>
      `How often a quantity foretold to be enough for a week was enough, over ${plural(weeks, 'week', 'weeks')}.`,
    noCalibration: 'Nothing was foretold that could be looked at.',
    level: 'Aimed at',
    enough: 'Was enough',
    claimed: 'Should have been',
    forecasts: 'Forecasts',
    verdict: 'Verdict',
    verdicts: {
      'as claimed': 'as claimed',
      'too seldom': 'too seldom',
      'too often': 'more often than claimed',
      'too few to tell': 'too few to tell',
    } satisfies Record<ReplayCalibrationView['verdict'], string>,
    lines: 'Item by item',
    linesHint: 'The greatest difference between the plans and what was ordered first.',
    needed: (units: string, from: string) => `${units} were needed from ${from} on.`,
    levels: (minimum: string, maximum: string, byHand: boolean) =>
      `Fixed levels: at ${minimum}, up to ${maximum}${byHand ? '; the minimum is the one that was set by hand' : ''}.`,
    unmet: 'Need not met',
    leftWorth: 'Left in the end, at today’s prices',
    assumptionsHint: 'What did not happen can only be supposed.',
  },
};
