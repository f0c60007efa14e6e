import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costByTerms, orderSums } from './order-sums.js';

const terms = { deliveryCostMinor: 690, freeDeliveryFromMinor: 10_000 };

describe('the sums of an order', () => {
  it('are of whole minor units and equal the sum of the lines, whatever their order', () => {
    const line = fc.record({
      packs: fc.integer({ min: 1, max: 10_000 }),
      packPriceMinor: fc.nat(100_000_000),
    });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 50 }), fc.nat(1_000_000), (lines, delivery) => {
        const expected = lines.reduce(
          (sum, { packs, packPriceMinor }) => sum + BigInt(packs) * BigInt(packPriceMinor),
          0n,
        );
        const sums = orderSums([...lines].reverse(), delivery, terms);
        expect(BigInt(sums.linesMinor)).toBe(expected);
        expect(sums.totalMinor).toBe(sums.linesMinor + delivery);
        expect(sums).toMatchObject({ deliveryCostFrom: 'by hand', unpricedLines: 0 });
      }),
    );
  });

  it('have no total while a price or the cost of delivery is not known', () => {
    const lines = [
      { packs: 2, packPriceMinor: 100 },
      { packs: 1, packPriceMinor: null },
    ];
    expect(orderSums(lines, 0, terms)).toMatchObject({ linesMinor: 200, unpricedLines: 1, totalMinor: null });
    const unsaid = { deliveryCostMinor: null, freeDeliveryFromMinor: null };
    expect(orderSums([], null, unsaid)).toMatchObject({ deliveryCostFrom: 'not known', totalMinor: null });
  });

  it('take the terms until it is approved, then what was approved', () => {
    const lines = [{ packs: 1, packPriceMinor: 9_999 }];
    expect(orderSums(lines, null, terms)).toMatchObject({
      deliveryCostMinor: 690,
      deliveryCostFrom: 'terms',
    });
    expect(orderSums(lines, 500, null)).toMatchObject({
      deliveryCostMinor: 500,
      deliveryCostFrom: 'approved',
    });
    expect(orderSums(lines, null, null)).toMatchObject({
      deliveryCostMinor: null,
      deliveryCostFrom: 'not known',
    });
  });

  it('are free of delivery from just the sum the supplier says', () => {
    expect([9_999, 10_000].map((minor) => costByTerms(minor, terms))).toEqual([690, 0]);
  });
});
