import { expect, it } from 'vitest';
import { writtenDay } from './written-dates.js';

it('writes a day as that day, wherever the reader is', () => {
  expect(writtenDay('2026-11-25', 'en-GB')).toBe('25 Nov 2026');
  expect(writtenDay('2026-01-01', 'en-GB')).toBe('1 Jan 2026');
});
