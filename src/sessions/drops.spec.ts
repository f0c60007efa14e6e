import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DropSize,
  dropsToMicrolitres,
  LEAST_DROP_MICROLITRES,
  LEAST_EMPTIED_BOTTLES,
  learnDropSize,
  MOST_DROP_MICROLITRES,
  MOST_DROPS,
  microlitresToDrops,
} from './drops.js';

describe('drops to microlitres', () => {
  it('takes 20 drops of a water-like liquid for a millilitre and says that it is assumed', () => {
    // About 50 µL a drop for water [C]; dropper tips give 20 to 70 µL [S].
    expect(dropsToMicrolitres(20, null)).toEqual({
      drops: 20,
      quantityMicrolitres: 1000,
      estimate: true,
      dropMicrolitres: 50,
      dropSizeFrom: 'assumed',
      assumption: 'Estimate at 50 µL a drop, assumed for a water-like liquid; dropper tips give 20 to 70 µL.',
    });
  });

  it("takes the product's own drop size and says where it comes from", () => {
    const learnt = dropsToMicrolitres(3, { dropMicrolitres: 31, from: 'learnt' });
    expect(learnt).toMatchObject({ quantityMicrolitres: 93, estimate: true, dropSizeFrom: 'learnt' });
    expect(learnt.assumption).toContain('31 µL a drop, learnt');
    const label = dropsToMicrolitres(3, { dropMicrolitres: 40, from: 'label' });
    expect(label).toMatchObject({ quantityMicrolitres: 120, estimate: true, dropSizeFrom: 'label' });
    expect(label.assumption).toContain('40 µL a drop, from the label');
  });

  it('takes nothing and the most drops allowed', () => {
    expect(dropsToMicrolitres(0, null).quantityMicrolitres).toBe(0);
    expect(dropsToMicrolitres(MOST_DROPS, null).quantityMicrolitres).toBe(500_000);
  });

  it.each([-1, 0.5, Number.NaN, MOST_DROPS + 1])('refuses %d drops', (drops) => {
    expect(() => dropsToMicrolitres(drops, null)).toThrow(/Allowed are whole drops/);
  });

  it.each([9, 151, 33.3, Number.NaN])('refuses a drop of %d µL', (dropMicrolitres) => {
    expect(() => dropsToMicrolitres(1, { dropMicrolitres, from: 'label' })).toThrow(/Check the drop size/);
  });
});

describe('microlitres to drops', () => {
  it('gives the nearest whole drop', () => {
    expect(microlitresToDrops(124, null).drops).toBe(2);
    expect(microlitresToDrops(125, null).drops).toBe(3);
    expect(microlitresToDrops(0, null).drops).toBe(0);
  });

  it('gives at least one drop for anything above nothing', () => {
    expect(microlitresToDrops(1, null).drops).toBe(1);
  });

  it.each([-1, 0.5, Number.NaN, MOST_DROPS * 50 + 1])('refuses %d µL', (quantityMicrolitres) => {
    expect(() => microlitresToDrops(quantityMicrolitres, null)).toThrow(/Check the quantity/);
  });

  it('finds the same drops again for every drop size', () => {
    const size = fc.option(
      fc.record({
        dropMicrolitres: fc.integer({ min: LEAST_DROP_MICROLITRES, max: MOST_DROP_MICROLITRES }),
        from: fc.constantFrom<DropSize['from'][]>('learnt', 'label'),
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: MOST_DROPS }), size, (drops, dropSize) => {
        const there = dropsToMicrolitres(drops, dropSize);
        expect(Number.isInteger(there.quantityMicrolitres)).toBe(true);
        expect(microlitresToDrops(there.quantityMicrolitres, dropSize)).toEqual(there);
      }),
    );
  });
});

describe('learning a drop size', () => {
  it('divides what was labelled by the drops that emptied it', () => {
    // Three bottles of 15 ml, 1,452 drops together.
    expect(learnDropSize({ labelledMicrolitres: 45_000, dropsUsedUntilEmpty: 1452, emptiedBottles: 3 })).toBe(
      31,
    );
  });

  it('waits for enough emptied bottles', () => {
    const emptied = { labelledMicrolitres: 45_000, dropsUsedUntilEmpty: 900 };
    expect(learnDropSize({ ...emptied, emptiedBottles: LEAST_EMPTIED_BOTTLES - 1 })).toBeNull();
    expect(learnDropSize({ ...emptied, emptiedBottles: LEAST_EMPTIED_BOTTLES })).toBe(50);
  });

  it('learns nothing from a drop size that cannot be', () => {
    const bottles = { labelledMicrolitres: 30_000, emptiedBottles: 3 };
    expect(learnDropSize({ ...bottles, dropsUsedUntilEmpty: 200 })).toBe(150);
    expect(learnDropSize({ ...bottles, dropsUsedUntilEmpty: 198 })).toBeNull();
    expect(learnDropSize({ ...bottles, dropsUsedUntilEmpty: 3000 })).toBe(10);
    expect(learnDropSize({ ...bottles, dropsUsedUntilEmpty: 3200 })).toBeNull();
    expect(learnDropSize({ ...bottles, dropsUsedUntilEmpty: 0 })).toBeNull();
  });

  it('learns only what the estimate then accepts', () => {
    const amount = fc.integer({ min: 0, max: 1_000_000 });
    fc.assert(
      fc.property(amount, amount, fc.integer({ min: 0, max: 9 }), (labelled, drops, emptiedBottles) => {
        const learnt = learnDropSize({
          labelledMicrolitres: labelled,
          dropsUsedUntilEmpty: drops,
          emptiedBottles,
        });
        if (learnt !== null) {
          const one = dropsToMicrolitres(1, { dropMicrolitres: learnt, from: 'learnt' });
          expect(one.quantityMicrolitres).toBe(learnt);
        } else {
          const ratio = Math.round(labelled / drops);
          expect(emptiedBottles < LEAST_EMPTIED_BOTTLES || !(ratio >= 10 && ratio <= 150)).toBe(true);
        }
      }),
    );
  });
});
