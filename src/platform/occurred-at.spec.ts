import { describe, expect, it } from 'vitest';
import { occurredAt } from './occurred-at.js';
import { Problem } from './problem.js';

const now = '2026-03-10T10:00:00.000Z';

describe('the instant at which something happened', () => {
  it('is now when the device says nothing', () => {
    expect(occurredAt(undefined, now)).toBe(now);
  });

  it('is stored in UTC with milliseconds, whatever the offset it came with', () => {
    expect(occurredAt('2026-03-10T10:30:00+01:00', now)).toBe('2026-03-10T09:30:00.000Z');
  });

  it('may lead by five minutes and lag by the named limit, not by more', () => {
    expect(occurredAt('2026-03-10T10:05:00Z', now)).toBe('2026-03-10T10:05:00.000Z');
    expect(() => occurredAt('2026-03-10T10:05:00.001Z', now)).toThrow(Problem);
    expect(occurredAt('2026-03-08T10:00:00Z', now, 2)).toBe('2026-03-08T10:00:00.000Z');
    expect(() => occurredAt('2026-03-08T09:59:59.999Z', now, 2)).toThrow(Problem);
  });

  it.each(['2026-02-30T10:00:00Z', '2026-03-10', 'yesterday', ''])('is refused when it is "%s"', (given) => {
    expect(() => occurredAt(given, now)).toThrow(Problem);
  });
});
