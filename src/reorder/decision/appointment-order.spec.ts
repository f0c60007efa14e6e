import { expect, it } from 'vitest';
import {
  demandOf,
  orderDaysEvery,
  replenishmentOf,
  sealed,
} from '../../../tests/support/planning-samples.js';
import type { ExpectedUse } from '../demand/demand-model.js';
import { NEVER } from '../projection/item-facts.js';
import { isMissingBeforeDelivery, orderForBooked, shareOrderedFor } from './appointment-order.js';

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

/** A session of 500 that goes without costs 14.00; of a bottle nobody needs 30.00 is lost. */
const stakes = { shortageMinor: 1_400 / 500, lossMinor: 3_000 };

function decide(expected: ExpectedUse[], units = 0, lastDay = NEVER, replenishment = bottle) {
  const batches = units > 0 ? [sealed(1, units, lastDay)] : [];
  return orderForBooked(
    demandOf({ usesPerWeek: 0, expected }),
    { batches, onTheWay: [], openedLifeDays: NEVER },
    replenishment,
    stakes,
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

it('orders for a touch-up that is owed', () => {
  expect(decide([booking(20, 500, 0.9, 'touch-up')])).toMatchObject({ neededDay: 20, packs: 1 });
});

it('orders what none of many bookings is likely to need, but one of them is', () => {
  const bookings = Array.from({ length: 17 }, (_, index) => booking(10 + 2 * index, 500, 0.2));
  const order = decide(bookings);
  expect(order).toMatchObject({ neededDay: 10, orderDay: 3, packs: 1 });
  expect(decide(bookings, 10_000)).toBeNull();
  expect(shareOrderedFor(demandOf({ usesPerWeek: 0, expected: bookings }), bottle, stakes)).toBeGreaterThan(
    0.8,
  );
});

it('orders nothing for a session that hardly ever needs it', () => {
  expect(decide([booking(21, 500, 0.2)])).toBeNull();
  expect(decide([booking(21, 500, 0.07)])).toBeNull();
  const seldom = demandOf({ usesPerWeek: 0, expected: [booking(21, 500, 0.07)] });
  expect(shareOrderedFor(seldom, bottle, stakes)).toBe(0);
  expect(shareOrderedFor(demandOf({ usesPerWeek: 0 }), bottle, stakes)).toBe(1);
});

it('orders for a small chance when going without costs more than a bottle too many', () => {
  const seldom = demandOf({ usesPerWeek: 0, expected: [booking(21, 500, 0.3)] });
  const stock = { batches: [], onTheWay: [], openedLifeDays: NEVER };
  const dear = { shortageMinor: 20_000 / 500, lossMinor: 3_000 };
  expect(orderForBooked(seldom, stock, bottle, dear)).toMatchObject({ neededDay: 21 });
});

it('goes by the day from which it is really needed', () => {
  expect(decide([booking(9, 500, 0.01), booking(20, 500)])).toMatchObject({ neededDay: 20 });
});

it('uses first what expires first, so that the rest is there later', () => {
  const stock = { batches: [sealed(1, 300, 5), sealed(1, 300, 60)], onTheWay: [], openedLifeDays: NEVER };
  const demand = demandOf({ usesPerWeek: 0, expected: [booking(3, 300, 1), booking(20, 300, 1)] });
  expect(orderForBooked(demand, stock, bottle, stakes)).toBeNull();
});

it('counts what is left of a bottle as gone when it has been open too long', () => {
  const demand = demandOf({ usesPerWeek: 0, expected: [booking(2, 300, 1), booking(30, 300, 1)] });
  const stock = (openedLifeDays: number) => ({ batches: [sealed(1, 1_000)], onTheWay: [], openedLifeDays });
  expect(orderForBooked(demand, stock(28), bottle, stakes)).toBeNull();
  expect(orderForBooked(demand, stock(5), bottle, stakes)).toMatchObject({ neededDay: 30, units: 300 });
});

it('does not order again what is missing until the delivery on the way is here, but what is missing after it', () => {
  const onTheWay = [
    {
      ...{ containers: 1, unitsEach: 600, lifeDays: 300, costEachMinor: null },
      arrival: { days: [4], weights: [1] },
    },
  ];
  const stock = { batches: [], onTheWay, openedLifeDays: NEVER };
  const soon = demandOf({ usesPerWeek: 0, expected: [booking(2, 500, 1), booking(9, 500, 1)] });
  expect(orderForBooked(soon, stock, bottle, stakes)).toBeNull();
  expect(isMissingBeforeDelivery(soon, stock, bottle)).toBe(true);
  const later = demandOf({ usesPerWeek: 0, expected: [booking(9, 500, 1), booking(12, 500, 1)] });
  expect(orderForBooked(later, stock, bottle, stakes)).toMatchObject({ neededDay: 12, units: 400 });
  expect(isMissingBeforeDelivery(later, stock, bottle)).toBe(false);
});

it('orders at once, and says so, when it is too late to be sure', () => {
  expect(decide([booking(3, 500)])).toMatchObject({ orderDay: 0, late: true });
});
