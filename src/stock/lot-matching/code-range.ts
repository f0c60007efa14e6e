import { withoutLeadingZeros } from './code-forms.js';
import { isOneSlipApart } from './one-slip.js';

/**
 * The codes from one through the other, never spelled out: "00001 through 99999999" costs no more than any other.
 *
 * The ends are cut into what they share and what counts up between them:
 * - `numbers`: one number counts up, with equal text around it. It is written with at least as many digits as the first
 *   one, so that leading zeros count.
 * - `letters`: one letter counts up.
 * - `several numbers`: more than one number differs, as in 12-900 through 13-100. They are taken in the order in which they
 *   stand; the notice may have meant it otherwise.
 * - `not understood`: the ends share nothing that could count up.
 */
export type CodeRange =
  | {
      kind: 'numbers';
      prefix: string;
      suffix: string;
      low: string;
      high: string;
      /** False when the notice wrote the ends in a way that must be guessed at: shortened, or the higher one first. */
      plainlyMeant: boolean;
    }
  | { kind: 'letters'; prefix: string; suffix: string; low: string; high: string; plainlyMeant: boolean }
  | { kind: 'several numbers'; shape: string; low: string[]; high: string[] }
  | { kind: 'not understood' };

/**
 * How a code lies to a range: `other length`: its number lies between, but is not written with as many digits as those of
 * the range; `perhaps inside`: as far as the range can be understood.
 */
export type PlaceInRange = 'inside' | 'other length' | 'perhaps inside' | 'outside';

/** @param from, through in one of the forms of `CodeForms`; codes that are looked up must be in the same form */
export function codeRange(from: string, through: string): CodeRange {
  const [first, last] = [cut(from), cut(through)];
  if (first.shape !== last.shape) return letterRange(from, through) ?? shortenedRange(from, through);
  const differing = first.numbers.flatMap((number, index) => (number === last.numbers[index] ? [] : [index]));
  const [only, ...others] = differing;
  if (only === undefined) return letterRange(from, through) ?? { kind: 'not understood' };
  if (others.length > 0) {
    const ascending = compareInOrder(first.numbers, last.numbers) <= 0;
    const [low, high] = ascending ? [first.numbers, last.numbers] : [last.numbers, first.numbers];
    return { kind: 'several numbers', shape: first.shape, low, high };
  }
  const texts = around(from, only);
  const isAllNumber = texts.join('') === '';
  return numberRange(texts, first.numbers[only] ?? '', last.numbers[only] ?? '', isAllNumber);
}

export function placeInRange(range: CodeRange, code: string): PlaceInRange {
  switch (range.kind) {
    case 'numbers': {
      const { prefix, suffix, low, high, plainlyMeant } = range;
      const number = between(code, prefix, suffix);
      if (number === null || !isNumberWithin(number, low, high)) return 'outside';
      if (!hasDigitsOfCount(number, low, high)) return 'other length';
      return plainlyMeant ? 'inside' : 'perhaps inside';
    }
    case 'letters': {
      const letter = between(code, range.prefix, range.suffix);
      if (letter === null || letter.length !== 1 || letter < range.low || letter > range.high)
        return 'outside';
      return range.plainlyMeant ? 'inside' : 'perhaps inside';
    }
    case 'several numbers': {
      const { shape, numbers } = cut(code);
      if (shape !== range.shape) return 'outside';
      const within = compareInOrder(range.low, numbers) <= 0 && compareInOrder(numbers, range.high) <= 0;
      return within ? 'perhaps inside' : 'outside';
    }
    case 'not understood':
      return 'perhaps inside';
  }
}

/** Whether some code of the range is one slip away. Found without spelling the range out. */
export function isSlipFromRange(range: CodeRange, code: string): boolean {
  switch (range.kind) {
    case 'numbers':
      return isSlipFromNumbers(range, code);
    case 'letters':
      return lettersOf(range.low, range.high).some((letter) =>
        isOneSlipApart(range.prefix + letter + range.suffix, code),
      );
    case 'several numbers':
      return slipsInDigits(code).some((candidate) => isMember(range, candidate));
    case 'not understood':
      return false;
  }
}

type NumberRange = Extract<CodeRange, { kind: 'numbers' }>;

function isSlipFromNumbers(range: NumberRange, code: string): boolean {
  const { prefix, suffix, low, high } = range;
  const [shortest, longest] = [Math.min(low.length, high.length), Math.max(low.length, high.length)];
  const rest = code.length - prefix.length - suffix.length;
  if (rest < shortest - 1 || rest > longest + 1) return false;
  const counts = (number: string) => isMember(range, prefix + number + suffix);
  // The first or last digit swapped with what stands beside it.
  const borders = [prefix.length - 1, code.length - suffix.length - 1];
  if (borders.some((index) => isMember(range, swappedAt(code, index)))) return true;
  // A slip in the number.
  if (code.startsWith(prefix) && code.endsWith(suffix) && rest >= 0) {
    const number = code.slice(prefix.length, code.length - suffix.length);
    if (slipsTowards(number, low, high).some(counts)) return true;
  }
  // A slip in what stands around it.
  for (const start of [prefix.length - 1, prefix.length, prefix.length + 1]) {
    for (const end of [suffix.length - 1, suffix.length, suffix.length + 1]) {
      if (start < 0 || end < 0 || start + end >= code.length) continue;
      const [before, after] = [code.slice(0, start), code.slice(code.length - end)];
      const isSlip =
        before === prefix
          ? isOneSlipApart(after, suffix)
          : after === suffix && isOneSlipApart(before, prefix);
      if (isSlip && counts(code.slice(start, code.length - end))) return true;
    }
  }
  return false;
}

