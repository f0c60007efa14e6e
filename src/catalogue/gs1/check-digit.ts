import { characterSet32, characterSet82 } from './character-sets.js';

/**
 * The check digit of GTIN, SSCC, GLN and their like: weights 3 and 1 in turn, starting with 3 at the digit
 * before the check digit; the sum with the check digit is a multiple of ten.
 * GS1 General Specifications, check digit calculation [P, by way of the dictionary's reference check].
 *
 * It catches every single wrong digit, and every swap of two neighbours that do not differ by 5.
 */
export function checkDigit(digitsWithoutCheckDigit: string): string {
  let sum = 0;
  let weight = 3;
  for (let index = digitsWithoutCheckDigit.length - 1; index >= 0; index--) {
    sum += weight * Number(digitsWithoutCheckDigit[index]);
    weight = 4 - weight;
  }
  return String((10 - (sum % 10)) % 10);
}

/** Whether text is all digits and its last digit is the check digit of those before it. */
export function hasValidCheckDigit(digits: string): boolean {
  return /^\d{2,}$/.test(digits) && checkDigit(digits.slice(0, -1)) === digits.slice(-1);
}

/**
 * A GTIN of 8, 12, 13 or 14 digits, filled to 14 with leading zeros.
 * Undefined when the length is another, or the check digit is wrong.
 */
export function gtin14(digits: string): string | undefined {
  if (![8, 12, 13, 14].includes(digits.length) || !hasValidCheckDigit(digits)) return undefined;
  return digits.padStart(14, '0');
}

/**
 * The two check characters of alphanumeric keys (GMN, MUDI): the places in character set 82, weighted by the
 * primes from the right, summed modulo 1021, written as two characters of set 32.
 * GS1 General Specifications, check character calculation for alphanumeric keys [P, by way of the dictionary].
 * Undefined when a character is outside set 82, or there are more than 97.
 */
export function checkCharacterPair(textWithoutPair: string): string | undefined {
  if (textWithoutPair.length > primes.length) return undefined;
  let sum = 0;
  for (let index = 0; index < textWithoutPair.length; index++) {
    const value = characterSet82.indexOf(textWithoutPair.charAt(index));
    if (value < 0) return undefined;
    sum += value * (primes[textWithoutPair.length - 1 - index] ?? 0);
  }
  const remainder = sum % 1021;
  return characterSet32.charAt(remainder >> 5) + characterSet32.charAt(remainder & 31);
}

/** The first 97 primes: as many characters as can stand before a pair in the 99 an element may hold. */
const primes = firstPrimes(97);

function firstPrimes(count: number): readonly number[] {
  const found: number[] = [];
  for (let candidate = 2; found.length < count; candidate++) {
    if (found.every((prime) => candidate % prime !== 0)) found.push(candidate);
  }
  return found;
}
