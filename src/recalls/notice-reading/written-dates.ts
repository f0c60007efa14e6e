/**
 * Dates as people write them, read into the days they can mean.
 *
 * - A month without a day is the whole month, a year the whole year.
 * - `03/04/15` can be 3 April or 4 March: both readings are given, and the span runs over both. The order of another
 *   date of the same notice, or the language of its words, decides when it can (`DateOrder`).
 * - Years of two digits get their century as in GS1 symbols (GS1 General Specifications 7.12 [P]).
 */
import { Temporal } from 'temporal-polyfill';
import { fullYear } from '../../catalogue/gs1/gs1-date.js';
import type { DaySpan } from '../../stock/lot-matching/lot-scope.js';
import { plainWord, type Token } from './tokens.js';

export type DateOrder = 'day first' | 'month first' | null;

export interface WrittenDate {
  /** The token after the date. */
  next: number;
  /** One, or two where day and month could be meant either way. Both ends are given. */
  readings: { from: string; through: string }[];
  /** It needed the order of day and month from elsewhere. */
  byOrder: boolean;
  /** `May 17`: a month and a year, or a day whose year is not said. */
  yearUnclear?: true;
}

export interface DateSettings {
  /** The year of reading, for the century of years of two digits. */
  thisYear: number;
  order: DateOrder;
  /** A word says that a date stands here, so that `1015`, `151031`, `10/15` and `2015` are dates too. */
  labelled: boolean;
}

const monthNames: Record<string, number | undefined> = Object.create(null);
for (const [number, names] of [
  'january jan januar janner janvier janv enero ene gennaio gen januari',
  'february feb februar fevrier fevr fev febrero febbraio februari',
  'march mar marz mrz mars marzo maart',
  'april apr avril avr abril abr aprile',
  'may mai mayo maggio mag mei',
  'june jun juni juin junio giugno giu',
  'july jul juli juillet juil julio luglio lug',
  'august aug aout agosto ago augustus',
  'september sep sept septembre septiembre settembre set',
  'october oct oktober okt octobre octubre ottobre ott',
  'november nov novembre noviembre',
  'december dec dezember dez decembre diciembre dic dicembre',
].entries()) {
  for (const name of names.split(' ')) monthNames[name] = number + 1;
}

const hasDigit = /\d/;
const years = { earliest: 1990, latest: 2099 };

/** The date that begins at a token, or null. */
export function dateAt(tokens: readonly Token[], index: number, settings: DateSettings): WrittenDate | null {
  const token = tokens[index];
  if (token === undefined || token.kind !== 'word' || token.text.length > 20) return null;
  // Most words are none.
  if (!hasDigit.test(token.text) && monthNames[token.plain] === undefined) return null;
  return (
    dateOfWord(token.text, index + 1, settings) ??
    dateWithMonthName(tokens, index, settings) ??
    spacedDate(tokens, index, settings)
  );
}

/** Whether a word alone is written like a date, such as the lot code `12.03.15`. */
export function looksLikeDate(word: string): boolean {
  return /^(?:\d{1,2}[-./]\d{1,2}[-./](?:\d{2}|\d{4})|\d{4}[-./]\d{1,2}(?:[-./]\d{1,2})?)$/.test(word);
}

/** What the order of day and month is in the dates that leave no choice; null when none does, or they disagree. */
export function orderOf(tokens: readonly Token[]): { order: Exclude<DateOrder, null>; token: Token } | null {
  let found: { order: Exclude<DateOrder, null>; token: Token } | null = null;
  for (const token of tokens) {
    const match =
      token.text.length <= 10 ? /^(\d{1,2})([-./])(\d{1,2})\2(\d{4}|\d{2})$/.exec(token.text) : null;
    if (match === null || (match[2] !== '/' && match[4]?.length === 2)) continue;
    const [first, second] = [Number(match[1]), Number(match[3])];
    if (first < 1 || second < 1 || first > 31 || second > 31 || first > 12 === second > 12) continue;
    const order = first > 12 ? 'day first' : 'month first';
    if (found !== null && found.order !== order) return null;
    found ??= { order, token };
  }
  return found;
}

/** One span over all readings. */
export function widest(readings: readonly { from: string; through: string }[]): {
  from: string;
  through: string;
} {
  const [first = { from: '', through: '' }] = readings;
  return readings.reduce(
    (span, reading) => ({
      from: earlier(span.from, reading.from),
      through: later(span.through, reading.through),
    }),
    first,
  );
}

/** Of two ISO days. */
export function earlier(one: string, other: string): string {
  return [one, other].sort()[0] ?? one;
}

export function later(one: string, other: string): string {
  return [one, other].sort()[1] ?? one;
}

export function printedSpan({ from, through }: DaySpan): string {
  return `${from ?? ''}/${through ?? ''}`;
}

