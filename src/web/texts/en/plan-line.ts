import type { RangeChoice } from '../../../reorder/decision/range-choice.js';
import type { ItemUnit } from '../../../reorder/item.js';
import type { CostStanding } from '../../plans/figures/cost-standing.js';

export const planLineTexts = {
  rangeChoices: {
    'keep in stock': 'keep in stock',
    'order for the appointment': 'order for the appointment',
    'let run out': 'let run out',
  } satisfies Record<RangeChoice, string>,

  /** One line of a plan. */
  planLine: {
    none: '–',
    nothing: 'nothing',
    toPlan: 'To the whole plan',
    whatIf: 'What if, for this item',
    decision: 'Decision',
    why: 'Why',
    remarks: 'To know besides',
    orderOn: 'to order on',
    arrivesOn: 'likely here by',
    arrivesLate: 'at the latest, in 19 of 20 cases',

    outlook: 'What is to be expected',
    outlookHint: (until: string) => `Until ${until}, over all the ways it may go.`,
    unitsOf: { pieces: 'pieces', microlitres: 'millilitres' } satisfies Record<ItemUnit, string>,
    fanTitle: (units: string, isAfter: boolean) =>
      isAfter
        ? `What is here if the plan is followed, in ${units}`
        : `What is here if nothing more is ordered, in ${units}`,
    fanDescription: (chance: string) => `Chance of running short: ${chance}.`,
    withoutOrder: 'The same if nothing is ordered',
    marks: {
      order: (day: string) => `to order on ${day}`,
      arrival: (day: string) => `order likely here, ${day}`,
      expiry: (day: string) => `first date ends, ${day}`,
      short: (day: string) => `50% chance of being short by ${day}`,
    },
    inUnit: {
      pieces: (name: string) => `${name}, pieces`,
      microlitres: (name: string) => `${name}, ml`,
    } satisfies Record<ItemUnit, (name: string) => string>,
    expected: 'Expected',
    without: 'Without an order',
    following: 'With the plan',
    shortChance: 'Chance of running short',
    shortEarly: '5% chance of being short by',
    shortMiddle: '50% chance of being short by',
    unmet: 'Need not met',
    waste: 'Waste',
    wasteMoney: 'Waste in money',
    cover: 'Lasts about',

    need: 'What will be needed',
    needHint:
      'Booked sessions and courses are known; touch-ups owed are half known; the rest is foretold from the past.',
    needTitle: (units: string) => `Need of each week, in ${units}`,
    weekly: 'a week',
    known: 'booked',
    halfKnown: 'touch-ups owed',
    unforeseen: 'not booked yet',
    byWeek: 'Need by week in numbers',
    weekFrom: 'Week from',
    history: 'Looked back',
    weeks: (weeks: number) => (weeks === 1 ? '1 week' : `${weeks} weeks`),
    seriesClass: 'Kind of need',
    classUnknown: 'too little is known',
    classes: {
      smooth: 'smooth: often, and much the same',
      erratic: 'erratic: often, and in very different amounts',
      intermittent: 'intermittent: seldom, and much the same',
      lumpy: 'lumpy: seldom, and in very different amounts',
    } as Record<string, string | undefined>,
    interval: 'Used',
    everyWeek: 'every week',
    everyWeeks: (weeks: string) => `on average in one of ${weeks} weeks`,
    needUntil: (day: string) => `Booked, owed and not booked yet: from the day of the plan until ${day}.`,
    howForetold: 'How this was foretold',
    variation: 'How much amounts differ (squared coefficient of variation, CV²)',
    methods: 'Methods and their weight',
    methodNames: {
      'simple smoothing': 'average with more weight on what is recent (exponential smoothing)',
      Croston: 'how often and how much, apart (Croston)',
      'Syntetos-Boylan': 'how often and how much, apart, corrected (Syntetos–Boylan)',
      'Teunter-Syntetos-Babai': 'how likely and how much, apart (Teunter–Syntetos–Babai)',
      bootstrap: 'drawn from past weeks (bootstrap)',
      'level assumed': 'assumed level',
    } as Record<string, string | undefined>,

    stock: 'What is here',
    stockHint: 'Counted when the plan was made. What is on hold, past its date or for practice is left out.',
    usable: 'may be used',
    inContainers: 'containers',
    opened: 'of them opened',
    onTheWay: 'on the way',
    held: 'on hold, left out',
    expired: 'past its date, left out',
    practice: 'for practice, left out',
    nextLastDay: 'first date ends',
    lots: 'Lots as they stand now',
    noLots: 'No lot of it is here.',
    toExpected: 'What is on the way',

    supply: 'How it can be had',
    supplier: 'Supplier',
    toSupplier: (supplier: string) => `To the offers of ${supplier}`,
    noOffer: 'No supplier is known to sell it.',
    pack: 'Pack',
    packOf: (containers: string, units: string) => `${containers}, ${units}`,
    minimumPacks: 'At least',
    packPrice: 'A pack costs',
    unitPrice: { pieces: 'A piece costs', microlitres: 'A millilitre costs' } satisfies Record<
      ItemUnit,
      string
    >,
    leadTime: 'From order to arrival',
    leadTimeOf: (mean: string, most: number) => `${mean} days on average, 19 of 20 within ${most}`,
    life: 'Keeps after arrival',
    lifeUnlimited: 'no date is known',
    offers: 'Offers compared',
    bestWithIt: 'Best with it',

    whyNot: 'Why not less, why not more',
    whyNotHint: 'Cost here is what is to be expected, waste and shortage included.',
    costStandings: {
      least: 'The choice costs least of those shown.',
      'within the error': 'Another costs a little less, by no more than the figures can tell apart.',
      'not least':
        'Another costs less: the choice was not made by cost alone, but also by the need to be met, by waste, or by what is ordered together.',
    } satisfies Record<CostStanding, string>,
    inAll: 'in all',
    choice: 'Choice',
    choiceOf: (packs: number, isByItself: boolean): string =>
      packs === 0 ? 'order nothing' : isByItself ? 'as it would be by itself' : 'as the plan says',
    orderNothing: 'order nothing',
    changes: {
      'one pack less': 'one pack less',
      'one pack more': 'one pack more',
      'one order day earlier': 'one order day earlier',
      'one order day later': 'one order day later',
    },
    packsColumn: 'Packs',
    expectedCost: 'Expected cost',
    extra: 'Difference',
    costPart: 'Part',
    costParts: 'What the cost of the choice is made up of',
    costNames: {
      wasteMinor: 'waste',
      shortageMinor: 'shortage',
      orderMinor: 'ordering and delivery',
      holdingMinor: 'keeping stock',
      priceMinor: 'price against the usual one',
      leftMinor: 'left over, spares a later order',
    },
    standardError: (money: string) => `Counted to within about ${money} (standard error).`,
    shortageByHand: (money: string) => `A session that cannot have it was set to cost ${money}.`,
    shortageByTarget: (target: string, money: string) =>
      `${target} of the need are to be met; that makes a session that cannot have it worth ${money}.`,
    effort: (candidates: string, paths: string) =>
      `${candidates} possible orders were compared over ${paths} possible futures.`,

    planning: 'Plan this item otherwise',
    planningHint: 'What is left empty is as the studio plans. It counts from the next plan on.',
    target: 'Share of the need to be met, in per cent',
    targetHint: 'From 0 to 100, such as 97.5.',
    shortageCost: (currency: string) => `What a session that cannot have it costs, in ${currency}`,
    shortageCostHint: 'Counts instead of the target.',
    rangeChoiceHint: 'The plan goes by the service target and cost, unless you say otherwise.',
    planDecides: 'as the plan decides',
    notAllowed:
      'The target is a share from 0 to 100 per cent, the cost an amount of money from 0 on. Correct what is written, or leave it empty.',

    range: 'Worth keeping in stock?',
    rangeHint: 'What each way of keeping it costs in a year, from an empty shelf on.',
    rangeChosen: {
      cost: (choice: string) => `${choice[0]?.toUpperCase()}${choice.slice(1)} costs least.`,
      'too seldom': (choice: string) => `Fewer than one use is expected while a pack keeps: ${choice}.`,
      'service target': (choice: string) =>
        `Meets the service target at the least cost, or comes nearest to it: ${choice}.`,
      manager: (choice: string) => `Set by hand: ${choice}.`,
    },
    rangeAdvised: (choice: string) => `By the figures it would be: ${choice}.`,
    bookedInTime: (share: string, sessions: string) =>
      `About ${sessions} sessions a year want it; ${share} of them are booked early enough to order for them.`,
    appointmentImpossible: 'too few to order for appointments only',
    perYear: 'A year',
    perUsed: {
      pieces: 'For a piece used',
      microlitres: 'For a millilitre used',
    } satisfies Record<ItemUnit, string>,
    perSession: 'For a session',
    wastePerYear: 'Waste a year',
    unmetPerYear: 'Sessions a year without it',
  },
};
