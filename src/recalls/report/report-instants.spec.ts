import { describe, expect, it } from 'vitest';
import { writtenInstant } from './report-instants.js';

describe('an instant in a report', () => {
  it('is written in the studio’s own time, on its own day', () => {
    expect(writtenInstant('2026-03-28T23:30:59.999Z', 'Europe/Vienna')).toBe('2026-03-29 00:30');
    expect(writtenInstant('2026-03-29T01:00:00.000Z', 'Europe/Vienna')).toBe('2026-03-29 03:00');
  });

  it('that is not known is a dash', () => {
    expect(writtenInstant(null, 'UTC')).toBe('–');
  });
});
