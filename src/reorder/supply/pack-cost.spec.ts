import fc from 'fast-check';
import { expect, it } from 'vitest';
import { packPriceMinor, packsCostMinor, unitPriceMinor } from './pack-cost.js';

const prices = [
  { fromPacks: 1, packPriceMinor: 1000 },
  { fromPacks: 5, packPriceMinor: 900 },
  { fromPacks: 10, packPriceMinor: 900 },
  { fromPacks: 20, packPriceMinor: 0 },
];

it('charges all packs what the highest break reached says', () => {
  expect([1, 4, 5, 9, 10, 19, 20, 100].map((packs) => packPriceMinor(prices, packs))).toEqual([
    1000, 1000, 900, 900, 900, 900, 0, 0,
  ]);
  expect(packsCostMinor(prices, 4)).toBe(4000);
  // Five cost less than they would without the break, and a pack more may cost less than one fewer.
  expect(packsCostMinor(prices, 5)).toBe(4500);
  expect(packsCostMinor(prices, 20)).toBe(0);
});

it('charges nothing for nothing', () => {
  expect(packsCostMinor(prices, 0)).toBe(0);
  expect(packsCostMinor([], 0)).toBe(0);
});

it('takes the first price below the first break', () => {
  expect(packPriceMinor([{ fromPacks: 3, packPriceMinor: 70 }], 1)).toBe(70);
});

it('says what one unit costs, not rounded', () => {
  expect(unitPriceMinor(prices, 5, 15_000)).toBe(0.06);
  expect(unitPriceMinor(prices, 1, 3)).toBeCloseTo(333.333333333, 9);
});

it('refuses a list without prices', () => {
  expect(() => packPriceMinor([], 1)).toThrow(RangeError);
});

it('costs whole minor units, at most what they cost without breaks', () => {
  const anyPrices = fc.uniqueArray(fc.integer({ min: 2, max: 500 }), { maxLength: 10 }).chain((breaks) =>
    fc
      .array(fc.integer({ min: 0, max: 1_000_000 }), {
        minLength: breaks.length + 1,
        maxLength: breaks.length + 1,
      })
      .map((costs) => {
        const falling = [...costs].sort((one, other) => other - one);
        return [1, ...breaks.sort((one, other) => one - other)].map((fromPacks, index) => ({
          fromPacks,
          packPriceMinor: falling[index] ?? 0,
        }));
      }),
  );
  fc.assert(
    fc.property(anyPrices, fc.integer({ min: 0, max: 1000 }), (list, packs) => {
      const cost = packsCostMinor(list, packs);
      expect(Number.isSafeInteger(cost)).toBe(true);
      expect(cost).toBeLessThanOrEqual((list[0]?.packPriceMinor ?? 0) * packs);
    }),
  );
});
