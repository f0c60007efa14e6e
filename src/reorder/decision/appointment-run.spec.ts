import { expect, it } from 'vitest';
import { NEVER } from '../projection/item-facts.js';
import { runForAppointments } from './appointment-run.js';

const terms = {
  packContainers: 1,
  unitsEach: 1_000,
  minimumPacks: 1,
  lifeDays: 100,
  openedLifeDays: 10,
  bookedInTime: 1,
};

/** One path with these needs. */
function path(needs: [day: number, units: number][], days = 200) {
  return {
    paths: 1,
    days,
    offsets: Int32Array.from([0, needs.length]),
    eventDays: Uint16Array.from(needs, ([day]) => day),
    eventUnits: Int32Array.from(needs, ([, units]) => units),
    seed: 1,
  };
}

it('orders for each booked need what the shelf does not hold, and uses what is left in date', () => {
  const run = runForAppointments(
    path([
      [5, 400],
      [12, 400],
      [40, 400],
    ]),
    terms,
    1,
  );
  // The first bottle serves two needs within its opened life; its last 200 are over by day 40.
  expect(run).toEqual({
    needs: 3,
    usedUnits: 1_200,
    unmetUnits: 0,
    unmetNeeds: 0,
    wastedUnits: 200 + 600,
    orders: 2,
    packs: 2,
  });
});

it('leaves a need without what nobody booked in time', () => {
  expect(
    runForAppointments(
      path([
        [5, 400],
        [6, 100],
      ]),
      { ...terms, bookedInTime: 0 },
      1,
    ),
  ).toMatchObject({
    usedUnits: 0,
    unmetUnits: 500,
    unmetNeeds: 2,
    orders: 0,
  });
});

it('orders whole packs, the minimum at least, and counts as wasted only what is over by the last day', () => {
  const run = runForAppointments(
    path([[5, 2_500]], 20),
    { ...terms, minimumPacks: 4, lifeDays: NEVER, openedLifeDays: NEVER },
    1,
  );
  expect(run).toMatchObject({ packs: 4, usedUnits: 2_500, wastedUnits: 0 });
});

it('opens a second container when one is not enough, and keeps the books', () => {
  const run = runForAppointments(
    path([
      [1, 700],
      [2, 700],
      [150, 10],
    ]),
    terms,
    1,
  );
  expect(run.packs * 1_000).toBe(run.usedUnits + run.wastedUnits);
});
