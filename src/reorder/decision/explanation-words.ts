import { Temporal } from 'temporal-polyfill';
import type { ItemUnit } from '../item.js';
import type { LineDecision } from '../plan/vocabulary.js';
import type { DecisionNote } from './decision-notes.js';
import type { Reason } from './explanation.js';
import type { ItemDecision, RangeComparison } from './item-decision-result.js';
import type { RangeChoice } from './range-choice.js';

/** How an item and its money are said. */
export interface Wording {
  unit: ItemUnit;
  /** ISO 4217. */
  currency: string;
}

/** What a plan says of an item in one or two sentences: what to do, and the reason that weighs most. */
export function lineSentence(decision: ItemDecision, wording: Wording): string {
  const { order, reasons } = decision;
  const what = decisionText(decision.decision, decision, wording);
  const because = reasons.find(({ code }) => code === mainReason[decision.decision]);
  const sentences = [what];
  if (because !== undefined) sentences.push(reasonText(because, wording));
  if (order !== null && decision.decision !== 'order for the appointment') {
    for (const reason of reasons) {
      const isWorthIt = reason.code === 'too late' && reason.shortChance >= worthSaying;
      if (isWorthIt || reason.code === 'covers') sentences.push(reasonText(reason, wording));
    }
  }
  if (decision.decision === 'order for the appointment') {
    const range = reasons.find(({ code }) => code === 'range');
    if (range !== undefined) sentences.push(reasonText(range, wording));
  }
  if (order === null) {
    const expires = reasons.find(({ code }) => code === 'expires');
    if (expires !== undefined) sentences.push(reasonText(expires, wording));
  }
  return sentences.join(' ');
}

/** A chance of missing something before the delivery that is said in short too. */
const worthSaying = 0.2;

const mainReason: Record<LineDecision, Reason['code']> = {
  'order now': 'runs short',
  'order later': 'runs short',
  'order for the appointment': 'appointments to order for',
  'let run out': 'range',
  enough: 'lasts',
  'cannot be ordered': 'runs short',
};

function decisionText(
  decision: LineDecision,
  { order, without, notes }: ItemDecision,
  wording: Wording,
): string {
  const what =
    order === null
      ? ''
      : `${counted(order.packs, 'pack', 'packs')} (${amount(order.units, wording)}) for ${money(order.priceMinor, wording)}`;
  if (decision === 'order now') return `Order ${what} today.`;
  if (decision === 'order later') return `Order ${what} around ${dateOf(order?.on ?? '')}.`;
  if (decision === 'order for the appointment') {
    return order === null
      ? 'Order it when somebody is booked for it: nothing has to be ordered now.'
      : `Order ${what} by ${dateOf(order.on)} for those who are booked.`;
  }
  if (decision === 'let run out') return 'Order no more: let it run out.';
  if (decision === 'enough' && notes.some(({ code }) => code === 'no order in time')) {
    return 'Order nothing more: what will be missing cannot be here any sooner.';
  }
  if (decision === 'enough') {
    // Often short before the last day looked at, and still too early to say when to order.
    return without.shortChance < 0.05
      ? 'There is enough.'
      : 'There is enough for now: nothing has to be ordered in the next three months.';
  }
  return 'It runs short and cannot be ordered: no supplier offers it on a day that can be ordered on.';
}

