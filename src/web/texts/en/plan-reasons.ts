import type { DecisionAssumption, DecisionNote } from '../../../reorder/decision/decision-notes.js';
import type { Reason } from '../../../reorder/decision/explanation.js';
import type { DemandAssumption } from '../../../reorder/demand/demand-of-item.js';

/** Figures as they are written in the language of the reader. */
type Written = Record<string, string>;
/** The same as numbers, for what a sentence turns on; 0 for what is none. */
type Amounts = Record<string, number>;
export type SayReason = (written: Written, amounts: Amounts) => string;
export type KnownReason = (Reason | DecisionNote | DecisionAssumption | DemandAssumption)['code'];

const one = (count: string | undefined, single: string, several: string) =>
  `${count} ${count === '1' ? single : several}`;
/** What another choice costs more, which may be less than can be paid. */
const costs = (written: Written, { moreMinor = 0 }: Amounts) =>
  Math.round(moreMinor) === 0
    ? 'expected to cost about the same'
    : `expected to cost ${written.moreMinor} more`;
const days = (count: string | undefined) => one(count, 'day', 'days');

/**
 * The sentences of reasons, remarks and assumptions of a plan and of a look back, by their codes. A sentence that asks for a
 * figure that there is not, is not said.
 */
export const planReasons: Record<KnownReason, SayReason> & Record<string, SayReason> = {
  'booked need': (written, { sessions = 0, booked = 0 }) =>
    `Booked until ${written.until}: ${one(written.booked, 'session', 'sessions')}${sessions < 0.8 * booked ? `, of which about ${written.sessions} will take it` : ''}, ${booked === 1 ? '' : 'together '}with about ${written.units}.`,
  'course need': ({ units, courses, until }) =>
    `Until ${until}: ${one(courses, 'training course', 'training courses')} with about ${units}.`,
  'touch-ups owed': ({ units, sessions, until }) =>
    `Still to be booked until ${until}: about ${one(sessions, 'touch-up', 'touch-ups')} with about ${units}.`,
  'unforeseen need': ({ units, unitsPerWeek, until }) =>
    `What nobody has booked yet needs about ${unitsPerWeek} a week, ${units} until ${until}.`,
  'no need expected': ({ until }) => `No need is expected until ${until}.`,
  'in stock': (written, { units, opened = 0 }) => {
    if (units === 0) return 'Nothing that may be used is here.';
    return opened === 0 ? `Here: ${written.units}.` : `Here: ${written.units}; opened: ${written.opened}.`;
  },
  expires: ({ units, wasteMinor, firstOn }) =>
    `About ${units} of what is here or coming will probably expire unused (${wasteMinor}), the first on ${firstOn}.`,
  'on the way': ({ units, likely }) => `On the way: ${units}, probably here by ${likely}.`,
  'on hold': ({ units }) => `On hold, and not counted: ${units}.`,
  'runs short': (written, { on }) =>
    `Chance that it runs short until ${written.until} without an order: ${written.chance}${on === 0 ? '' : `; probably around ${written.on}`}.`,
  lasts: ({ chance, until }) => `Chance that what is here and coming lasts until ${until}: ${chance}.`,
  'lead time': (written, { days95 }) =>
    days95 === 0
      ? 'A delivery is here on the day it is ordered.'
      : `A delivery usually takes ${days(written.typicalDays)}; 19 of 20 take no more than ${days(written.days95)}.`,
  order: ({ packs, units, on, priceMinor }) => `Order ${packs} (${units}) on ${on}, for ${priceMinor}.`,
  covers: (written) =>
    `Once it is here, the next shortage is to be expected in about ${days(written.days)}, around ${written.until}. Chance that it runs short all the same: ${written.chanceAfter}.`,
  'why not less': (written, amounts) =>
    `Only ${written.packs}: ${costs(written, amounts)}, with ${written.unmetUnits} of the need not met.`,
  'why not more': (written, amounts) =>
    `${written.packs} instead: ${costs(written, amounts)}, with ${written.wasteUnits} wasted.`,
  'why not earlier': (written, amounts) => `To order on ${written.on} already is ${costs(written, amounts)}.`,
  'why not later': (written, amounts) => `To order only on ${written.on} is ${costs(written, amounts)}.`,
  'pack exceeds need': ({ packUnits, wasteMinor }) =>
    `The smallest order holds ${packUnits}, more than can be used in date: some of it will probably be wasted (${wasteMinor}).`,
  range: ({ choice, costPerYearMinor, otherwise }) =>
    `Chosen: ${choice}, ${costPerYearMinor} a year. Otherwise: ${otherwise}.`,
  'booked in time': (written, { share = 0 }) =>
    share <= 0
      ? `Nobody books it as early as a delivery takes (${days(written.days95)} for 19 of 20).`
      : `Of the need, ${written.share} is booked earlier than a delivery takes (${days(written.days95)} for 19 of 20). Of ${one(written.sessionsPerYear, 'session', 'sessions')} a year about ${written.unmetPerYear} would go without, which is in the cost.`,
  'appointments to order for': ({ sessions, units, firstOn }) =>
    `Not to be served from the shelf: ${one(sessions, 'booked session', 'booked sessions')} from ${firstOn} on; ${units} missing.`,
  'no offer': () => 'No supplier is known to sell it: add an offer, so that it can be ordered.',

  'price break taken': ({ fromPacks, savedMinor }) =>
    `The price from ${fromPacks} on is reached, which saves ${savedMinor}.`,
  'minimum packs forced': ({ minimumPacks }) => `The supplier sells at least ${minimumPacks}.`,
  'order day forced earlier': ({ wanted, on }) => `${wanted} is no order day: it is ordered on ${on}.`,
  'on hold ignored': ({ units }) => `On hold, and not counted: ${units}.`,
  'lead time beyond life': ({ leadTimeDays, lifeDays }) =>
    `A delivery may take ${days(leadTimeDays)}, longer than what it brings keeps (${days(lifeDays)}).`,
  'no order day': ({ until }) => `The supplier takes no orders until ${until}.`,
  'nothing fits the date': ({ lifeDays }) =>
    `In the ${days(lifeDays)} it keeps, not even one pack is likely to be used.`,
  'full target bounded': ({ units, paths }) =>
    `A target of 100% has no finite quantity: the largest need of ${paths} possible futures is covered, ${units}.`,
  'target of zero': () =>
    'With a target of 0% nothing that is missing costs anything, and nothing is worth ordering.',
  'too late': ({ shortChance, arrival }) =>
    `Chance that some of it is missing before the order arrives, probably on ${arrival}: ${shortChance}.`,
  'no order in time': () => 'What will be missing is missing before anything ordered now could be here.',
  'no need': () => 'Nobody is expected to need it.',

  'unit cost from offer': ({ unitMinor }) =>
    `What some of the stock cost is not on record: the price of the cheapest offer is taken, ${unitMinor}.`,
  'unit cost unknown': () => 'What it costs is not known: waste of it counts as nothing.',
  'life on arrival unlimited': () => 'How long it keeps after it arrives is not known: it is taken to keep.',
  'setting out of range': ({ setting, given, taken }) =>
    `Out of range: ${setting} is ${given}, and ${taken} is taken.`,
  'usual amount from expected uses': ({ units }) =>
    `One use is taken to need ${units}, the mean of what is expected.`,
  'usual amount unknown': ({ units }) => `How much one use needs is not known: ${units} is taken.`,
  'delivery shared': ({ lines, shareMinor }) =>
    `A delivery is taken to be shared by ${one(lines, 'product', 'products')}: ${shareMinor} each.`,
  'looked ahead': ({ horizonDays, tailDays }) =>
    `Looked ahead: ${days(horizonDays)}, and ${days(tailDays)} more in which what is left is used or expires.`,

  'service target assumed': ({ perMille }) =>
    `No service target is set: ${perMille} of the need is to be met.`,
  'order cost assumed': ({ costMinor }) => `No cost of placing an order is set: ${costMinor} is taken.`,
  'holding cost assumed': ({ perMille }) =>
    `No cost of holding stock is set: ${perMille} of its price a year is taken.`,
  'lead time assumed': (written) =>
    `${written.supplier} says no lead time, and no order has come yet: ${days(written.days)} are taken.`,
  'life on arrival assumed': (written) =>
    `How long it keeps when ${written.supplier} brings it is not known: ${days(written.days)} are taken.`,
  'delivery cost assumed': ({ supplier }) =>
    `What a delivery of ${supplier} costs is not known: none is counted.`,
  'opened life unlimited': () =>
    'How long it keeps once opened is not known: an opened bottle is taken to be used until its date.',
  'overdue order counted on': () =>
    'An order is later than any was before: it is still counted on, a few days from now.',
  'cannot be computed': () =>
    'Something went wrong on our side, so it could not be computed: decide on it by hand. The log of the service says what.',
  'overdue order left out': ({ order, pieces }) =>
    `Order ${order} is so late that it is taken for lost: its ${one(pieces, 'piece', 'pieces')} are not counted on. Call it off, or write down when it comes.`,
  'approved order counted on': ({ order, pieces }) =>
    `Order ${order} is approved and not sent yet: its ${one(pieces, 'piece', 'pieces')} are counted on as if it went today.`,
  'drafted already': ({ order, pieces }) =>
    `In the draft of order ${order}: ${one(pieces, 'piece', 'pieces')}, not counted on until it is approved.`,
  'every lot is caught on arrival': ({ product }) =>
    `${product} is recalled without a limit to some lots: all that comes of it is put on hold on arrival, so nothing of it is ordered or counted on.`,
  'some lots are caught on arrival': ({ product, lots }) =>
    `Of ${product} some lots are recalled and put on hold on arrival: ${lots}. Others are taken to come.`,
  'belongs to single artists': ({ pieces }) =>
    `${one(pieces, 'piece', 'pieces')} here belong to single artists; they are counted whoever needs them.`,
  'goes with its owner': ({ pieces }) =>
    `${one(pieces, 'piece', 'pieces')} here belong to an artist who leaves; they are counted until that last day.`,
  'owner has left': ({ pieces }) =>
    `${one(pieces, 'piece', 'pieces')} here belong to an artist who has left; they are not counted.`,
  'offer left out, other currency': ({ supplier }) =>
    `An offer of ${supplier} is in another currency than the studio’s, and is left out.`,
  'offer left out, product archived': ({ supplier }) =>
    `An offer of ${supplier} is of a product that is archived, and is left out.`,
  'terms in another currency left out': ({ supplier }) =>
    `Smallest order and delivery cost of ${supplier} are in another currency than the studio’s, and are left out.`,
  'content of a delivery unknown': ({ supplier, on }) =>
    `What a delivery of ${supplier} expected on ${on} holds is not known: it is not counted on.`,
  'planned without a day': ({ sessions }) => `Planned sessions without a day, not counted: ${sessions}.`,
  'past and never closed': ({ sessions }) =>
    `Sessions planned for a day that is past and never closed, not counted: ${sessions}.`,
  'course without kit list': ({ courses }) =>
    `Booked courses of procedures without a kit list: ${courses}. Each trainee is taken to use what a first session does.`,
  'replaced by another': () => 'Another product takes its place: what is left is used up.',
  'changed by the basket': (written, { ownOn }) =>
    ownOn === 0
      ? `It is taken along with other products of the supplier, ${written.packs} on ${written.on}; by itself it would not be ordered.`
      : `It is ordered together with other products of the supplier, ${written.packs} on ${written.on}; by itself it would be ${written.ownPacks} on ${written.ownOn}, with which the following compares.`,

  'no history': () => 'It was never used, as far as is known.',
  'short history': () => 'It is used for a short time only: the forecast is rough.',
  'level assumed': () => 'How often it is needed is assumed, since too little is known.',
  'amount from kit list': () => 'How much a session takes is from the kit list, and not learnt yet.',
  'amount assumed': () => 'How much a session takes is assumed.',
  'return rate assumed': () => 'How many clients come back for a touch-up is assumed: too few have yet.',
  'return delay assumed': () => 'When clients come back for a touch-up is assumed: too few have yet.',
  'booking curve assumed': () => 'How early sessions are booked is assumed: too few are on record.',
  'attendance assumed': () => 'How many booked sessions take place is assumed: too few are on record.',
  'weekdays assumed': () => 'All weekdays count alike: too few sessions are on record.',
  'history of predecessor': () => 'The history of the product it takes the place of counts as its own.',
  'artist leaves': () => 'An artist who uses it leaves: their need ends with their last day.',
  'bookings after the last day': () => 'An artist who leaves is booked after their last day.',

  // Of a look back.
  'weekly look': (written) =>
    `The plan and the fixed levels look at the shelf every ${days(written.days)}; the plan that is made each night looks oftener.`,
  'fewer paths': ({ paths }) => `Each decision weighs ${paths} possible futures, fewer than a plan does.`,
  'terms of today': () =>
    'Prices, packs, lead times, life on arrival and settings are those of today, and an order takes the usual time.',
  'lists of today': () =>
    'Kit lists, touch-up windows and a return rate that is set are those of today: what they were is not kept.',
  'bookings known in part': () =>
    'Of bookings of then, those are known that took place and whose day of booking was written down. Called-off ones, courses and touch-up bookings without that day are not, so the plan knew less than it would have.',
  'first expired first': () =>
    'What ends first is used first, and what ends is thrown away that day: in all three, also in “as it was ordered”, which may differ from what was done.',
  'no holds': () =>
    'Holds, practice stock, counts, breakages and goods sent to or from other studios are left out.',
  'gifts come to all': () =>
    'Gifts, samples, opening stock and what had been ordered before come to all three.',
  'no shared baskets': () =>
    'Orders are counted item by item, each with its share of a delivery: they are not put together.',
  'shortage as weighed': () => 'What is missing costs what the plan itself reckoned it to cost.',
  'amounts assumed': ({ needs }) =>
    `Uses without a written amount, or for which nothing was left, count as usual ones: ${needs}.`,
};

