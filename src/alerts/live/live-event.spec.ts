import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knownThrough, liveEvent } from './live-event.js';

/** What could end a line or a text. */
const awkward = fc.constantFrom('\n', '\r', '\u2028', '\u0085', '\0', '"', '\\', ':', 'a');

describe('a live event', () => {
  it('is one event whatever its data holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: awkward }), fc.nat(), (text, id) => {
        const event = liveEvent('alert', { text }, id);
        const lines = event.slice(0, -2).split(/\r\n|\n|\r/);
        expect(lines.map((line) => line.split(':')[0])).toEqual(['id', 'event', 'data']);
        expect(event.endsWith('\n\n')).toBe(true);
      }),
    );
  });

  it('moves no number on when it has none', () => {
    expect(liveEvent('missed', { sequence: 4 })).toBe('event: missed\ndata: {"sequence":4}\n\n');
  });
});

describe('what a listener knows already', () => {
  it('is all that is there when it listens for the first time', () => {
    expect(knownThrough(undefined, 7, 200)).toEqual({ sequence: 7, missed: false });
    expect(knownThrough('', 0, 200)).toEqual({ sequence: 0, missed: false });
  });

  it('is what it says after an interruption', () => {
    expect(knownThrough('5', 7, 200)).toEqual({ sequence: 5, missed: false });
    expect(knownThrough('7', 7, 200)).toEqual({ sequence: 7, missed: false });
  });

  it('is to be read anew when too much came since, or when it names what never was', () => {
    for (const last of ['5', '999', '-1', 'x', '1e3', '99999999999999999999']) {
      expect(knownThrough(last, 207, 200)).toEqual({ sequence: 207, missed: true });
    }
  });
});