/**
 * The slips in a number that can lead into a range. All numbers of one length that lie in it begin with the digits that its ends
 * have in common: where those differ, there the slip must be. So the many codes that are far from a range cost little.
 */
function slipsTowards(number: string, low: string, high: string): string[] {
  if (low.length !== high.length || number.length !== low.length) return slipsInDigits(number);
  let index = 0;
  while (index < low.length && low[index] === high[index] && number[index] === low[index]) index += 1;
  if (index === low.length || low[index] !== high[index]) return slipsInDigits(number);
  return [number.slice(0, index) + low.charAt(index) + number.slice(index + 1), swappedAt(number, index)];
}

function isMember(range: CodeRange, code: string): boolean {
  const place = placeInRange(range, code);
  return place === 'inside' || place === 'perhaps inside';
}

/** Ends of different shapes: the second may be shortened to its last digits, as in L1001–1009 or L1001–09. */
function shortenedRange(from: string, through: string): CodeRange {
  const [, prefix = '', first = ''] = /^(.*?)(\d+)$/s.exec(from) ?? [];
  if (!/^\d+$/.test(through) || first.length < through.length) return { kind: 'not understood' };
  return numberRange([prefix, ''], first, through, true);
}

function numberRange(
  [prefix, suffix]: readonly [string, string],
  first: string,
  last: string,
  mayBeShortened: boolean,
): NumberRange {
  const range = { kind: 'numbers' as const, prefix, suffix };
  if (compareNumbers(first, last) <= 0) return { ...range, low: first, high: last, plainlyMeant: true };
  // 1001–09 counts down unless it means 1001–1009.
  const completed = first.slice(0, Math.max(first.length - last.length, 0)) + last;
  if (mayBeShortened && compareNumbers(first, completed) <= 0) {
    return { ...range, low: first, high: completed, plainlyMeant: false };
  }
  return { ...range, low: last, high: first, plainlyMeant: false };
}

/** Ends that differ in one letter, or not at all. */
function letterRange(from: string, through: string): CodeRange | undefined {
  if (from.length !== through.length) return undefined;
  const differing = Array.from(from, (_, index) => index).filter((index) => from[index] !== through[index]);
  const [only = from.length - 1, ...others] = differing;
  const [first, last] = [from.charAt(only), through.charAt(only)];
  if (others.length > 0 || (first !== last && !/^[A-Z]{2}$/.test(first + last))) return undefined;
  const [low, high] = first <= last ? [first, last] : [last, first];
  const [prefix, suffix] = [from.slice(0, only), from.slice(only + 1)];
  return { kind: 'letters', prefix, suffix, low, high, plainlyMeant: first <= last };
}

/** Text cut into its numbers, and the shape that is left of it. */
function cut(text: string): { shape: string; numbers: string[] } {
  return { shape: text.replace(/\d+/g, '#'), numbers: text.match(/\d+/g) ?? [] };
}

/** What stands before and after the number of this index. */
function around(text: string, index: number): [string, string] {
  const found = [...text.matchAll(/\d+/g)][index];
  const start = found?.index ?? 0;
  return [text.slice(0, start), text.slice(start + (found?.[0].length ?? 0))];
}

function between(code: string, prefix: string, suffix: string): string | null {
  if (code.length < prefix.length + suffix.length) return null;
  if (!code.startsWith(prefix) || !code.endsWith(suffix)) return null;
  return code.slice(prefix.length, code.length - suffix.length);
}

function isNumberWithin(number: string, low: string, high: string): boolean {
  if (!/^\d+$/.test(number)) return false;
  return compareNumbers(low, number) <= 0 && compareNumbers(number, high) <= 0;
}

/** Counting goes on with as many digits as it began with, and more when they no longer do. */
function hasDigitsOfCount(number: string, low: string, high: string): boolean {
  if (low.length > high.length) return number === low || number === high;
  return number.length === low.length || (number.length > low.length && !number.startsWith('0'));
}

/** Numbers of any length, without making them numbers. */
function compareNumbers(one: string, other: string): number {
  const [first, second] = [withoutLeadingZeros(one), withoutLeadingZeros(other)];
  if (first.length !== second.length) return first.length - second.length;
  return first < second ? -1 : first > second ? 1 : 0;
}

function compareInOrder(one: readonly string[], other: readonly string[]): number {
  for (const [index, number] of one.entries()) {
    const order = compareNumbers(number, other[index] ?? '');
    if (order !== 0) return order;
  }
  return 0;
}

function lettersOf(low: string, high: string): string[] {
  const [start, end] = [low.charCodeAt(0), high.charCodeAt(0)];
  return Array.from({ length: end - start + 1 }, (_, index) => String.fromCharCode(start + index));
}

/** The text with this character and the next swapped; as it is where there are none. */
function swappedAt(text: string, index: number): string {
  if (index < 0 || index >= text.length - 1) return text;
  return text.slice(0, index) + text.charAt(index + 1) + text.charAt(index) + text.slice(index + 2);
}

/** Every text that one slip among digits could have made this of. */
function slipsInDigits(text: string): string[] {
  const slips: string[] = [];
  for (let index = 0; index <= text.length; index += 1) {
    const [before, from, after] = [text.slice(0, index), text.slice(index), text.slice(index + 1)];
    if (index < text.length) slips.push(before + after, swappedAt(text, index));
    for (const digit of '0123456789') {
      slips.push(before + digit + from);
      if (index < text.length) slips.push(before + digit + after);
    }
  }
  return slips;
}
