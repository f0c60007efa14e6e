import { describe, expect, it } from 'vitest';
import { certaintyOf, whyPossible, worst } from './exposure-certainty.js';

const certain = { affected: true, picked: false, byOpenLot: false };

describe('the certainty of an exposure', () => {
  it.each([
    ['an affected lot by its label is certain', certain, []],
    ['an undecided lot is possible', { ...certain, affected: false }, ['lot undecided']],
    ['a lot picked from a list is possible', { ...certain, picked: true }, ['lot picked from a list']],
    [
      'both doubts are told',
      { ...certain, affected: false, picked: true },
      ['lot undecided', 'lot picked from a list'],
    ],
    [
      'another lot picked while a recalled one was open is possible',
      { ...certain, picked: true, byOpenLot: true },
      ['another open lot that day'],
    ],
    [
      'and so is one that is not decided yet',
      { affected: false, picked: true, byOpenLot: true },
      ['lot undecided', 'another open lot that day'],
    ],
  ])('%s', (_, facts, reasons) => {
    expect(whyPossible(facts)).toEqual(reasons);
    expect(certaintyOf(whyPossible(facts))).toBe(reasons.length === 0 ? 'certain' : 'possible');
  });

  it('of a session is that of its most certain use', () => {
    expect(worst([['lot undecided'], [], ['lot picked from a list']])).toEqual({
      certainty: 'certain',
      reasons: [],
    });
    expect(worst([['lot picked from a list'], ['lot undecided', 'lot picked from a list']])).toEqual({
      certainty: 'possible',
      reasons: ['lot undecided', 'lot picked from a list'],
    });
  });
});
