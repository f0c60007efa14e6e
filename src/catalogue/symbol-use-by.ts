import type { StatedDate } from './gs1/gs1-date.js';

/** The dates in a symbol that say until when something may be used; each is absent when the symbol does not hold it. */
export interface SymbolDates {
  /** AI 17. */
  readonly useBy?: StatedDate;
  /** AI 7003: no use after this moment of the day. */
  readonly useByMoment?: { readonly date: string };
  /** AI 15. */
  readonly bestBefore?: StatedDate;
}

/**
 * The last day of use that a symbol holds: the earliest of its use-by date (AI 17) and the day of its "no use after"
 * moment (AI 7003). A best-before date (AI 15) is about quality and says less, so it counts only where AI 17 is missing
 * (GS1 General Specifications 3.4 [M]). The time of day of AI 7003 is not kept: a lot is judged by days.
 *
 * @returns the day as YYYY-MM-DD and how exactly it is stated; null when the symbol holds none
 */
export function symbolUseBy({ useBy, useByMoment, bestBefore }: SymbolDates): StatedDate | null {
  const moment: StatedDate | undefined = useByMoment && { date: useByMoment.date, precision: 'day' };
  let earliest: StatedDate | null = null;
  for (const stated of [useBy ?? bestBefore, moment]) {
    if (stated !== undefined && (earliest === null || stated.date < earliest.date)) earliest = stated;
  }
  return earliest;
}
