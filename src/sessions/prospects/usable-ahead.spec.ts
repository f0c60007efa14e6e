import fc from 'fast-check';
import { DateTime } from 'luxon';
import { expect, it } from 'vitest';
import { lastUsableDay } from '../../stock/opened-life.js';
import { isPast, judgeShelfLife } from '../../stock/shelf-life.js';
import { isUsableAt } from './usable-ahead.js';

const timeZone = 'Europe/Berlin';
const anyDay = fc.integer({ min: -40, max: 400 }).map((days) => luxonDay(days));
const anyInstant = fc
  .integer({ min: 0, max: 400 * 24 * 60 })
  .map((minutes) =>
    DateTime.fromISO('2026-01-01T00:00:00Z', { zone: 'utc' })
      .plus({ minutes })
      .toISO({ includeOffset: true }),
  );

function luxonDay(days: number): string {
  return DateTime.fromISO('2026-01-01', { zone: timeZone }).plus({ days }).toISODate() ?? '';
}

it('says of every instant what the rule of shelf life says, with the local day taken by Luxon', () => {
  const anyLife = fc.record({
    useByLastDay: fc.option(anyDay),
    openedAt: fc.option(anyInstant),
    openedLife: fc.option(fc.constantFrom('PT36H', 'P20D', 'P6M')),
    assumedOpenedLife: fc.option(fc.constantFrom('PT12H', 'P3M')),
    usableThrough: fc.constant(null),
  });
  fc.assert(
    fc.property(anyLife, anyInstant, (life, at) => {
      const day = DateTime.fromISO(at ?? '', { zone: timeZone }).toISODate() ?? '';
      const { status } = judgeShelfLife(life, at ?? '', timeZone);
      expect(isUsableAt(lastUsableDay({ ...life, timeZone }), day, at ?? '')).toBe(!isPast(status));
    }),
  );
});
