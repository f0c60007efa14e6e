import { expect, it } from 'vitest';
import {
  demandOf,
  orderDaysEvery,
  replenishmentOf,
  sealed,
} from '../../../tests/support/planning-samples.js';
import type { ExpectedUse } from '../demand/demand-model.js';
import { NEVER } from '../projection/item-facts.js';
import { orderForBooked } from './appointment-order.js';

const bottle = replenishmentOf({
  packContainers: 1,
  unitsEach: 5_000,
  leadTime: { days: [4, 7], weights: [0.8, 0.2] },
});

function booking(
  firstDay: number,
  units: number,
  chance = 0.95,
  source: ExpectedUse['source'] = 'booking',
): ExpectedUse {
  return { source, chance, firstDay, dayWeights: [1], amount: { amounts: [units], weights: [1] } };
}

function decide(expected: ExpectedUse[], units = 0, lastDay = NEVER, replenishment = bottle) {
  const batches = units > 0 ? [sealed(1, units, lastDay)] : [];
  return orderForBooked(
    demandOf({ usesPerWeek: 0, expected }),
    { batches, onTheWay: [], openedLifeDays: NEVER },
    replenishment,
  );
}

it('orders on the last day from which nineteen of twenty deliveries are there in time', () => {
  expect(decide([booking(20, 500)])).toEqual({
    orderDay: 13,
    packs: 1,
    neededDay: 20,
    sessions: 1,
    units: 500,
    late: false,
  });
  const mondays = replenishmentOf({ ...bottle, nextOrderDay: orderDaysEvery(7, 4) });
  expect(decide([booking(20, 500)], 0, NEVER, mondays)?.orderDay).toBe(11);
});

it('orders nothing while the shelf serves all that is booked', () => {
  expect(decide([booking(20, 500), booking(25, 500)], 1_000)).toBeNull();
  expect(decide([])).toBeNull();
});

it('counts what is over by then as gone', () => {
  expect(decide([booking(20, 500)], 1_000, 15)).toMatchObject({ units: 500, sessions: 1 });
});

it('takes together what the same delivery serves, in whole packs', () => {
  expect(decide([booking(20, 3_000), booking(22, 3_000), booking(90, 3_000)])).toMatchObject({
    sessions: 2,
    units: 6_000,
    packs: 2,
  });
});

it('leaves out touch-ups that are not booked and bookings that hardly ever need it', () => {
  expect(decide([booking(20, 500, 0.9, 'touch-up'), booking(21, 500, 0.2)])).toBeNull();
});

it('orders at once, and says so, when it is too late to be sure', () => {
  expect(decide([booking(3, 500)])).toMatchObject({ orderDay: 0, late: true });
});
