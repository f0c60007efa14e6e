import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestWaitSeconds, retryAfter } from './retry-after.js';

const now = '1999-12-31T23:00:00.000Z';

describe('when a source may be asked again', () => {
  /** Examples of RFC 9110, 10.2.3 [P as quoted in many copies: S]. */
  it.each([
    ['120', '1999-12-31T23:02:00.000Z'],
    ['Fri, 31 Dec 1999 23:59:59 GMT', '1999-12-31T23:59:59.000Z'],
  ])('is what %s says', (header, instant) => {
    expect(retryAfter(header, now)).toBe(instant);
  });

  /** The one instant that RFC 9110, 5.6.7 writes in all three forms [S]. */
  it.each(['Sun, 06 Nov 1994 08:49:37 GMT', 'Sunday, 06-Nov-94 08:49:37 GMT', 'Sun Nov  6 08:49:37 1994'])(
    'is read from %s',
    (header) => {
      expect(retryAfter(header, '1994-11-06T08:00:00.000Z')).toBe('1994-11-06T08:49:37.000Z');
    },
  );

  it('is now when that has passed, and a week from now at the latest', () => {
    expect(retryAfter('Sun, 06 Nov 1994 08:49:37 GMT', now)).toBe(now);
    for (const header of ['604801', '9'.repeat(400), 'Fri, 31 Dec 2999 23:59:59 GMT'])
      expect(retryAfter(header, now)).toBe('2000-01-07T23:00:00.000Z');
  });

  it.each([
    null,
    '',
    'soon',
    '-1',
    '1.5',
    '12 seconds',
    'Fri, 31 Feb 1999 23:59:59 GMT',
    'Fri, 31 Xxx 1999 23:59:59 GMT',
  ])('is not said by %s', (header) => {
    expect(retryAfter(header, now)).toBeNull();
  });

  it('is read as another reader of dates reads it, within the week', () => {
    const within = fc.integer({ min: 0, max: longestWaitSeconds - 1 });
    fc.assert(
      fc.property(within, (seconds) => {
        const date = new Date(Date.parse(now) + seconds * 1_000);
        expect(retryAfter(date.toUTCString(), now)).toBe(date.toISOString());
      }),
    );
  });
});
