/** Names of makers, products and shades as they stand behind labels, in front of lots and in lists. */
import type { DraftName } from './draft-scope.js';
import { hasDigit } from './label-words.js';
import type { NoticeMarks } from './notice-marks.js';
import type { Token } from './tokens.js';

/** A longer name is cut: no product has one. */
const longestName = 200;

interface Ends {
  untilComma: boolean;
  /** At most this many words. */
  most: number;
  untilSentence?: boolean;
  /** Only words that hold a digit or are in capitals, as a reference has. */
  onlyCodes?: boolean;
}

/** What stands from a token to the end of its line, to where something else begins, or null for nothing. */
export function restOfLine(
  tokens: readonly Token[],
  index: number,
  isEnd: (index: number) => boolean,
  { untilComma, most, untilSentence = false, onlyCodes = false }: Ends,
): (DraftName & { next: number }) | null {
  let at = index;
  let words = 0;
  for (; words < most && at < index + 4 * most; at++) {
    const token = tokens[at];
    if (token === undefined || token.kind === 'line end' || token.kind === 'blank line') break;
    if (
      isEnd(at) ||
      token.text === ';' ||
      token.text === '|' ||
      (token.gap === 'wide' && at > index && words > 0)
    )
      break;
    if (untilComma && (token.text === ',' || token.text === '(') && !isCompanyForm(tokens[at + 1])) break;
    if (untilSentence && /^[.(,]$/.test(token.text) && tokens[at + 1]?.gap !== 'none') break;
    if (
      onlyCodes &&
      token.kind === 'word' &&
      !hasDigit(token.text) &&
      token.text !== token.text.toUpperCase()
    )
      break;
    if (token.kind === 'word') words += 1;
  }
  return withoutEdges(tokens, index, at, at);
}

function isCompanyForm(token: Token | undefined): boolean {
  return /^(?:inc|ltd|llc|gmbh|co|corp|sa|ag|bv|srl|sl|plc|limited)$/i.test(token?.text ?? '');
}

/** A stretch of tokens as a name, or null when no word is in it. */
export function tidyName(tokens: readonly Token[], from: number, to: number): DraftName | null {
  const name = withoutEdges(tokens, from, to, to);
  return name === null ? null : { text: name.text, start: name.start, end: name.end };
}

function withoutEdges(
  tokens: readonly Token[],
  from: number,
  to: number,
  next: number,
): (DraftName & { next: number }) | null {
  let first = from;
  let last = to - 1;
  while (first <= last && tokens[first]?.kind !== 'word') first += 1;
  while (last >= first && tokens[last]?.kind !== 'word' && !isClosing(tokens, first, last)) last -= 1;
  const start = tokens[first]?.start;
  let end = tokens[last]?.end;
  if (first > last || start === undefined || end === undefined) return null;
  if (end - start > longestName) {
    while (last > first && (tokens[last]?.end ?? 0) - start > longestName) last -= 1;
    end = Math.min(tokens[last]?.end ?? end, start + longestName);
  }
  return { text: textOf(tokens, first, last, start, end), start, end, next };
}

/** `Brow Ink (Walnut)`: the bracket belongs to the name. */
function isClosing(tokens: readonly Token[], first: number, last: number): boolean {
  if (tokens[last]?.text !== ')') return false;
  for (let at = last - 1; at >= first && at > last - 12; at--) if (tokens[at]?.text === '(') return true;
  return false;
}

/** The words as written, with one space where there were several. */
function textOf(tokens: readonly Token[], first: number, last: number, start: number, end: number): string {
  let text = '';
  for (let at = first; at <= last; at++) {
    const token = tokens[at];
    if (token !== undefined) text += (at > first && token.gap !== 'none' ? ' ' : '') + token.text;
  }
  return text.slice(0, end - start);
}

/** `Walnut, Sand and Rose`: each name; where only "and" or a slash parts them, the whole may be one name too. */
export function namesInList(name: DraftName, text: string): DraftName[] {
  const names: DraftName[] = [];
  const parting = /\s*(?:[,;]|\s(?:and|und|et|y|e|&)\s|\s?\/\s?)\s*/g;
  let from = name.start;
  let commas = false;
  const add = (start: number, end: number): void => {
    const raw = text.slice(start, end);
    const trimmed = raw.trim();
    const at = start + raw.indexOf(trimmed);
    if (/[\p{L}\p{N}]/u.test(trimmed))
      names.push({ text: trimmed.replace(/\s+/g, ' '), start: at, end: at + trimmed.length });
  };
  for (const match of text.slice(name.start, name.end).matchAll(parting)) {
    add(from, name.start + match.index);
    from = name.start + match.index + match[0].length;
    commas ||= /[,;]/.test(match[0]);
    if (names.length >= 50) break;
  }
  if (names.length === 0) return [name];
  add(from, name.end);
  return commas || names.length < 2 ? names : [name, ...names];
}

const noNames = new Set(
  (
    'the a an is are was were has have had may can must should will would following affected recalled recall recalls recalling please we our your you all any ' +
    'these this that those only if when with which from of urgent important notice warning safety field customers dear sir stop quarantine check see list no not ' +
    'return do use destroy contact there it they be been being because due concerned involved betroffen betroffene betroffenen die der das alle folgende ist sind ' +
    'les des le la concernes los las el afectados specific certain product products item items affecting regarding and or in for by at on to'
  ).split(' '),
);
const mostWords = 10;

/** A name that stands before a lot word on its line; null when what stands there is no name. */
export function nameBefore(tokens: readonly Token[], index: number, marks: NoticeMarks): DraftName | null {
  if (marks.labels.has(index - 1)) return null;
  let first = index;
  while (first > 0 && index - first < 2 * mostWords) {
    const before = tokens[first - 1];
    if (
      before === undefined ||
      before.kind === 'line end' ||
      before.kind === 'blank line' ||
      before.text === ';' ||
      before.text === ':'
    ) {
      if (before?.text === ':' && first < index - 1) return null;
      break;
    }
    first -= 1;
  }
  if (index - first >= 2 * mostWords) return null;
  while (first < index && tokens[first]?.kind === 'sign') first += 1;
  if (/^(?:\d{1,2}|[a-z])$/i.test(tokens[first]?.text ?? '') && /^[).]$/.test(tokens[first + 1]?.text ?? ''))
    first += 2;
  const words: string[] = [];
  for (let at = first; at < index; at++) {
    const token = tokens[at];
    if (
      token === undefined ||
      marks.labels.has(at) ||
      token.text === '.' ||
      token.text === '?' ||
      token.text === '!'
    )
      return null;
    if (token.kind === 'word') words.push(token.plain);
  }
  const beginning = tokens[first]?.text.charAt(0) ?? '';
  if (words.length === 0 || words.length > mostWords || words.some((word) => noNames.has(word))) return null;
  if (beginning === beginning.toLowerCase() && !/\d/.test(beginning)) return null;
  if (!words.some((word) => /\p{L}{3}/u.test(word))) return null;
  return tidyName(tokens, first, index);
}