/** The same where the figures differ from item to item. */
export const planReasonsInGeneral: Record<string, string> = {
  'unit cost from offer':
    'What some of the stock cost is not on record: the price of the cheapest offer is taken.',
  'setting out of range': 'A setting is out of range: the nearest that is allowed is taken.',
  'usual amount unknown':
    'How much one use needs is not known: a piece is taken, or a quarter of a millilitre.',
  'usual amount from expected uses': 'One use is taken to need the mean of what is expected.',
  'lead time assumed': 'Suppliers say no lead time, and no order has come yet: a usual one is taken.',
  'life on arrival assumed': 'How long it keeps when it arrives is not known: a usual time is taken.',
  'delivery cost assumed': 'What a delivery of some suppliers costs is not known: none is counted.',
  'overdue order left out':
    'Some orders are so late that they are taken for lost and not counted on. Call them off, or write down when they come.',
  'approved order counted on':
    'Orders that are approved and not sent yet are counted on as if they went today.',
  'drafted already':
    'Some of it stands in drafts of orders, which are not counted on until they are approved.',
  'every lot is caught on arrival':
    'Some products are recalled as a whole: what comes of them is put on hold on arrival, so nothing of them is ordered or counted on.',
  'some lots are caught on arrival':
    'Of some products single lots are recalled and put on hold on arrival. Others are taken to come.',
  'belongs to single artists':
    'Some of what is here belongs to single artists, and is counted whoever needs it.',
  'goes with its owner':
    'Some of what is here belongs to an artist who leaves, and is counted until that last day.',
  'owner has left': 'Some of what is here belongs to an artist who has left, and is not counted.',
  'offer left out, other currency': 'Offers in another currency than the studio’s are left out.',
  'offer left out, product archived': 'Offers of products that are archived are left out.',
  'terms in another currency left out':
    'Smallest orders and delivery costs in another currency than the studio’s are left out.',
  'course without kit list':
    'For booked courses of procedures without a kit list, each trainee is taken to use what a first session does.',
};

/** What is set, where it is named in a sentence, by the name the service gives it. */
export const planSettingNames: Record<string, string | undefined> = {
  serviceTargetPerMille: 'the need to be met',
  shortageCostMinor: 'the cost of a session that cannot have it',
  orderCostMinor: 'the cost of an order',
  holdingPerYearPerMille: 'the cost of keeping stock',
  deliveryCostMinor: 'the cost of a delivery',
  packPriceMinor: 'the price of a pack',
};
export const planOtherSetting = 'a setting';

/** What one unit costs. */
export const planUnitPrices = {
  pieces: (money: string) => `${money} a piece`,
  microlitres: (money: string) => `${money} a millilitre`,
};
