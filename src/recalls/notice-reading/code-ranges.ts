/** Ranges of codes: how their ends belong together, and how many codes lie between them. Nothing is ever listed. */
import { shapeOf } from './lot-codes.js';

export interface RangeFacts {
  from: string;
  through: string;
  /** Whether both ends differ in nothing but digits at the same places. */
  alike: boolean;
  /** The ends were written the other way round. */
  turned: boolean;
  differentLength: boolean;
  differentPrefix: boolean;
  /** How many codes it spans, where the same number runs in both; it can be more than a number holds exactly. */
  count: number | null;
}

/** More codes than any maker fills in one fault: such a range is remarked. */
export const wideRange = 100_000;

/** What is to be known of a range from its two ends as they are written. */
export function rangeFacts(from: string, through: string): RangeFacts {
  const differentLength = from.length !== through.length;
  const [before, after] = [framed(from), framed(through)];
  const differentPrefix = before.prefix !== after.prefix || before.suffix !== after.suffix;
  const alike = !differentLength && !differentPrefix && before.digits !== '';
  const turned = alike && from > through;
  const [first, last] = turned ? [through, from] : [from, through];
  const counts = !differentPrefix && before.digits !== '' && after.digits !== '';
  const count = counts ? Math.abs(Number(after.digits) - Number(before.digits)) + 1 : null;
  return { from: first, through: last, alike, turned, differentLength, differentPrefix, count };
}

/** `A, B` of one hyphened word such as `00112-10412`, where both halves are built alike and rise; else null. */
export function hyphenedRange(word: string): [string, string] | null {
  const half = (word.length - 1) / 2;
  if (!Number.isInteger(half) || half < 3 || word.charAt(half) !== '-') return null;
  const [from, through] = [word.slice(0, half), word.slice(half + 1)];
  if (shapeOf(from) !== shapeOf(through) || !/\d/.test(from) || from >= through) return null;
  return rangeFacts(from, through).alike ? [from, through] : null;
}

/** An end that was written short, `07110002-09`, made whole; null where it cannot be one. */
export function completedEnd(from: string, through: string): string | null {
  if (through.length >= from.length || !/^\d+$/.test(through)) return null;
  const whole = from.slice(0, from.length - through.length) + through;
  return /^\d+$/.test(from.slice(from.length - through.length)) && whole >= from ? whole : null;
}

/** The number that runs: the last run of digits that differs, and what stands around it. */
function framed(code: string): { prefix: string; digits: string; suffix: string } {
  const match = /^(.*?)(\d+)(\D*)$/s.exec(code);
  return { prefix: match?.[1] ?? code, digits: match?.[2] ?? '', suffix: match?.[3] ?? '' };
}
