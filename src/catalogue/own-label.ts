/**
 * The code on a studio's own label: twelve characters of Crockford's base 32 (no I, L, O, U), the last of them
 * a check character, for things whose maker gave them no symbol.
 *
 * Shape. The first character is always a letter, so a code is never all digits and cannot be taken for a GTIN;
 * ten random characters (50 bits) follow it, then the check character. People read it in three groups of four.
 * Reading folds case, reads O as 0 and I and L as 1, and ignores hyphens; U is refused.
 *
 * Check. Each character stands for an element of the field of 32 elements (polynomials over GF(2) modulo
 * x^5 + x^2 + 1). The sum of the characters, each multiplied by its own power of x, is zero: 1 for the check
 * character, x for the one before it, up to x^11. Crockford's own check (modulo 37) needs five more symbols;
 * this one stays within the 32.
 *
 * What it guarantees, because the twelve weights are all different and none is zero:
 * - every single wrong character is caught;
 * - every exchange of two different characters, neighbours or not, is caught;
 * - every doubled character misread as another double (`AA` for `BB`) is caught.
 * Of all other changes 1 in 32 passes by chance. So does 1 in 32 of foreign texts of this shape: a code means
 * something only when the studio's records hold it.
 */
import { findForeignCharacter } from './gs1/character-sets.js';
import type { Element } from './gs1/element.js';
import { printDate } from './gs1/gs1-date.js';

const labelCodeLength = 12;
export const labelCodeRandomBytes = 12;

const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const letters = alphabet.slice(10);

export type LabelCodeReading =
  | { readonly ok: true; readonly code: string }
  | {
      readonly ok: false;
      readonly reason: 'wrong length' | 'foreign character' | 'first not a letter' | 'wrong check character';
      readonly message: string;
    };

/**
 * Makes a code from at least twelve random bytes: two choose the letter (by the remainder, so that no letter is
 * more than one part in 2900 likelier than another), ten give five bits each.
 * Throws RangeError when there are fewer bytes: a caller's mistake.
 */
export function makeLabelCode(randomBytes: Uint8Array): string {
  if (randomBytes.length < labelCodeRandomBytes) {
    throw new RangeError(
      `A label code needs ${labelCodeRandomBytes} random bytes, but was given ${randomBytes.length}.`,
    );
  }
  const [high = 0, low = 0, ...rest] = randomBytes.subarray(0, labelCodeRandomBytes);
  const first = letters.charAt((high * 256 + low) % letters.length);
  const body = first + rest.map((byte) => alphabet.charAt(byte & 31)).join('');
  return body + alphabet.charAt(weightedSum(body, 1));
}

/** Reads what a person typed or a scanner sent; `code` is in capitals without hyphens. */
export function checkLabelCode(text: string): LabelCodeReading {
  const code = text
    .replaceAll('-', '')
    .replace(/[a-z]/g, (letter) => letter.toUpperCase())
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1');
  const characters = [...code];
  if (characters.length !== labelCodeLength) {
    const message = `A label code has ${labelCodeLength} characters without its hyphens, but this has ${characters.length}.`;
    return { ok: false, reason: 'wrong length', message };
  }
  const foreign = characters.find((character) => !alphabet.includes(character));
  if (foreign !== undefined) {
    const message = `A label code has digits and the letters ${letters}, but this has "${foreign}".`;
    return { ok: false, reason: 'foreign character', message };
  }
  if (!letters.includes(code.charAt(0))) {
    const message = `A label code begins with a letter, but this begins with "${code.charAt(0)}".`;
    return { ok: false, reason: 'first not a letter', message };
  }
  if (weightedSum(code, 0) !== 0) {
    const message =
      'The check character of this label code is wrong. Compare the label, then scan or type it again.';
    return { ok: false, reason: 'wrong check character', message };
  }
  return { ok: true, code };
}

/** A code as it is printed for people, in three groups of four. */
export function formatLabelCode(code: string): string {
  return code.replace(/(.{4})(?=.)/g, '$1-');
}

/** What a label says beside its code; dates are YYYY-MM-DD. */
export type LabelContent = {
  readonly code: string;
  readonly gtin14?: string;
  readonly useBy?: string;
  readonly lotCode?: string;
};

/**
 * The elements of an own label's symbol: GTIN (01), use-by (17) and lot (10), then the code as internal data
 * (91). Use-by and lot need a GTIN beside them by GS1's rules, so without one the symbol holds the code alone.
 * A lot code GS1 cannot carry (over 20 characters, or outside character set 82) is left out: the code still
 * finds the lot, and its text is printed beside the symbol. So is a use-by date that two digits of its year cannot
 * tell in `thisYear`, since a reader would take it for another century.
 */
export function labelElementString(content: LabelContent, thisYear: number): Element[] {
  const own: Element = { applicationIdentifier: '91', value: content.code };
  if (content.gtin14 === undefined) return [own];
  const elements: Element[] = [{ applicationIdentifier: '01', value: content.gtin14 }];
  const useBy =
    content.useBy === undefined ? undefined : printDate({ date: content.useBy, precision: 'day' }, thisYear);
  if (useBy !== undefined) elements.push({ applicationIdentifier: '17', value: useBy });
  if (content.lotCode !== undefined && fitsLotCode(content.lotCode)) {
    elements.push({ applicationIdentifier: '10', value: content.lotCode });
  }
  return [...elements, own];
}

function fitsLotCode(lotCode: string): boolean {
  return lotCode.length >= 1 && lotCode.length <= 20 && findForeignCharacter(lotCode, 'X') < 0;
}

/** The sum in the field, the last character weighing x^lastPower; zero for a whole code and a power of 0. */
function weightedSum(code: string, lastPower: number): number {
  let sum = 0;
  for (const character of code) sum = timesX(sum) ^ alphabet.indexOf(character);
  for (let power = 0; power < lastPower; power++) sum = timesX(sum);
  return sum;
}

/** Multiplication by x modulo x^5 + x^2 + 1. */
function timesX(element: number): number {
  const doubled = element << 1;
  return doubled & 32 ? doubled ^ 0b100101 : doubled;
}