function dateOfWord(word: string, next: number, settings: DateSettings): WrittenDate | null {
  const one = (reading: { from: string; through: string } | null): WrittenDate | null =>
    reading && { next, readings: [reading], byOrder: false };
  let match = /^(\d{4})([-./])(\d{1,2})(?:\2(\d{1,2}))?$/.exec(word);
  if (match) return one(days(Number(match[1]), Number(match[3]), match[4]));
  match = /^(\d{1,2})([-./])(\d{1,2})\2(\d{4}|\d{2})$/.exec(word);
  if (match) {
    const first = Number(match[1]);
    if (first > 31) return null;
    return numbered(first, Number(match[3]), year(match[4] ?? '', settings), next, settings);
  }
  match = /^(\d{1,2})([-./])(\d{4})$/.exec(word);
  if (match) return one(days(Number(match[3]), Number(match[1])));
  match = /^(\d{1,2})[-./]?(\p{L}{3,10})[-./]?(\d{4}|\d{2})$/u.exec(word);
  if (match) {
    const month = monthNames[plainWord(match[2] ?? '')];
    return month === undefined ? null : one(days(year(match[3] ?? '', settings), month, match[1]));
  }
  match = /^(\p{L}{3,10})[-./]?(\d{4}|\d{2})$/u.exec(word);
  if (match) {
    const month = monthNames[plainWord(match[1] ?? '')];
    return month === undefined ? null : one(days(year(match[2] ?? '', settings), month));
  }
  return settings.labelled ? labelledDateOfWord(word, next, settings) : null;
}

function labelledDateOfWord(word: string, next: number, settings: DateSettings): WrittenDate | null {
  const one = (reading: { from: string; through: string } | null): WrittenDate | null =>
    reading && { next, readings: [reading], byOrder: false };
  let match = /^(\d{1,2})[-./](\d{2})$/.exec(word);
  if (match) {
    const [first, second] = [Number(match[1]), Number(match[2])];
    // 10/15 is October 2015; 15/10 can only be the year first.
    if (first <= 12) return one(days(year(match[2] ?? '', settings), first));
    return second <= 12 ? one(days(year(match[1] ?? '', settings), second)) : null;
  }
  if (/^\d{8}$/.test(word)) {
    const yearFirst = days(Number(word.slice(0, 4)), Number(word.slice(4, 6)), word.slice(6));
    if (yearFirst) return one(yearFirst);
    const [first, second] = [Number(word.slice(0, 2)), Number(word.slice(2, 4))];
    return numbered(first, second, Number(word.slice(4)), next, settings);
  }
  if (/^\d{6}$/.test(word)) {
    const parts = [word.slice(0, 2), word.slice(2, 4), word.slice(4)] as const;
    const monthAndYear = days(Number(word.slice(2)), Number(parts[0]));
    const yearFirst = days(year(parts[0], settings), Number(parts[1]), parts[2]);
    const numbers = numbered(Number(parts[0]), Number(parts[1]), year(parts[2], settings), next, settings);
    const readings = [monthAndYear, yearFirst, ...(numbers?.readings ?? [])].filter(
      (reading) => reading !== null,
    );
    return readings.length === 0 ? null : { next, readings: distinct(readings), byOrder: false };
  }
  match = /^(\d{2})(\d{2})$/.exec(word);
  if (match && Number(match[1]) >= 1 && Number(match[1]) <= 12) {
    const month = days(year(match[2] ?? '', settings), Number(match[1]));
    const wholeYear = days(Number(word));
    return { next, readings: [month, wholeYear].filter((reading) => reading !== null), byOrder: false };
  }
  return /^\d{4}$/.test(word) ? one(days(Number(word))) : null;
}

/** Two numbers, either of which may be the day. */
function numbered(
  first: number,
  second: number,
  inYear: number,
  next: number,
  settings: DateSettings,
): WrittenDate | null {
  const dayFirst = days(inYear, second, String(first));
  const monthFirst = days(inYear, first, String(second));
  if (dayFirst === null || monthFirst === null || dayFirst.from === monthFirst.from) {
    const reading = dayFirst ?? monthFirst;
    return reading && { next, readings: [reading], byOrder: false };
  }
  if (settings.order === null) return { next, readings: [dayFirst, monthFirst], byOrder: false };
  return { next, readings: [settings.order === 'day first' ? dayFirst : monthFirst], byOrder: true };
}