/** One reason as a sentence. */
export function reasonText(reason: Reason, wording: Wording): string {
  const units = (value: number) => amount(value, wording);
  const price = (minor: number) => money(minor, wording);
  switch (reason.code) {
    case 'booked need':
      return bookedText(reason, wording);
    case 'course need':
      return `${counted(Math.max(1, Math.round(reason.courses)), 'training course', 'training courses')} until ${dateOf(reason.until)} ${needs(reason.courses)} about ${units(reason.units)}.`;
    case 'touch-ups owed':
      return `About ${counted(expected(reason.sessions), 'touch-up', 'touch-ups')} still to be booked until ${dateOf(reason.until)} ${expected(reason.sessions) === 1 ? 'needs' : 'need'} about ${units(reason.units)}.`;
    case 'unforeseen need':
      return reason.unitsPerWeek < smallestSaid(wording)
        ? `What nobody has booked yet needs hardly anything: about ${units(reason.units)} until ${dateOf(reason.until)}.`
        : `What nobody has booked yet needs about ${units(reason.unitsPerWeek)} a week, ${units(reason.units)} until ${dateOf(reason.until)}.`;
    case 'no need expected':
      return `No need is expected until ${dateOf(reason.until)}.`;
    case 'in stock':
      return reason.units === 0 ? 'Nothing usable is here.' : `${inStock(reason, wording)} here.`;
    case 'expires':
      return `About ${units(reason.units)} of what is here or coming will probably expire unused${Math.round(reason.wasteMinor) === 0 ? '' : ` (${price(reason.wasteMinor)})`}, the first on ${dateOf(reason.firstOn)}.`;
    case 'on the way':
      return `${units(reason.units)} ${isOne(reason.units, wording) ? 'is' : 'are'} on the way, probably here by ${dateOf(reason.likely)}.`;
    case 'on hold':
      return `${units(reason.units)} on hold ${isOne(reason.units, wording) ? 'is' : 'are'} not counted.`;
    case 'runs short':
      return shortText(reason);
    case 'lasts':
      return `What is here and coming lasts until ${dateOf(reason.until)}${isSure(reason.chance) ? '' : ` with a chance of ${percent(reason.chance)}`}.`;
    case 'lead time':
      return reason.days95 === 0
        ? 'A delivery is here on the day it is ordered.'
        : `A delivery usually takes ${counted(reason.typicalDays, 'day', 'days')}; 19 of 20 take no more than ${counted(reason.days95, 'day', 'days')}.`;
    case 'order':
      return `${counted(reason.packs, 'pack', 'packs')} with ${units(reason.units)} ordered on ${dateOf(reason.on)} ${reason.packs === 1 ? 'costs' : 'cost'} ${price(reason.priceMinor)}.`;
    case 'covers':
      return `Once it is here, the stock lasts about ${counted(Math.round(reason.days), 'day', 'days')}, until ${dateOf(reason.until)}.`;
    case 'too late':
      return noteText(reason, wording);
    case 'why not less':
      return `${counted(reason.packs, 'pack', 'packs')} only would ${more(reason.moreMinor, wording)}${moreUnmet(reason.unmetUnitsMore, wording)}.`;
    case 'why not more':
      return `${counted(reason.packs, 'pack', 'packs')} would ${more(reason.moreMinor, wording)}${moreWaste(reason.wasteUnitsMore, wording)}.`;
    case 'why not earlier':
      return `Ordering on ${dateOf(reason.on)} already would ${more(reason.moreMinor, wording)}.`;
    case 'why not later':
      return `Ordering on ${dateOf(reason.on)} only would ${more(reason.moreMinor, wording)}.`;
    case 'pack exceeds need':
      return `The smallest order holds ${units(reason.packUnits)}, of which about ${units(reason.needUnits)} can be used in date: ${units(reason.wasteUnits)} (${price(reason.wasteMinor)}) will probably be wasted.`;
    case 'range':
      return rangeText(reason, wording);
    case 'booked in time':
      return reason.share <= 0
        ? `Nobody books it as early as a delivery takes (${counted(reason.days95, 'day', 'days')} for 19 of 20).`
        : `${percent(reason.share)} of the need is booked at least as early as a delivery takes (${counted(reason.days95, 'day', 'days')} for 19 of 20); ${reason.unmetPerYear < 0.05 ? 'hardly any' : `about ${tenths(reason.unmetPerYear)}`} of ${tenths(reason.sessionsPerYear)} sessions a year would go without, which is in the cost.`;
    case 'appointments to order for':
      return `${counted(reason.sessions, 'booked session', 'booked sessions')} from ${dateOf(reason.firstOn)} on cannot be served from the shelf: ${units(reason.units)} ${isOne(reason.units, wording) ? 'is' : 'are'} missing.`;
    case 'no offer':
      return 'No supplier offers it on a day that can be ordered on.';
  }
}

interface PacksOn {
  packs: number;
  on: string | null;
}

/** What the item by itself would order, where the supplier's basket made something else of it. */
export function basketText(own: PacksOn, followed: PacksOn): string {
  const said = ({ packs, on }: PacksOn) =>
    on === null ? 'nothing' : `${counted(packs, 'pack', 'packs')} on ${dateOf(on)}`;
  const compared = own.on === null ? '' : ', with which the following compares';
  return `It is ordered together with other products of the supplier, ${said(followed)}; by itself it would be ${said(own)}${compared}.`;
}

