import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { NEVER } from './item-facts.js';
import { orderDays } from './order-days.js';

describe('order days', () => {
  it('are the next of the weekdays, over a change of clocks and of years', () => {
    // 2026-03-27 is a Friday; clocks change on the Sunday.
    expect([...orderDays({ firstDay: '2026-03-27', days: 6, weekdays: [1, 3], closedDates: [] })]).toEqual([
      3, 3, 3, 3, 5, 5,
    ]);
    expect([...orderDays({ firstDay: '2026-12-31', days: 3, weekdays: [5], closedDates: [] })]).toEqual([
      1,
      1,
      NEVER,
    ]);
  });

  it('leave out closed dates, also those before the first day', () => {
    const closedDates = ['2026-03-20', '2026-03-30'];
    expect([...orderDays({ firstDay: '2026-03-27', days: 6, weekdays: [1, 3], closedDates })]).toEqual([
      5, 5, 5, 5, 5, 5,
    ]);
  });

  it('are none without weekdays, and every day with all of them', () => {
    const calendar = { firstDay: '2026-03-27', days: 3, closedDates: [] };
    expect([...orderDays({ ...calendar, weekdays: [] })]).toEqual([NEVER, NEVER, NEVER]);
    expect([...orderDays({ ...calendar, weekdays: [1, 2, 3, 4, 5, 6, 7] })]).toEqual([0, 1, 2]);
  });

  it('are what going through the calendar day by day finds', () => {
    const date = fc
      .integer({ min: 0, max: 800 })
      .map((days) => Temporal.PlainDate.from('2025-12-01').add({ days }).toString());
    fc.assert(
      fc.property(
        date,
        fc.subarray([1, 2, 3, 4, 5, 6, 7]),
        fc.array(date, { maxLength: 60 }),
        (firstDay, weekdays, closedDates) => {
          const days = 40;
          const found = orderDays({ firstDay, days, weekdays, closedDates });
          for (let day = 0; day < days; day++) {
            let looked = day;
            for (; looked < days; looked++) {
              const at = Temporal.PlainDate.from(firstDay).add({ days: looked });
              if (weekdays.includes(at.dayOfWeek) && !closedDates.includes(at.toString())) break;
            }
            expect(found[day]).toBe(looked === days ? NEVER : looked);
          }
        },
      ),
      { numRuns: 25 },
    );
  });
});
