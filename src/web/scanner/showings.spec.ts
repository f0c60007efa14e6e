import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absentMilliseconds, look, nothingShown, type Showings } from './showings.js';

interface Look {
  at: number;
  symbols: string[];
}

/** What is handed on, look by look. */
function handedOn(looks: Look[]): string[][] {
  let showings: Showings = nothingShown;
  return looks.map(({ symbols, at }) => {
    const answer = look(showings, symbols, at);
    showings = answer.showings;
    return [...answer.shown];
  });
}

/** A look every 100 ms; a letter is a symbol, a dot a picture without one. */
function film(pictures: string): string {
  const looks = [...pictures].map((picture, index) => ({
    at: index * 100,
    symbols: picture === '.' ? [] : [picture],
  }));
  return handedOn(looks)
    .map(([symbol = '.']) => symbol)
    .join('');
}

describe('what the camera hands on', () => {
  it('is each symbol once, as long as it stays in the picture', () => {
    expect(film('..aaaaaaaaaaaaaaaaaaaaaaaaa')).toBe('..a........................');
  });

  it('is not a symbol again that was missed for a moment', () => {
    expect(film('aa.a..aa......aaa..........a')).toBe('a...........................');
  });

  it('is a symbol again that was gone for a second and a half', () => {
    expect(film('aa...............a')).toBe('a................a');
    expect(film('aa..............aa')).toBe('a.................');
  });

  it('is another symbol at once, and the first one not again when both come and go', () => {
    expect(film('aabbaabb')).toBe('a.b.....');
  });

  it('is every symbol of one picture, one that is there twice only once', () => {
    expect(handedOn([{ at: 0, symbols: ['a', 'b', 'a'] }])).toEqual([['a', 'b']]);
  });

  it('is nothing again for want of looking, such as on a slow device', () => {
    expect(
      handedOn([
        { at: 0, symbols: ['a'] },
        { at: 4_000, symbols: ['a'] },
        { at: 8_000, symbols: ['a'] },
      ]),
    ).toEqual([['a'], [], []]);
  });

  const looks = fc
    .array(fc.record({ pause: fc.integer({ min: 30, max: 900 }), symbols: fc.subarray(['a', 'b', 'c']) }), {
      maxLength: 60,
    })
    .map((steps) => {
      let at = 0;
      return steps.map(({ pause, symbols }) => {
        at += pause;
        return { at, symbols };
      });
    });

  it('is, whatever is seen and when, what was never there before or was missing long enough', () => {
    fc.assert(
      fc.property(looks, (all) => {
        const handed = handedOn(all);
        for (const [index, { at, symbols }] of all.entries()) {
          const due = symbols.filter((symbol) => {
            // Told from the whole past: the looks since it was last in the picture.
            const lastSeen = all.slice(0, index).findLastIndex((earlier) => earlier.symbols.includes(symbol));
            const firstWithout = all[lastSeen + 1];
            return (
              lastSeen === -1 ||
              (lastSeen + 1 < index && firstWithout && at - firstWithout.at >= absentMilliseconds)
            );
          });
          expect(handed[index]).toEqual(due);
        }
      }),
    );
  });
});