function rangeText(
  { choice, chosenBy, costPerYearMinor, otherwise }: Extract<Reason, { code: 'range' }>,
  wording: Wording,
): string {
  const others = otherwise
    .map(({ choice: other, costPerYearMinor: minor, possible }) =>
      possible
        ? `${rangeWords[other]} ${money(minor, wording)}`
        : `${rangeWords[other]} is not possible, since nobody books early enough`,
    )
    .join(', ');
  return `${capital(rangeWords[choice])} ${chosenWords[chosenBy]}: ${money(costPerYearMinor, wording)} a year${others === '' ? '' : ` (${others})`}.`;
}

const chosenWords: Record<RangeComparison['chosenBy'], string> = {
  manager: 'was chosen',
  'service target': 'costs least of what meets the service target, or comes nearest to it',
  'too seldom': 'is best, since fewer than one use is expected while a pack keeps',
  cost: 'costs least',
};

const rangeWords: Record<RangeChoice, string> = {
  'keep in stock': 'keeping it in stock',
  'order for the appointment': 'ordering it for the appointment',
  'let run out': 'letting it run out',
};

/** One note as a sentence. */
export function noteText(note: DecisionNote, wording: Wording): string {
  const units = (value: number) => amount(value, wording);
  const price = (minor: number) => money(minor, wording);
  switch (note.code) {
    case 'pack exceeds need':
      return `The smallest order exceeds the need in date: of ${units(note.packUnits)} about ${units(note.inDateNeedUnits)} will be used, ${units(note.expectedWasteUnits)} (${price(note.wasteMinor)}) wasted.`;
    case 'price break taken':
      return `The price from ${counted(note.fromPacks, 'pack', 'packs')} on is reached, which saves ${price(note.savedMinor)}.`;
    case 'minimum packs forced':
      return `The supplier sells at least ${counted(note.minimumPacks, 'pack', 'packs')}.`;
    case 'order day forced earlier':
      return `${dateOf(note.wanted)} is no order day: it is ordered on ${dateOf(note.on)}.`;
    case 'on hold ignored':
      return `${units(note.units)} on hold ${isOne(note.units, wording) ? 'is' : 'are'} not counted.`;
    case 'lead time beyond life':
      return `A delivery may take ${counted(note.leadTimeDays, 'day', 'days')}, longer than what it brings keeps (${counted(note.lifeDays, 'day', 'days')}).`;
    case 'no order day':
      return `The supplier takes no orders until ${dateOf(note.until)}.`;
    case 'nothing fits the date':
      return `Nothing of an order could be used in date: it keeps ${counted(note.lifeDays, 'day', 'days')}.`;
    case 'full target bounded':
      return `A target of 100 % has no finite quantity: the largest need of ${note.paths} possible courses is covered, ${units(note.units)} until the next delivery.`;
    case 'target of zero':
      return 'With a target of 0 % a missing unit costs nothing, and nothing is worth ordering.';
    case 'too late':
      return `${isSure(note.shortChance) ? 'Some' : `With a chance of ${percent(note.shortChance)} some`} of it will be missing before the order arrives, probably on ${dateOf(note.arrival)}.`;
    case 'no order in time':
      return 'What will be missing is missing before anything ordered now could be here.';
    case 'no offer':
      return 'No supplier offers it: add an offer so that it can be planned.';
    case 'no need':
      return 'Nobody is expected to need it.';
  }
}

/** Pieces, or millilitres with as many digits as matter. */
export function amount(units: number, { unit }: Pick<Wording, 'unit'>): string {
  if (unit === 'pieces') {
    const rounded = units >= 10 || Number.isInteger(units) ? Math.round(units) : Math.round(units * 10) / 10;
    return `${rounded.toLocaleString('en')} ${rounded === 1 ? 'piece' : 'pieces'}`;
  }
  const millilitres = units / 1_000;
  const digits = millilitres >= 100 ? 0 : millilitres >= 1 ? 1 : 2;
  return `${Number(millilitres.toFixed(digits)).toLocaleString('en')} ml`;
}

