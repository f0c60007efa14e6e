import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mixSums, mixTotals } from './mix-totals.js';

const addition = (containerId: string, drops: number | null, microlitres: number, mixId = 'base') => ({
  mixId,
  containerId,
  lotId: `lot of ${containerId}`,
  drops,
  microlitres,
});

describe('totals of a mix', () => {
  it('sums the drops of each bottle in each cup, in the order of their first drop', () => {
    const totals = mixTotals([
      addition('umber', 3, 150),
      addition('rose', 1, 50),
      addition('umber', 1, 50),
      addition('umber', 2, 100, 'shadow'),
    ]);
    expect(totals).toEqual([
      addition('umber', 4, 200),
      addition('rose', 1, 50),
      addition('umber', 2, 100, 'shadow'),
    ]);
  });

  it('leaves out what was taken back whole', () => {
    expect(mixTotals([addition('umber', 2, 100), addition('umber', -2, -100)])).toEqual([]);
  });

  it('tells no drops where any of it was given as a volume', () => {
    expect(mixTotals([addition('umber', 2, 100), addition('umber', null, 25)])).toEqual([
      addition('umber', null, 125),
    ]);
  });

  it('loses no microlitre, whatever the order', () => {
    const anyAddition = fc.record({
      container: fc.constantFrom('a', 'b', 'c'),
      mix: fc.constantFrom('base', 'shadow'),
      microlitres: fc.integer({ min: -500, max: 500 }).filter((quantity) => quantity !== 0),
    });
    fc.assert(
      fc.property(fc.array(anyAddition), (given) => {
        const totals = mixTotals(given.map((one) => addition(one.container, null, one.microlitres, one.mix)));
        const sum = (list: readonly { microlitres: number }[]) =>
          list.reduce((total, one) => total + one.microlitres, 0);
        expect(sum(totals)).toBe(sum(given));
        expect(new Set(totals.map((total) => `${total.mixId} ${total.containerId}`)).size).toBe(
          totals.length,
        );
      }),
    );
  });

  it('keeps, of what was used, what has no known amount', () => {
    const used = [addition('umber', null, 0), addition('rose', 1, 50), addition('rose', 2, 100)];
    expect(mixSums(used)).toEqual([addition('umber', null, 0), addition('rose', 3, 150)]);
    expect(mixTotals(used)).toEqual([addition('rose', 3, 150)]);
  });
});
