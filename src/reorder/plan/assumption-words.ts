import { money } from '../decision/explanation-words.js';
import type { KeptAssumption } from './kept-assumptions.js';

type Words = (figures: Record<string, unknown>, currency: string) => string;

const number = (value: unknown) =>
  typeof value === 'number' ? String(Math.round(value * 100) / 100) : String(value);
const percent = (value: unknown) => (typeof value === 'number' ? `${number(value / 10)} %` : '?');

const words: Record<string, Words> = {
  'service target assumed': ({ perMille }) =>
    `No service target is set: ${percent(perMille)} of the need is to be met.`,
  'order cost assumed': ({ costMinor }, currency) =>
    `No cost of placing an order is set: ${money(Number(costMinor), { currency })} is taken.`,
  'holding cost assumed': ({ perMille }) =>
    `No cost of holding stock is set: ${percent(perMille)} of its price a year are taken.`,
  'return rate assumed': () => 'Too few touch-ups are on record: how many clients come back is assumed.',
  'return delay assumed': () =>
    'Too few touch-ups are on record: when clients come back is spread over the window.',
  'booking curve assumed': () => 'Too few bookings are on record: how early sessions are booked is assumed.',
  'attendance assumed': () => 'Too few bookings are on record: how many take place is assumed.',
  'weekdays assumed': () => 'Too few sessions are on record: all weekdays count alike.',
  'no history': () => 'It was never used, as far as is known.',
  'short history': () => 'It is used for a short time only: the forecast is rough.',
  'level assumed': () => 'Too little is known to foretell by method: a level is assumed.',
  'amount from kit list': () => 'How much a session takes is taken from the kit list.',
  'amount assumed': () => 'How much a session takes is assumed.',
  'history of predecessor': () => 'The history of the product it takes the place of counts as its own.',
  'artist leaves': () => 'An artist who used it leaves: their need ends with their last day.',
  'bookings after the last day': () => 'An artist who leaves is booked after their last day.',
  'lead time assumed': ({ supplier, days }) =>
    `${supplier} says no lead time and no order was seen: ${number(days)} days are taken.`,
  'life on arrival assumed': ({ supplier, days }) =>
    `Nothing is known of how long it keeps when ${supplier} brings it: ${number(days)} days are taken.`,
  'delivery cost assumed': ({ supplier }) => `No delivery cost of ${supplier} is known: none is counted.`,
  'opened life unlimited': () =>
    'No life after opening is known: an opened bottle is used until its use-by date.',
  'overdue order counted on': () =>
    'An order is later than any was before: it is still counted on, a few days from now.',
  'cannot be computed': () =>
    'Something went wrong on our side, so it could not be computed: decide on it by hand. The log of the service says what.',
  'overdue order left out': ({ order, pieces }) =>
    `Order ${order} is so late that it is taken for lost: its ${number(pieces)} pieces are not counted on. Call it off, or write the day on which it comes.`,
  'approved order counted on': ({ order, pieces }) =>
    `Order ${order} is approved and not sent yet: its ${number(pieces)} pieces are counted on as if it went today.`,
  'drafted already': ({ order, pieces }) =>
    `${number(pieces)} pieces stand in the draft of order ${order}, which is not counted on until it is approved.`,
  'every lot is caught on arrival': ({ product }) =>
    `${product} is recalled without a limit to some lots: all that comes of it is put on hold on arrival, so nothing of it is ordered or counted on.`,
  'some lots are caught on arrival': ({ product, lots }) =>
    `Of ${product} some lots are recalled and put on hold on arrival: ${lots}. That others come is taken for granted.`,
  'belongs to single artists': ({ pieces }) =>
    `Of what is here, ${number(pieces)} belong to single artists, and are counted whoever needs them.`,
  'goes with its owner': ({ pieces }) =>
    `Of what is here, ${number(pieces)} belong to an artist who leaves, and are counted until that last day.`,
  'owner has left': ({ pieces }) =>
    `Of what is here, ${number(pieces)} belong to an artist who has left, and are not counted.`,
  'offer left out, other currency': ({ supplier }) =>
    `An offer of ${supplier} is in another currency than the studio's, and is left out.`,
  'offer left out, product archived': ({ supplier }) =>
    `An offer of ${supplier} is of a product that is archived, and is left out.`,
  'terms in another currency left out': ({ supplier }) =>
    `Minimum and delivery cost of ${supplier} are in another currency than the studio's, and are left out.`,
  'content of a delivery unknown': ({ supplier, on }) =>
    `A delivery of ${supplier} expected on ${on} is of unknown content and not counted.`,
  'planned without a day': ({ sessions }) =>
    `${number(sessions)} planned sessions have no day, and are not counted.`,
  'past and never closed': ({ sessions }) =>
    `${number(sessions)} sessions were planned for a day of the past and never closed, and are not counted.`,
  'course without kit list': ({ courses }) =>
    `${number(courses)} booked courses are of procedures without a kit list: each trainee is taken to use what a first session does.`,
  'replaced by another': () => 'Another product takes its place: what is left is used up.',
  'unit cost from offer': () => 'What the stock cost is not on record: the price of the offer is taken.',
  'unit cost unknown': () => 'What it costs is not known: nothing of it is counted.',
  'life on arrival unlimited': () => 'No date limits what arrives.',
  'setting out of range': ({ setting, given, taken }) =>
    `The setting ${setting} is ${number(given)}, which is out of range: ${number(taken)} is taken.`,
  'usual amount from expected uses': () => 'What one use takes is the mean of the expected ones.',
  'usual amount unknown': () =>
    'What one use takes is not known: a piece is taken, or a quarter of a millilitre.',
  'delivery shared': ({ lines }) =>
    `A delivery is shared by ${number(lines)} lines, as is usual with this supplier.`,
  'looked ahead': ({ horizonDays, tailDays }) =>
    `${number(horizonDays)} days are looked ahead, and what is left is followed for ${number(tailDays)} more.`,
};

/**
 * An assumption in an English sentence; one without words of its own is told by its code and figures.
 *
 * @param currency ISO 4217, of all money in it
 */
export function assumptionWords({ code, figures }: KeptAssumption, currency: string): string {
  const own = words[code];
  if (own !== undefined) return own(figures, currency);
  const told = Object.entries(figures).map(([name, value]) => `${name} ${number(value)}`);
  return told.length === 0 ? `${code}.` : `${code}: ${told.join(', ')}.`;
}
