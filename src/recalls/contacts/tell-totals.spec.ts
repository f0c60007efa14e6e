import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contactOutcomes } from '../vocabulary.js';
import { tellTotals } from './tell-totals.js';

describe('how many are to be told', () => {
  it('counts everybody once, and leaves nobody who can be tried out of what is outstanding', () => {
    const recipients = fc.array(
      fc.record({
        standing: fc.constantFrom('not tried' as const, ...contactOutcomes),
        erased: fc.boolean(),
      }),
    );
    fc.assert(
      fc.property(recipients, (all) => {
        const totals = tellTotals(all);
        const { notTried, noAnswer, messageLeft, reached, refused, unreachable } = totals;
        expect(notTried + noAnswer + messageLeft + reached + refused + unreachable).toBe(totals.toTell);
        expect(totals.outstanding + totals.erased + reached + refused + unreachable).toBe(totals.toTell);
      }),
    );
  });

  it('waits for nobody who was erased', () => {
    expect(tellTotals([{ standing: 'not tried', erased: true }])).toMatchObject({
      erased: 1,
      outstanding: 0,
    });
    expect(tellTotals([{ standing: 'reached', erased: true }])).toMatchObject({ erased: 0, reached: 1 });
  });
});
