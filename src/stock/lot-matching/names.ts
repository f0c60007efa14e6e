import { inLatinLetters } from './look-alikes.js';
import { isLikelySlip } from './one-slip.js';

/** Letters that stay when accents are taken off, as they are written without them. */
const plainLetters: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  ł: 'l',
  þ: 'th',
  ı: 'i',
};

/** Legal forms of companies, as makers add or leave them out [C]. */
const companyForms = new Set(
  (
    'ltd limited llc llp lp inc incorporated corp corporation co company plc pty gmbh ag kg kgaa ug ohg ek mbh ' +
    'sa sas sarl srl sl bv nv ab as oy oyj aps doo kft zrt sro and'
  ).split(' '),
);

/** The words of a name: case, accents, punctuation, and the script of look-alike letters do not count. */
export function nameWords(name: string | null): string[] {
  const bare = inLatinLetters((name ?? '').normalize('NFKD').replace(/[\p{M}\p{Cf}]/gu, ''));
  return inLatinLetters(bare.toLowerCase())
    .replace(/[ßæœøđðłþı]/g, (letter) => plainLetters[letter] ?? letter)
    .replace(/['’‘`´.]/g, '')
    .replace(/&/g, ' and ')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}

/** The words of a maker's name without the legal form at its end. */
export function makerWords(name: string | null): string[] {
  const words = nameWords(name);
  while (words.length > 1) {
    const count = formAtEnd(words);
    if (count === 0 || count === words.length) break;
    words.length -= count;
  }
  return words;
}

/** How many words the legal form at the end takes; A/S falls into two. */
function formAtEnd(words: readonly string[]): number {
  const [before = '', last = ''] = words.slice(-2);
  if (companyForms.has(last)) return 1;
  return before.length + last.length === 2 && companyForms.has(before + last) ? 2 : 0;
}

/**
 * - `same`: equal words, however they are parted.
 * - `similar`: one slip apart, or all words of one are in the other.
 *
 * Digits in a name name something by themselves: 12 is never taken for a slip of 13.
 */
export type NameLikeness = 'same' | 'similar' | 'different';

export function compareNames(one: readonly string[], other: readonly string[]): NameLikeness {
  const [first, second] = [one.join(''), other.join('')];
  if (first === second) return 'same';
  if (isNameSlip(first, second)) return 'similar';
  return isPartOf(one, other) || isPartOf(other, one) ? 'similar' : 'different';
}

function isPartOf(words: readonly string[], whole: readonly string[]): boolean {
  const has = (word: string) => whole.some((each) => each === word || isNameSlip(each, word));
  return words.length > 0 && words.every(has);
}

function isNameSlip(one: string, other: string): boolean {
  const digits = (text: string) => text.replace(/\D/g, '');
  return isLikelySlip(one, other) && digits(one) === digits(other);
}

/** `words` without these at its beginning, where something is left then. */
export function withoutBeginning(words: readonly string[], beginning: readonly string[]): readonly string[] {
  const begins = beginning.length > 0 && beginning.length < words.length;
  return begins && beginning.every((word, index) => words[index] === word)
    ? words.slice(beginning.length)
    : words;
}

/** The same for the end. */
export function withoutEnd(words: readonly string[], end: readonly string[]): readonly string[] {
  const start = words.length - end.length;
  const ends = end.length > 0 && start > 0;
  return ends && end.every((word, index) => words[start + index] === word) ? words.slice(0, start) : words;
}