/** A whole amount of money with its currency's code: EUR 1,234.50. */
export function money(minor: number, { currency }: Pick<Wording, 'currency'>): string {
  const format = new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay: 'code' });
  const digits = format.resolvedOptions().maximumFractionDigits ?? 2;
  // Some engines put a no-break space after the code.
  return format.format(Math.round(minor) / 10 ** digits + 0).replaceAll('\u00a0', ' ');
}

function percent(share: number): string {
  const value = share * 100;
  if (value >= 99.5 && value < 100) return 'more than 99 %';
  if (value > 0 && value < 1) return 'less than 1 %';
  return `${Math.round(value)} %`;
}

function dateOf(iso: string): string {
  return iso === ''
    ? 'a later day'
    : Temporal.PlainDate.from(iso).toLocaleString('en-GB', {
        day: 'numeric',
        month: 'long',
        year: 'numeric',
      });
}

function counted(count: number, one: string, several: string): string {
  return `${count.toLocaleString('en', { maximumFractionDigits: 1 })} ${count === 1 ? one : several}`;
}

/** Nearly all of those who are booked take it, or only some: a session that seldom does must not seem to need it. */
function bookedText(
  { sessions, booked, units, until }: Extract<Reason, { code: 'booked need' }>,
  wording: Wording,
): string {
  const mean = amount(units, wording);
  if (sessions >= booked * nearlyAll) {
    const of = counted(booked, 'booked session', 'booked sessions');
    return `${of} until ${dateOf(until)} ${needs(booked)} about ${mean}.`;
  }
  return booked === 1
    ? `1 session that is booked until ${dateOf(until)} takes it with a chance of ${percent(sessions)}: ${mean} on average.`
    : `Of ${counted(booked, 'session', 'sessions')} booked until ${dateOf(until)} about ${tenths(sessions)} will take it: ${mean} on average.`;
}

/** Some of those who are booked never come. */
const nearlyAll = 0.8;

function shortText({ chance, on, until }: Extract<Reason, { code: 'runs short' }>): string {
  const by = `with a chance of ${percent(chance)} by ${dateOf(until)}`;
  if (on === null || on === until) return `Without an order it runs short ${by}.`;
  if (isSure(chance)) return `Without an order it runs short, probably around ${dateOf(on)}.`;
  return chance >= 0.5
    ? `Without an order it probably runs short around ${dateOf(on)}, and ${by}.`
    : `Without an order it may run short: ${by}, hardly before ${dateOf(on)}.`;
}

/** What would be said as 100 %. */
function isSure(chance: number): boolean {
  return chance >= 0.995;
}

/** A whole number, of less than one its tenths. */
function expected(count: number): number {
  return count >= 0.95 ? Math.round(count) : Math.max(0.1, Math.round(count * 10) / 10);
}

function tenths(count: number): string {
  return count < 0.05 && count > 0 ? 'less than 0.1' : counted(count, '', '').trim();
}

function needs(count: number): string {
  return Math.round(count) <= 1 ? 'needs' : 'need';
}

function inStock(
  { units, containers, opened }: Extract<Reason, { code: 'in stock' }>,
  wording: Wording,
): string {
  if (wording.unit === 'pieces') return `${amount(units, wording)} ${isOne(units, wording) ? 'is' : 'are'}`;
  const of = counted(containers, 'container', 'containers');
  const openedOnes = opened === 0 ? '' : `, ${opened} opened`;
  return `${amount(units, wording)} in ${of}${openedOnes} ${containers === 1 ? 'is' : 'are'}`;
}

/** A millilitre amount is one amount, pieces are several unless there is one. */
function isOne(units: number, { unit }: Wording): boolean {
  return unit === 'microlitres' || Math.round(units) === 1;
}

function more(minor: number, wording: Wording): string {
  const rounded = Math.round(minor);
  if (rounded === 0) return 'cost about the same';
  return rounded > 0 ? `cost ${money(rounded, wording)} more` : `cost ${money(-rounded, wording)} less`;
}

function moreUnmet(units: number, wording: Wording): string {
  return units >= smallestSaid(wording) ? `, with ${amount(units, wording)} more missing` : '';
}

function moreWaste(units: number, wording: Wording): string {
  return units >= smallestSaid(wording) ? `, with ${amount(units, wording)} more wasted` : '';
}

/** Less is not worth a word. */
function smallestSaid({ unit }: Wording): number {
  return unit === 'pieces' ? 0.1 : 10;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
