import { inLatinLetters, lettersAsDigits } from './look-alikes.js';

/**
 * What a lot code is compared by, each form blinder than the one before.
 * - `written`: case, spaces around it and what cannot be seen (direction marks, encodings of the same character) do not
 *   count. Codes that are equal in this form are one code.
 * - `plain`: nor do spaces, hyphens and other signs in it, nor a word such as "Lot" before it.
 * - `seen`: nor letters that look like digits, nor letters of another script that look like Latin ones.
 * - `value`: `seen` without leading zeros, where it is all digits.
 */
export interface CodeForms {
  written: string;
  plain: string;
  seen: string;
  value: string;
}

export function codeForms(code: string): CodeForms {
  const written = writtenForm(code);
  const plain = plainForm(written);
  const seen = lettersAsDigits(inLatinLetters(plain).toUpperCase());
  return { written, plain, seen, value: /^\d+$/.test(seen) ? withoutLeadingZeros(seen) : seen };
}

export function writtenForm(code: string): string {
  return code
    .normalize('NFKC')
    .replace(/\p{Cf}/gu, '')
    .trim()
    .toUpperCase();
}

/** A word for "lot" that is printed before the code and may have been written down with it. */
const wordBefore = /^(?:LOT|BATCH|CHARGE|LOTE|LOTTO|CHB)(?:NUMBER|NUMMER|NO|NR|CODE)?(?=.*\p{N})/u;

function plainForm(written: string): string {
  const plain = written.replace(/[^\p{L}\p{N}|]/gu, '').replace(wordBefore, '');
  return plain === '' ? written : plain;
}

export function withoutLeadingZeros(digits: string): string {
  return digits.replace(/^0+(?=\d)/, '');
}
