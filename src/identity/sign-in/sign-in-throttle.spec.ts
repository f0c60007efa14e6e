import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Failures, secondsToWait, type ThrottledSubject } from './sign-in-throttle.js';

const now = '2026-03-01T09:30:00.000Z';
const later = (instant: string, seconds: number) =>
  new Date(Date.parse(instant) + seconds * 1000).toISOString();

function waitAfter(subject: ThrottledSubject, failures: number): number {
  return secondsToWait([{ subject, failures, lastFailedAt: now }], now);
}

const subjects: ThrottledSubject[] = ['account', 'device', 'address', 'PIN'];
const longest = { account: 900, device: 900, address: 900, PIN: 3_600 };
const anyFailures: fc.Arbitrary<Failures> = fc.record({
  subject: fc.constantFrom(...subjects),
  failures: fc.nat({ max: 100_000 }),
  lastFailedAt: fc.integer({ min: -7_200, max: 0 }).map((secondsAgo) => later(now, secondsAgo)),
});

describe('the wait before another attempt to sign in', () => {
  it('is none when nothing failed', () => {
    expect(secondsToWait([], now)).toBe(0);
    for (const subject of subjects) expect(waitAfter(subject, 0)).toBe(0);
  });

  it.each([
    ['account', [0, 0, 0, 0, 1, 2, 4, 8]],
    ['PIN', [0, 0, 1, 2, 4, 8, 16, 32]],
  ] as const)('of an %s begins after the slips that cost nothing, and doubles', (subject, waits) => {
    expect(waits.map((_, index) => waitAfter(subject, index + 1))).toEqual(waits);
  });

  it.each([
    ['account', 4],
    ['device', 9],
    ['address', 19],
    ['PIN', 2],
  ] as const)('of a(n) %s is none after %i failures, and one second after one more', (subject, free) => {
    expect([waitAfter(subject, free), waitAfter(subject, free + 1)]).toEqual([0, 1]);
  });

  it('is that of whatever has to wait longest', () => {
    const known: Failures[] = [
      { subject: 'account', failures: 7, lastFailedAt: now },
      { subject: 'address', failures: 25, lastFailedAt: now },
    ];
    expect(secondsToWait(known, now)).toBe(32);
  });

  it('passes while nobody tries', () => {
    const known: Failures[] = [{ subject: 'account', failures: 10, lastFailedAt: now }];
    expect([0, 1, 31, 31.5, 32, 33].map((seconds) => secondsToWait(known, later(now, seconds)))).toEqual([
      32, 31, 1, 1, 0, 0,
    ]);
  });

  it('ends by itself, however often somebody failed', () => {
    fc.assert(
      fc.property(fc.array(anyFailures, { maxLength: 4 }), (known) => {
        const seconds = secondsToWait(known, now);
        expect(seconds).toBeLessThanOrEqual(Math.max(0, ...known.map(({ subject }) => longest[subject])));
        expect(secondsToWait(known, later(now, seconds))).toBe(0);
      }),
    );
  });

  it('is a whole number of seconds, and never longer for who failed less often or longer ago', () => {
    fc.assert(
      fc.property(anyFailures, fc.nat({ max: 50 }), fc.nat({ max: 5_000 }), (failures, more, passed) => {
        const seconds = secondsToWait([failures], now);
        expect(Number.isInteger(seconds) && seconds >= 0).toBe(true);
        const oftener = { ...failures, failures: failures.failures + more };
        expect(secondsToWait([oftener], now)).toBeGreaterThanOrEqual(seconds);
        expect(secondsToWait([failures], later(now, passed))).toBeLessThanOrEqual(seconds);
      }),
    );
  });

  it('lets a guesser try a few hundred PINs a week at most, on one tablet', () => {
    let tried = 0;
    let at = now;
    let failures: Failures = { subject: 'PIN', failures: 0, lastFailedAt: now };
    const week = later(now, 7 * 86_400);
    while (at < week) {
      tried += 1;
      failures = { subject: 'PIN', failures: failures.failures + 1, lastFailedAt: at };
      at = later(at, Math.max(1, secondsToWait([failures], at)));
    }
    expect(tried).toBeLessThan(200);
  });
});
