import { expect, it } from 'vitest';
import { writtenDay, writtenInstant } from './written-dates.js';

it('writes a day as that day, wherever the reader is', () => {
  expect(writtenDay('2026-11-25', 'en-GB')).toBe('25 Nov 2026');
  expect(writtenDay('2026-01-01', 'en-GB')).toBe('1 Jan 2026');
});

it('writes an instant by the clocks of the place it belongs to', () => {
  expect(writtenInstant('2026-11-25T23:30:00.000Z', 'en-GB', 'Europe/Vienna')).toBe('26 Nov 2026, 00:30');
  expect(writtenInstant('2026-11-25T23:30:00.000Z', 'de-DE', 'America/New_York')).toBe('25.11.2026, 18:30');
});
