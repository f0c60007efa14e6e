import { DateTime } from 'luxon';
import { expect, it } from 'vitest';
import { kitSeverity } from './kit-severity.js';

it.each([
  [0, 'urgent'],
  [1, 'urgent'],
  [2, 'warning'],
  [7, 'warning'],
  [8, 'notice'],
  [14, 'notice'],
])(
  'grows with nearness: %s days ahead is %s, also when a month and a leap day lie between',
  (days, severity) => {
    for (const today of ['2026-06-15', '2028-02-25', '2026-12-28', '2026-03-28']) {
      // Luxon is a second calendar.
      const day = DateTime.fromISO(today, { zone: 'utc' }).plus({ days }).toISODate() ?? '';
      expect(kitSeverity(day, today)).toBe(severity);
    }
  },
);
