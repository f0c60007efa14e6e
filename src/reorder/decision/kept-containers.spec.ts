import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NEVER } from '../projection/item-facts.js';
import { type KeptContainers, takeUnits } from './kept-containers.js';

const sealed = (containers: number, lastDay: number): KeptContainers => ({
  containers,
  units: 10,
  lastDay,
  opened: false,
});
const unitsOn = (shelf: readonly KeptContainers[]) =>
  shelf.reduce((sum, { containers, units }) => sum + containers * units, 0);

describe('taking units off a shelf', () => {
  it('takes from what is opened first, then from what expires first', () => {
    const shelf = [sealed(1, 90), sealed(1, 30), { ...sealed(1, 200), units: 4, opened: true }];
    takeUnits(shelf, 6, 0, NEVER);
    expect(shelf.filter(({ containers }) => containers > 0)).toEqual([
      { containers: 1, units: 10, lastDay: 90, opened: false },
      { containers: 1, units: 8, lastDay: 30, opened: true },
    ]);
  });

  it('opens a container, which lasts its opened life and no longer than its label', () => {
    const soon = [sealed(1, 100)];
    takeUnits(soon, 3, 5, 20);
    expect(soon.find(({ opened }) => opened)).toEqual({ containers: 1, units: 7, lastDay: 25, opened: true });
    const late = [sealed(1, 10)];
    takeUnits(late, 3, 5, 20);
    expect(late.find(({ opened }) => opened)?.lastDay).toBe(10);
  });

  it('leaves what was there less what was taken, and nothing when more is wanted', () => {
    const counts = fc.record({
      containers: fc.integer({ min: 0, max: 5 }),
      units: fc.integer({ min: 1, max: 12 }),
      lastDay: fc.integer({ min: 0, max: 400 }),
      opened: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(counts, { maxLength: 6 }),
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 0, max: 60 }),
        (shelf, units, openedLifeDays) => {
          const before = unitsOn(shelf);
          takeUnits(shelf, units, 3, openedLifeDays);
          expect(unitsOn(shelf)).toBe(Math.max(0, before - units));
        },
      ),
    );
  });
});
