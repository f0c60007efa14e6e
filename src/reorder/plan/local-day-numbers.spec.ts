import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { dayNumber, dayOfNumber, localDayNumbers } from './local-day-numbers.js';

const zones = [
  'UTC',
  'Europe/Vienna',
  'America/St_Johns',
  'Pacific/Auckland',
  'Asia/Kathmandu',
  'Australia/Lord_Howe',
];

describe('numbers of local days', () => {
  it('are those that the calendar gives, in any time zone, also when clocks change', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.date({ min: new Date('2020-01-01'), max: new Date('2030-01-01'), noInvalidDate: true }),
        (timeZone, date) => {
          const instant = date.toISOString();
          const day = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone).toPlainDate();
          const expected = Temporal.PlainDate.from('2026-03-29').until(day, { largestUnit: 'days' }).days;
          expect(localDayNumbers(timeZone, '2026-03-29')(instant)).toBe(expected);
          expect(dayOfNumber(expected, '2026-03-29')).toBe(day.toString());
          expect(dayNumber(day.toString(), '2026-03-29')).toBe(expected);
        },
      ),
    );
  });

  it('turn at local midnight on the night the clocks go forward', () => {
    const numberOf = localDayNumbers('Europe/Vienna', '2026-03-29');
    expect(
      ['2026-03-28T22:59:59Z', '2026-03-28T23:00:00Z', '2026-03-29T21:59:59Z', '2026-03-29T22:00:00Z'].map(
        numberOf,
      ),
    ).toEqual([-1, 0, 0, 1]);
  });
});
