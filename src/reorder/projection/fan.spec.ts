import { describe, expect, it } from 'vitest';
import { drawFan } from './fan.js';
import { NEVER } from './item-facts.js';
import { Simulation } from './simulate.js';

describe('a fan', () => {
  // Path p needs p + 1 of 30 units on day 1; what is left of 10 of them spoils on day 2.
  const paths = 20;
  const batch = { unitsEach: 1, opened: false, costEachMinor: null };
  const simulation = new Simulation(
    {
      batches: [
        { ...batch, containers: 10, lastDay: 2 },
        { ...batch, containers: 20, lastDay: NEVER },
      ],
      onTheWay: [],
      openedLifeDays: NEVER,
    },
    null,
    {
      paths,
      days: 4,
      offsets: Int32Array.from({ length: paths + 1 }, (_, path) => path),
      eventDays: new Uint16Array(paths).fill(1),
      eventUnits: Int32Array.from({ length: paths }, (_, path) => path + 1),
      seed: 1,
    },
    { unitMinor: 0, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 },
    { days: 3, tailDays: 1 },
  );
  const nothingOrdered = { first: null, reorderPointUnits: null, packs: 0 };

  it('has on each evening the smallest stock that so many paths do not exceed', () => {
    expect(drawFan(simulation, nothingOrdered, paths)).toEqual({
      at5: Int32Array.of(30, 10, 10, 10),
      at25: Int32Array.of(30, 14, 14, 14),
      at50: Int32Array.of(30, 19, 19, 19),
      at75: Int32Array.of(30, 24, 20, 20),
      at95: Int32Array.of(30, 28, 20, 20),
    });
  });

  it('is of the first paths only when fewer are asked for', () => {
    expect(drawFan(simulation, nothingOrdered, 1).at50).toEqual(Int32Array.of(30, 29, 20, 20));
    expect(() => drawFan(simulation, nothingOrdered, 21)).toThrow(
      'A fan of 21 paths was asked for: a whole number of 1 to 20 is allowed.',
    );
  });
});
