import { characterSet82 } from '../../catalogue/gs1/character-sets.js';
import { separator } from './typed-keys.js';

/** Ways to write a separator that can stand for nothing else: none of them is in a GS1 symbol's own characters. */
const unmistakable = ['\u241d', '{GS}'];

/**
 * What a scanner typed, with its separators: it may be set to type something visible in their place.
 * @param substitute what it types, as chosen on this device; empty for none
 */
export function withSeparators(typed: string, substitute: string): string {
  const written = substitute === '' ? unmistakable : [...unmistakable, substitute];
  const text = written.reduce((soFar, sign) => soFar.replaceAll(sign, separator), typed);
  // Some scanners also type the sign that opens a GS1 symbol; it separates nothing.
  return text.startsWith(separator) ? text.slice(1) : text;
}

/**
 * Whether a separator may be typed so: up to six characters, one of them in no GS1 symbol, so that no part of one is taken
 * for it. The closing square bracket does not count: it opens the symbology identifier.
 */
export function isUsableSubstitute(text: string): boolean {
  return /^\S{1,6}$/.test(text) && [...text].some((sign) => sign !== ']' && !characterSet82.includes(sign));
}
