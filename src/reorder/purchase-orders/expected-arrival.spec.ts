import { expect, it } from 'vitest';
import { leadTimeOf } from '../supply/lead-time.js';
import { expectedArrival, expectedRest } from './expected-arrival.js';

const arrival = (orderId: string, days: number) => ({
  orderId,
  orderedOn: '2026-01-01',
  arrivedOn: new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10),
  pieces: 1,
});
const quoted = leadTimeOf([], 5);

it('is the day a person says, else that by which four of five come', () => {
  expect(expectedArrival('2026-02-26', '2026-03-20', [quoted])).toEqual({
    ...{ expectedOn: '2026-03-20', basis: 'said by a person' },
  });
  // Over the end of a February of 28 days.
  expect(expectedArrival('2026-02-26', null, [quoted])).toEqual({
    expectedOn: '2026-03-03',
    basis: 'quoted',
  });
  const seen = leadTimeOf(
    [2, 3, 3, 4, 9].map((days, index) => arrival(String(index), days)),
    null,
  );
  expect(expectedArrival('2026-02-26', null, [seen])).toEqual({ expectedOn: '2026-03-02', basis: 'learnt' });
});

it('waits for the slowest line', () => {
  const slow = leadTimeOf([], 21);
  expect(expectedArrival('2026-03-01', null, [quoted, slow, quoted]).expectedOn).toBe('2026-03-22');
  expect(() => expectedArrival('2026-03-01', null, [])).toThrow(RangeError);
});

it('expects the rest on the day it was expected before, unless that is over', () => {
  const before = { expectedOn: '2026-03-06', daySaid: 1 as const };
  expect(expectedRest('2026-03-02', before, [quoted])).toEqual(before);
  expect(expectedRest('2026-03-02', { ...before, daySaid: null }, [quoted])).toEqual({
    ...before,
    daySaid: null,
  });
  const byLeadTime = { expectedOn: '2026-03-11', daySaid: 0 };
  expect(expectedRest('2026-03-06', before, [quoted])).toEqual(byLeadTime);
  expect(expectedRest('2026-03-06', null, [quoted])).toEqual(byLeadTime);
});
