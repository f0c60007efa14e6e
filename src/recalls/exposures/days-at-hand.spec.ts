import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { localDay } from '../../identity/local-day.js';
import { type ContainerAtHand, daysAtHand, timesOfProducts } from './days-at-hand.js';

const zone = 'Europe/Vienna';
const container = (given: Partial<ContainerAtHand>): ContainerAtHand => ({
  ...{ lotId: 'lot', productId: 'umber', affected: true, since: '2026-03-10T15:00:00.000Z', until: null },
  ...given,
});
const spans = (containers: ContainerAtHand[]) =>
  daysAtHand(containers, zone).map(({ lotId, from, before }) => [lotId, from, before]);

describe('the days on which lots were at hand', () => {
  it('begin with the studio’s day of the opening and end with the day after which it was gone', () => {
    expect(spans([container({ until: '2026-03-12T08:00:00.000Z' })])).toEqual([
      ['lot', '2026-03-09T23:00:00.000Z', '2026-03-12T23:00:00.000Z'],
    ]);
    // The clocks change on 29 March.
    expect(
      spans([container({ since: '2026-03-29T12:00:00.000Z', until: '2026-03-29T12:00:00.000Z' })]),
    ).toEqual([['lot', '2026-03-28T23:00:00.000Z', '2026-03-29T22:00:00.000Z']]);
  });

  it('have no end while it is there', () => {
    expect(spans([container({})])).toEqual([['lot', '2026-03-09T23:00:00.000Z', '9999-12-31T23:00:00.000Z']]);
  });

  it('tell nothing of what ended before it was opened', () => {
    expect(spans([container({ until: '2026-03-01T08:00:00.000Z' })])).toEqual([]);
  });

  it('of neighbouring bottles of a lot are one time, those of two lots two', () => {
    const bottles = [
      container({ since: '2026-03-12T09:00:00.000Z', until: '2026-03-13T09:00:00.000Z' }),
      container({ until: '2026-03-11T09:00:00.000Z' }),
      container({ lotId: 'other', since: '2026-03-11T09:00:00.000Z', until: '2026-03-11T09:00:00.000Z' }),
    ];
    expect(spans(bottles)).toEqual([
      ['lot', '2026-03-09T23:00:00.000Z', '2026-03-13T23:00:00.000Z'],
      ['other', '2026-03-10T23:00:00.000Z', '2026-03-11T23:00:00.000Z'],
    ]);
    expect(timesOfProducts(daysAtHand(bottles, zone))).toEqual([
      { productId: 'umber', from: '2026-03-09T23:00:00.000Z', before: '2026-03-13T23:00:00.000Z' },
    ]);
  });

  it('hold an instant, whatever the order and the overlaps, exactly when its day is one of them, and once', () => {
    const start = Date.UTC(2026, 2, 25);
    const instant = fc
      .integer({ min: 0, max: 10 * 24 * 4 })
      .map((quarters) => new Date(start + quarters * 900_000).toISOString());
    const anyContainer = fc.record({
      lotId: fc.constantFrom('a', 'b', 'c'),
      affected: fc.boolean(),
      since: instant,
      until: fc.option(instant),
    });
    fc.assert(
      fc.property(fc.array(anyContainer, { maxLength: 8 }), instant, (given, at) => {
        const containers = given.map((one) =>
          container({ ...one, productId: one.lotId === 'c' ? 'sienna' : 'umber' }),
        );
        const day = localDay(at, zone);
        const atHand = containers.filter(
          ({ since, until }) =>
            localDay(since, zone) <= day && (until === null || day <= localDay(until, zone)),
        );
        const times = daysAtHand(containers, zone);
        const holding = <Time extends { from: string; before: string }>(list: readonly Time[]) =>
          list.filter(({ from, before }) => from <= at && at < before);
        expect(
          holding(times)
            .map(({ lotId }) => lotId)
            .sort(),
        ).toEqual([...new Set(atHand.map(({ lotId }) => lotId))].sort());
        expect(
          holding(timesOfProducts(times))
            .map(({ productId }) => productId)
            .sort(),
        ).toEqual([...new Set(atHand.map(({ productId }) => productId))].sort());
      }),
    );
  });
});
