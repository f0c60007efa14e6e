import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { retentionEnd, retentionRuns } from './retention-end.js';

const anyDay = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2090-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const anyYears = fc.integer({ min: 0, max: 100 });

const dayOf = (day: string) => day.slice(5);

describe('the end of retention', () => {
  // Regulation (EEC, Euratom) No 1182/71, Art. 3(1) [S]: the day of the event does not count; Art. 3(2)(c) [M]: a period
  // in years ends with the day of the same date, or with the last day of the month where there is none.
  it.each([
    ['2024-03-01', 3, '2027-03-01', '2027-03-02'],
    ['2023-12-31', 1, '2024-12-31', '2025-01-01'],
    ['2024-02-29', 3, '2027-02-28', '2027-03-01'],
    ['2024-02-29', 4, '2028-02-29', '2028-03-01'],
    ['2023-02-28', 1, '2024-02-28', '2024-02-29'],
    ['2024-05-05', 0, '2024-05-05', '2024-05-06'],
  ])(
    'of a record of %s kept for %i years is %s, and it may go from %s',
    (day, years, keptThrough, erasableFrom) => {
      expect(retentionEnd(day, years)).toEqual({ keptThrough, erasableFrom });
    },
  );

  it('refuses what is no day', () => {
    for (const day of ['2023-02-29', '2023-13-01', 'yesterday', '']) {
      expect(() => retentionEnd(day, 3), day).toThrow(RangeError);
    }
  });

  it('has the same date so many years on, but for 29 February', () => {
    fc.assert(
      fc.property(anyDay, anyYears, (day, years) => {
        const { keptThrough } = retentionEnd(day, years);
        expect(Number(keptThrough.slice(0, 4))).toBe(Number(day.slice(0, 4)) + years);
        const leap = dayOf(day) === '02-29' && dayOf(keptThrough) === '02-28';
        expect(leap || dayOf(keptThrough) === dayOf(day)).toBe(true);
      }),
    );
  });

  it('runs through its last day and no longer, and comes no earlier for a later record or more years', () => {
    fc.assert(
      fc.property(anyDay, anyDay, anyYears, anyYears, (day, other, years, more) => {
        const span = retentionEnd(day, years);
        expect(retentionRuns(span, span.keptThrough)).toBe(true);
        expect(retentionRuns(span, span.erasableFrom)).toBe(false);
        expect(retentionRuns(span, day)).toBe(true);
        const later = retentionEnd([day, other].sort()[1] ?? day, years + more);
        expect(later.erasableFrom >= span.erasableFrom).toBe(true);
      }),
    );
  });
});
