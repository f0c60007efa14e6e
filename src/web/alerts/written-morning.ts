import type { Texts } from '../texts/en/english.js';
import { writtenDay } from '../texts/written-dates.js';

/**
 * Until when something is put off, as it is read.
 * @param until a plain date, or an instant
 * @param when writes an instant by the clocks of the studio
 */
export function writtenMorning(until: string, texts: Texts, when: (instant: string) => string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(until) ? writtenDay(until, texts.language) : when(until);
}
