import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AliasTable } from './alias-table.js';
import { RandomNumbers } from './random-numbers.js';

/** Every 32-bit number in even steps instead of luck: shares come out to within one step a place. */
class EvenSteps extends RandomNumbers {
  private at = 0;
  constructor(private readonly steps: number) {
    super();
  }
  override next(): number {
    return Math.floor(((this.at++ + 0.5) / this.steps) * 2 ** 32);
  }
}

describe('an alias table', () => {
  it('draws each as often as its weight says', () => {
    fc.assert(
      fc.property(
        fc
          .array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 12 })
          .filter((some) => some.some(Boolean)),
        (weights) => {
          const steps = 6_000;
          const random = new EvenSteps(steps);
          const table = new AliasTable(weights);
          const counts = weights.map(() => 0);
          for (let draw = 0; draw < steps; draw++) {
            const index = table.draw(random);
            counts[index] = (counts[index] ?? 0) + 1;
          }
          const whole = weights.reduce((sum, weight) => sum + weight, 0);
          counts.forEach((count, index) => {
            const expected = ((weights[index] ?? 0) / whole) * steps;
            expect(Math.abs(count - expected)).toBeLessThanOrEqual(weights.length);
            if (weights[index] === 0) expect(count).toBe(0);
          });
        },
      ),
    );
  });

  it('refuses weights of which none can be drawn', () => {
    expect(() => new AliasTable([])).toThrow('The weights add up to 0');
    expect(() => new AliasTable([1, -1])).toThrow('A weight is -1: at least 0 is allowed.');
    expect(() => new AliasTable([Number.NaN])).toThrow('A weight is NaN');
  });
});
