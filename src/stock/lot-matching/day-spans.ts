import { Temporal } from 'temporal-polyfill';
import type { DaySpan } from './lot-scope.js';

/** How the use-by of a label stands on record: its last day and how exactly the label states it. */
export interface RecordedUseBy {
  useBy: string | null;
  useByPrecision: 'day' | 'month' | 'year' | 'none printed';
}

/** `overlaps`: the label states only a month or year, part of which lies in the span. */
export type DateInSpan = 'inside' | 'overlaps' | 'outside' | 'unknown';

/** A label that shows a month or a year is usable through its last day (ISO 15223-1:2021, 5.1.4 [S]): that day decides. */
export function useByInSpan(span: DaySpan, { useBy, useByPrecision }: RecordedUseBy): DateInSpan {
  if (useBy === null) return 'unknown';
  if (isWithin(span, useBy)) return 'inside';
  const startsBeforeEnd = span.through === null || firstDay(useBy, useByPrecision) <= span.through;
  const endsAfterStart = span.from === null || span.from <= useBy;
  return startsBeforeEnd && endsAfterStart ? 'overlaps' : 'outside';
}

export function dayInSpan(span: DaySpan, day: string | null): DateInSpan {
  if (day === null) return 'unknown';
  return isWithin(span, day) ? 'inside' : 'outside';
}

function isWithin({ from, through }: DaySpan, day: string): boolean {
  return (from === null || from <= day) && (through === null || day <= through);
}

function firstDay(lastDay: string, precision: RecordedUseBy['useByPrecision']): string {
  const day = Temporal.PlainDate.from(lastDay);
  if (precision === 'month') return day.with({ day: 1 }).toString();
  if (precision === 'year') return day.with({ month: 1, day: 1 }).toString();
  return lastDay;
}
