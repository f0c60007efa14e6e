/** GS1 element strings that stand in running text: `(01)09501101530003(17)271231(10)AB12`, with or without brackets. */

import { readSymbol } from '../../catalogue/barcode.js';
import { gtin14 } from '../../catalogue/gs1/check-digit.js';
import type { ElementError } from '../../catalogue/gs1/element.js';
import { type ElementFacts, factsOf } from '../../catalogue/gs1/element-facts.js';
import { parseElementString } from '../../catalogue/gs1/element-string.js';

export interface ElementStringInText {
  start: number;
  end: number;
  facts: ElementFacts;
  /** Why it is not valid, though what could be taken apart is given; null when it is. */
  fault: ElementError | null;
}

const longest = 300;
/** Bounded everywhere, so that it takes a bounded time at each place. */
const bracketed = /\(01\) {0,2}\d{14}(?: {0,2}\(\d{2,4}\) {0,2}[!-'*-Z_a-z]{1,90}){0,10}/y;

/** All element strings of a folded text, in its order. */
export function elementStringsIn(text: string, today: string): ElementStringInText[] {
  const found: ElementStringInText[] = [];
  const thisYear = Number(today.slice(0, 4));
  for (let start = text.indexOf('(01)'); start >= 0; start = text.indexOf('(01)', start + 1)) {
    bracketed.lastIndex = start;
    const match = bracketed.exec(text)?.[0].replace(/[.,;:]+$/, '');
    if (match === undefined) continue;
    const { elements, errors } = parseElementString(match, { today }, 'bracketed');
    const [fault = null] = errors;
    found.push({ start, end: start + match.length, facts: factsOf(elements, thisYear), fault });
  }
  return found;
}

/** A word that is an element string without brackets, as a scanner types it; null when it is none. */
export function elementStringOfWord(word: string, today: string): ElementFacts | null {
  if (word.length < 20 || word.length > longest || !/^(?:\](?:C1|d2|Q3|e0))?01\d{14}/.test(word)) return null;
  if (gtin14(word.replace(/^\]../, '').slice(2, 16)) === undefined) return null;
  const reading = readSymbol({ text: word }, today);
  return reading.kind === 'gs1' && reading.lotCode !== undefined ? reading : null;
}
