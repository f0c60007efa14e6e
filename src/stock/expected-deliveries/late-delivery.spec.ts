import { DateTime } from 'luxon';
import { expect, it } from 'vitest';
import { localDay } from '../../identity/local-day.js';
import { isLateDelivery } from './late-delivery.js';

it('is late from the day after the one it is expected on, by the days of the studio as Luxon counts them', () => {
  for (const timeZone of ['Europe/Berlin', 'Pacific/Auckland', 'America/New_York']) {
    // Over the last days of a leap February, and over both changes of clocks.
    for (const expectedOn of ['2028-02-28', '2026-03-28', '2026-10-24', '2026-12-31']) {
      const dayAfter = DateTime.fromISO(expectedOn, { zone: timeZone }).plus({ days: 1 });
      const lastMoment = dayAfter.minus({ milliseconds: 1 }).toUTC().toISO() ?? '';
      const firstMoment = dayAfter.toUTC().toISO() ?? '';
      expect(isLateDelivery(expectedOn, null, localDay(lastMoment, timeZone))).toBe(false);
      expect(isLateDelivery(expectedOn, null, localDay(firstMoment, timeZone))).toBe(true);
    }
  }
});

it.each(['received', 'called off'])('is not late any more once it was %s', (endedAs) => {
  expect(isLateDelivery('2026-06-01', endedAs, '2026-06-15')).toBe(false);
});
