/**
 * What stands behind a word for dates: one date, several, or a span: `10/15` · `between 7/11/12 and 10/25/12` ·
 * `5/31/12, 6/7/12 & 6/14/12` · `on or before 10/2015`.
 */
import type { DaySpan } from '../../stock/lot-matching/lot-scope.js';
import { hasDigit } from './label-words.js';
import { plainWord, type Token } from './tokens.js';
import {
  type DateOrder,
  type DateSettings,
  dateAt,
  later,
  type WrittenDate,
  widest,
} from './written-dates.js';

export interface DateExpression {
  spans: DaySpan[];
  /** The tokens of the dates: the first, and the one after the last. */
  from: number;
  next: number;
  ambiguous: { from: number; next: number; readings: WrittenDate['readings'] }[];
  byOrder: boolean;
  /** A span that was written from its later to its earlier end. */
  turned: boolean;
  /** A day may be meant whose year is not said. */
  yearUnclear: boolean;
}

export interface ExpressionSettings {
  thisYear: number;
  order: DateOrder;
  isLabel: (index: number) => boolean;
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));
const passed = set(
  'date dates dated of on is are was were from between the and or in with within range ranging marked starting beginning distributed sold shipped packaged packed ' +
    'supplied during all for print printed label labeled labelled a an as follows following affected s ' +
    'am vom von zwischen und im dem der den das datum ' +
    'le du de la les entre et au des el del desde los y e fechas fecha month year',
);
const ranges = set('thru through to until till til bis hasta au al a jusqu \u2013 - ~ up');
const lists = set('and or und oder et ou y o e & , /');
const before = set('before by until till prior bis avant antes earlier vor through thru');
const after = set('after since later onward onwards ab nach apres desde despues seit');
const farthest = 9;

/** Reads the dates from a token on, past words that lead to them; null when none comes soon. */
export function dateExpressionAt(
  tokens: readonly Token[],
  index: number,
  { thisYear, order, isLabel }: ExpressionSettings,
): DateExpression | null {
  const settings: DateSettings = { thisYear, order, labelled: true };
  let at = index;
  let betweenAnd = false;
  let openAt: 'start' | 'end' | null = null;
  let first: WrittenDate | null = null;
  for (let steps = 0; steps < farthest; steps++, at++) {
    const token = tokens[at];
    if (token === undefined || token.kind === 'blank line' || isLabel(at)) return null;
    first = readDate(tokens, at, settings);
    if (first !== null) break;
    if (token.kind === 'line end' && at > index) return null;
    if (token.kind === 'sign' && !/^[-:,("'#\u2013*\u2022]$/.test(token.text)) return null;
    if (token.kind !== 'word') continue;
    const word = token.plain;
    if (before.has(word)) openAt = 'start';
    else if (after.has(word)) openAt = 'end';
    else if (!passed.has(word)) return null;
    if (/^(?:between|zwischen|entre)$/.test(word)) betweenAnd = true;
  }
  if (first === null) return null;
  const found = {
    from: at,
    ambiguous: [] as DateExpression['ambiguous'],
    byOrder: false,
    yearUnclear: false,
  };
  const take = (date: WrittenDate, from: number): { from: string; through: string } => {
    if (date.readings.length > 1) found.ambiguous.push({ from, next: date.next, readings: date.readings });
    found.byOrder ||= date.byOrder;
    found.yearUnclear ||= date.yearUnclear === true;
    return widest(date.readings);
  };
  const spans: DaySpan[] = [];
  const firstSpan = take(first, at);
  const end = rangeEnd(tokens, first.next, settings, betweenAnd, isLabel);
  if (end !== null) {
    const last = take(end.date, end.from);
    const turned = last.through < firstSpan.from;
    const span = turned
      ? { from: last.from, through: firstSpan.through }
      : {
          from: firstSpan.from,
          through: later(last.through, firstSpan.through),
        };
    return { ...found, spans: [span], next: end.date.next, turned };
  }
  const tail = openTail(tokens, first.next);
  const open = tail?.open ?? openAt;
  spans.push({
    from: open === 'start' ? null : firstSpan.from,
    through: open === 'end' ? null : firstSpan.through,
  });
  let next = tail?.next ?? first.next;
  for (;;) {
    const further = listedDate(tokens, next, settings, isLabel);
    if (further === null) break;
    spans.push(take(further.date, further.from));
    next = further.date.next;
  }
  return { ...found, spans, next, turned: false };
}

/** A date at a token; a word such as `01/2013-05/2014` is none by itself. */
function readDate(tokens: readonly Token[], at: number, settings: DateSettings): WrittenDate | null {
  return dateAt(tokens, at, settings) ?? hyphenedDates(tokens, at, settings);
}

/** `7/11/12-10/25/12`, one word: the days from the first through the last. */
function hyphenedDates(tokens: readonly Token[], at: number, settings: DateSettings): WrittenDate | null {
  const token = tokens[at];
  const halves =
    token !== undefined && token.kind === 'word' && token.text.length < 24 ? token.text.split('-') : [];
  if (halves.length !== 2 || !halves.every((half) => /[/.]/.test(half) || /\p{L}/u.test(half))) return null;
  const dates = halves.map((text) =>
    dateAt(
      [{ kind: 'word', text, plain: plainWord(text), start: 0, end: text.length, gap: 'none', tabs: 0 }],
      0,
      settings,
    ),
  );
  const readings = dates.flatMap((date) => date?.readings ?? []);
  if (dates.some((date) => date === null)) return null;
  return { next: at + 1, readings: [widest(readings)], byOrder: dates.some((date) => date?.byOrder) };
}

function rangeEnd(
  tokens: readonly Token[],
  index: number,
  settings: DateSettings,
  betweenAnd: boolean,
  isLabel: (index: number) => boolean,
): { date: WrittenDate; from: number } | null {
  let at = index;
  let joined = false;
  for (let steps = 0; steps < 5; steps++, at++) {
    const token = tokens[at];
    if (token === undefined || isLabel(at)) return null;
    const word = token.plain;
    if (joined) {
      const date = readDate(tokens, at, settings);
      if (date !== null) return { date, from: at };
    }
    if (ranges.has(word) || (betweenAnd && lists.has(word) && word !== ',')) joined = true;
    else if (!(joined && (passed.has(word) || word === "'" || word === ':')) && !/^[.,]$/.test(word))
      return null;
  }
  return null;
}

/** `… or later`, `and before`. */
function openTail(tokens: readonly Token[], index: number): { open: 'start' | 'end'; next: number } | null {
  const joint = tokens[index]?.plain ?? '';
  const at = lists.has(joint) || passed.has(joint) ? index + 1 : index;
  const token = tokens[at];
  if (token?.kind !== 'word') return null;
  const word = token.plain;
  if (/^(?:earlier|before|prior|fruher|avant|anteriores)$/.test(word)) return { open: 'start', next: at + 1 };
  if (/^(?:later|after|onward|onwards|spater|posteriores)$/.test(word)) return { open: 'end', next: at + 1 };
  return null;
}

function listedDate(
  tokens: readonly Token[],
  index: number,
  settings: DateSettings,
  isLabel: (index: number) => boolean,
): { date: WrittenDate; from: number } | null {
  let at = index;
  while (at < index + 2 && lists.has(tokens[at]?.plain ?? '') && tokens[at] !== undefined) at += 1;
  if (at === index || isLabel(at)) return null;
  const word = tokens[at]?.text ?? '';
  // A bare number behind a comma is no date: it may be a lot.
  const date = readDate(tokens, at, { ...settings, labelled: word.includes('/') || !hasDigit(word) });
  return date === null ? null : { date, from: at };
}