/** `31. März 2015`, `October 15, 2015`, `Oct 2015`, `15 Oct '15`, `31 de marzo de 2015`, `2015 Oct 15`. */
function dateWithMonthName(
  tokens: readonly Token[],
  index: number,
  settings: DateSettings,
): WrittenDate | null {
  const parts: { text: string; at: number }[] = [];
  for (let at = index; at < index + 9 && parts.length < 3; at++) {
    const token = tokens[at];
    if (token === undefined || token.kind === 'line end' || token.kind === 'blank line') break;
    if (token.kind === 'sign') {
      if (at === index || !/^[.,'/-]$/.test(token.text)) break;
      continue;
    }
    const word = token.plain;
    if (word === 'de' || word === 'del' || word === 'of' || word === 'the') {
      if (at === index) break;
      continue;
    }
    if (!/^\d{1,4}(?:st|nd|rd|th|er|e|o)?$/.test(word) && monthNames[word] === undefined) break;
    parts.push({ text: word.replace(/^(\d{1,2})(?:st|nd|rd|th|er|e|o)$/, '$1'), at });
  }
  const is = (pattern: string): boolean =>
    parts.length >= pattern.length &&
    [...pattern].every((kind, place) => {
      const text = parts[place]?.text ?? '';
      if (kind === 'm') return monthNames[text] !== undefined;
      return kind === 'd'
        ? /^\d{1,2}$/.test(text)
        : kind === 'Y'
          ? /^\d{4}$/.test(text)
          : /^(?:\d{4}|\d{2})$/.test(text);
    });
  const text = (place: number): string => parts[place]?.text ?? '';
  const found = (reading: { from: string; through: string } | null, length: number): WrittenDate | null =>
    reading && { next: (parts[length - 1]?.at ?? index) + 1, readings: [reading], byOrder: false };
  const month = (place: number): number => monthNames[text(place)] ?? 0;
  if (is('dmy')) return found(days(year(text(2), settings), month(1), text(0)), 3);
  if (is('mdY')) return found(days(Number(text(2)), month(0), text(1)), 3);
  if (is('mY')) return found(days(Number(text(1)), month(0)), 2);
  if (is('Ymd')) return found(days(Number(text(0)), month(1), text(2)), 3);
  if (is('Ym')) return found(days(Number(text(0)), month(1)), 2);
  if (is('mdy')) return found(days(year(text(2), settings), month(0), text(1)), 3);
  // "Oct 15" is a month and a year only where a word says that an expiry stands here.
  if (is('my') && settings.labelled) {
    const date = found(days(year(text(1), settings), month(0)), 2);
    const couldBeDay =
      Number(text(1)) >= 1 && Number(text(1)) <= 31 && tokens[(parts[1]?.at ?? 1) - 1]?.text !== "'";
    return date !== null && couldBeDay ? { ...date, yearUnclear: true } : date;
  }
  return null;
}

/** `10 / 2015`, `15 / 10 / 2015`: with spaces around the signs. */
function spacedDate(tokens: readonly Token[], index: number, settings: DateSettings): WrittenDate | null {
  const sign = tokens[index + 1]?.text;
  if (!settings.labelled || (sign !== '/' && sign !== '-' && sign !== '.')) return null;
  const [first, second] = [tokens[index]?.text ?? '', tokens[index + 2]?.text ?? ''];
  if (!/^\d{1,4}$/.test(first) || !/^\d{1,4}$/.test(second)) return null;
  const third = tokens[index + 3]?.text === sign ? (tokens[index + 4]?.text ?? '') : '';
  if (/^(?:\d{4}|\d{2})$/.test(third))
    return dateOfWord(`${first}${sign}${second}${sign}${third}`, index + 5, settings);
  return dateOfWord(`${first}${sign}${second}`, index + 3, settings);
}

function year(digits: string, { thisYear }: DateSettings): number {
  return digits.length === 2 ? fullYear(Number(digits), thisYear) : Number(digits);
}

/** The days of a year, a month or one day; DD = 00 is the month. Null when there is no such day. */
function days(inYear: number, month?: number, day?: string): { from: string; through: string } | null {
  if (inYear < years.earliest || inYear > years.latest) return null;
  if (month === undefined) return { from: `${inYear}-01-01`, through: `${inYear}-12-31` };
  if (month < 1 || month > 12) return null;
  const length = daysInMonth(inYear, month);
  const start = `${inYear}-${String(month).padStart(2, '0')}`;
  const number = day === undefined ? 0 : Number(day);
  if (number === 0) return { from: `${start}-01`, through: `${start}-${length}` };
  if (number > length) return null;
  const date = `${start}-${String(number).padStart(2, '0')}`;
  return { from: date, through: date };
}

/** A notice may hold a hundred thousand dates, but few months. */
const monthLengths = new Map<number, number>();
function daysInMonth(year: number, month: number): number {
  const key = year * 100 + month;
  const known = monthLengths.get(key);
  if (known !== undefined) return known;
  const { daysInMonth: length } = Temporal.PlainYearMonth.from({ year, month });
  monthLengths.set(key, length);
  return length;
}

function distinct(readings: { from: string; through: string }[]): { from: string; through: string }[] {
  return readings.filter(
    (reading, index) =>
      readings.findIndex((other) => other.from === reading.from && other.through === reading.through) ===
      index,
  );
}
