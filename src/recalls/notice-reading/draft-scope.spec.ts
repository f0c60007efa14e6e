import { describe, expect, it } from 'vitest';
import { DraftScope, placesOf } from './draft-scope.js';

const draft = (limits = {}) => new DraftScope({ terms: 10, items: 3, parts: 100, ...limits });
const code = (text: string) => ({ kind: 'code', code: text, useBy: null }) as const;
const useBy = { from: '2027-10-01', through: '2027-10-31' };
const finish = (scope: DraftScope) => scope.finish(scope.items, () => ({ productIds: [] }));

describe('a draft of a scope', () => {
  it('binds an expiry to the group before it', () => {
    const scope = draft();
    scope.addTerm(code('A'), true);
    scope.group += 1;
    scope.addTerm(code('B'), true);
    scope.bind(scope.waiting(false), useBy);
    expect(finish(scope).items[0]?.lots).toEqual([code('A'), { ...code('B'), useBy }]);
  });

  it('grows over further expiries beside the same lots', () => {
    const scope = draft();
    scope.addTerm(code('A'), true);
    scope.bind(scope.waiting(false), useBy);
    scope.widenBound({ from: '2027-12-01', through: '2027-12-31' });
    expect(finish(scope).items[0]?.lots).toEqual([
      { ...code('A'), useBy: { from: '2027-10-01', through: '2027-12-31' } },
    ]);
  });

  it('keeps a lot as wide as it was named elsewhere', () => {
    const scope = draft();
    scope.addTerm(code('A'), true);
    scope.group += 1;
    scope.addTerm(code('A'), true);
    scope.bind(scope.waiting(false), useBy);
    expect(finish(scope).items[0]?.lots).toEqual([code('A')]);
  });

  it('names a lot once, and knows where both places say it', () => {
    const scope = draft();
    const first = scope.addTerm(code('A'), false);
    const again = scope.addTerm(code('A'), false);
    expect(placesOf(scope.items)([...first, ...again])).toEqual([
      { item: 0, lot: 0 },
      { item: 0, lot: 0 },
    ]);
  });

  it('is open-ended where a limit cuts it', () => {
    const scope = draft({ terms: 1 });
    scope.addTerm(code('A'), false);
    scope.addTerm(code('B'), false);
    expect(finish(scope).items[0]).toMatchObject({ lots: [code('A')], openEnded: true });
    expect(scope.termsLeftOut).toBe(1);
    const items = draft({ items: 1 });
    expect(items.newItem(null)).toBe(items.items[0]);
    expect(items.items[0]?.openEnded).toBe(true);
  });
});
