import fc from 'fast-check';
import { DateTime } from 'luxon';
import { expect, it } from 'vitest';
import { expectedDaysFaults, MOST_DAYS_AHEAD } from './expected-days.js';

const today = '2026-06-15';

it.each([
  ['a day to come', '2026-06-10', '2026-06-20'],
  ['today, ordered today', today, today],
  ['a day gone by, for what is late may be written down late', '2026-05-01', '2026-06-01'],
  ['a day to come when nobody knows of the order', null, '2026-06-20'],
])('accepts %s', (_, orderedOn, expectedOn) => {
  expect(expectedDaysFaults({ orderedOn, expectedOn }, today)).toEqual([]);
});

it.each([
  ['an order of tomorrow', '2026-06-16', '2026-06-20', ['orderedOn']],
  ['an arrival before the order', '2026-06-10', '2026-06-09', ['expectedOn']],
  ['a day that does not exist', null, '2026-02-29', ['expectedOn']],
  ['days written in another order', '10.06.2026', '20.06.2026', ['orderedOn', 'expectedOn']],
  ['a month alone', null, '2026-07', ['expectedOn']],
])('refuses %s', (_, orderedOn, expectedOn, fields) => {
  const faults = expectedDaysFaults({ orderedOn, expectedOn }, today);
  expect(faults.map(({ field }) => field)).toEqual(fields);
});

it('takes what lies too far ahead for a slip, with the days counted by Luxon', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 * MOST_DAYS_AHEAD }), (days) => {
      const expectedOn = DateTime.fromISO(today, { zone: 'utc' }).plus({ days }).toISODate() ?? '';
      const faults = expectedDaysFaults({ orderedOn: null, expectedOn }, today);
      expect(faults).toHaveLength(days > MOST_DAYS_AHEAD ? 1 : 0);
    }),
  );
});
