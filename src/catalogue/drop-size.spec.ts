import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastDropMicrolitres, microlitresOf, mostDropMicrolitres } from './drop-size.js';

describe('the volume of an amount', () => {
  it('takes 20 drops for a millilitre where nothing is known of the product', () => {
    // About 50 µL a drop for water [C]; dropper tips give 20 to 70 µL [S].
    expect(microlitresOf({ drops: 20 }, null)).toBe(1000);
  });

  it("takes the product's own drop size", () => {
    expect(microlitresOf({ drops: 3 }, 31)).toBe(93);
  });

  it('takes a volume as it is said, drops or not', () => {
    expect(microlitresOf({ microlitres: 120 }, 31)).toBe(120);
    expect(microlitresOf({ microlitres: 120, drops: 3 }, null)).toBe(120);
    expect(microlitresOf({ microlitres: 0, drops: 3 }, null)).toBe(0);
  });

  it('takes back what was dropped in', () => {
    expect(microlitresOf({ drops: -2 }, 40)).toBe(-80);
  });

  it('knows no volume when no amount is said', () => {
    expect(microlitresOf({}, 40)).toBeNull();
    expect(microlitresOf({ drops: null, microlitres: null }, null)).toBeNull();
  });

  it('gives whole microlitres, as much back as went in, for every drop size a product may have', () => {
    const size = fc.option(fc.integer({ min: leastDropMicrolitres, max: mostDropMicrolitres }));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), size, (drops, dropMicrolitres) => {
        const there = microlitresOf({ drops }, dropMicrolitres);
        const back = microlitresOf({ drops: -drops }, dropMicrolitres);
        expect(Number.isInteger(there)).toBe(true);
        expect((there ?? 0) + (back ?? 0)).toBe(0);
      }),
    );
  });
});
