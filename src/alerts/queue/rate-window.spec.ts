import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begin, type RateWindow, windowMilliseconds } from './rate-window.js';

const never: RateWindow = { since: 0, begun: 0 };

/** Begins as many as it may by a clock that shows the given times, and says when each began. */
function beginnings(times: readonly number[], perSecond: number): number[] {
  let window = never;
  const begun: number[] = [];
  for (const now of times) {
    const answer = begin(window, now, perSecond);
    if (!('window' in answer)) continue;
    window = answer.window;
    begun.push(now);
  }
  return begun;
}

describe('the window of a rate limit', () => {
  it('lets as many begin in a second as it may, then says how long to wait', () => {
    let window = never;
    for (const now of [5_000, 5_000, 5_400]) {
      const answer = begin(window, now, 3);
      if (!('window' in answer)) throw new Error('It had to wait.');
      window = answer.window;
    }
    expect(begin(window, 5_700, 3)).toEqual({ waitMilliseconds: 300 });
    expect(begin(window, 6_000, 3)).toEqual({ window: { since: 6_000, begun: 1 } });
  });

  it('begins anew when the clock was set back, so that nothing waits for hours', () => {
    expect(begin({ since: 9_000, begun: 3 }, 2_000, 3)).toEqual({ window: { since: 2_000, begun: 1 } });
  });

  it('never begins more than twice its measure in any second, and asks for no wait longer than one', () => {
    const clock = fc.array(fc.nat({ max: 400 }), { maxLength: 60 });
    fc.assert(
      fc.property(clock, fc.integer({ min: 1, max: 5 }), (steps, perSecond) => {
        let now = 1_000_000;
        const times = steps.map((step) => {
          now += step;
          return now;
        });
        const begun = beginnings(times, perSecond);
        for (const first of begun) {
          const inSecond = begun.filter((each) => each >= first && each < first + windowMilliseconds);
          expect(inSecond.length).toBeLessThanOrEqual(2 * perSecond);
        }
        const answer = begin({ since: now, begun: perSecond }, now, perSecond);
        expect(answer).toEqual({ waitMilliseconds: windowMilliseconds });
      }),
    );
  });
});
