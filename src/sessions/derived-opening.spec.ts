import { describe, expect, it } from 'vitest';
import { earlierOpening, openingAfterReversal } from './derived-opening.js';

const drop = '2026-03-10T10:00:00.000Z';
const end = '2026-03-10T12:00:00.000Z';
const later = '2026-03-20T10:00:00.000Z';

describe('an opening that is told by what was taken of the bottle', () => {
  it.each([
    ['is the first of it when the bottle is recorded as sealed', null, [later, drop, end], drop],
    ['moves back to what lay before it', later, [end, drop], drop],
    ['stands when all of it came later', drop, [later, end], null],
    ['stands when it is that very instant', drop, [drop], null],
    ['is none when nothing was taken', null, [], null],
  ])('%s', (_, openedAt, found, expected) => {
    expect(earlierOpening(openedAt, found)).toBe(expected);
  });
});

describe('an opening after the reversal of a use', () => {
  it('is undone when nothing but that use told of it', () => {
    const facts = { openedAt: drop, derivedAt: [drop, end], standing: [] };
    expect(openingAfterReversal(facts)).toEqual({ state: 'sealed', openedAt: null });
  });

  it('moves to the next thing that had the bottle open', () => {
    const facts = { openedAt: end, derivedAt: [end], standing: ['2026-04-01T10:00:00.000Z', later] };
    expect(openingAfterReversal(facts)).toEqual({ state: 'opened', openedAt: later });
  });

  it('stands when it was recorded for itself', () => {
    const facts = { openedAt: '2026-03-01T10:00:00.000Z', derivedAt: [drop, end], standing: [] };
    expect(openingAfterReversal(facts)).toEqual({ state: 'opened', openedAt: facts.openedAt });
  });
});
