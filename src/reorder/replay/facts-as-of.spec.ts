import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { madeStudio } from '../../../tests/support/made-studio.js';
import type { DemandFacts, PastSession } from '../demand/demand-facts.js';
import { factsAsOf, itemFactsAsOf } from './facts-as-of.js';

const facts = madeStudio(11);

/** The same past up to a morning, and another one from there on. */
function withAnotherFuture(day: number, change: number): DemandFacts {
  const sessions = facts.sessions.flatMap((session, index): PastSession[] => {
    if (session.day < day) return [session];
    const wasBooked = session.bookedOn !== null && session.bookedOn < day;
    const uses = [{ item: `other ${change}`, amount: change + 1 }];
    if (wasBooked) return [{ ...session, uses }];
    return (index + change) % 3 === 0 ? [] : [{ ...session, uses, artistId: `artist ${change}` }];
  });
  const lapsedBookings = facts.lapsedBookings.filter(
    ({ calledOffOn }, index) => calledOffOn < day || (index + change) % 2 === 0,
  );
  return { ...facts, sessions, lapsedBookings, bookings: [], owedTouchUps: [], courses: [] };
}

describe('what was known on an earlier day', () => {
  it('is the same whatever came after', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: -1 }), fc.nat(50), (day, change) => {
        expect(factsAsOf(withAnotherFuture(day, change), day)).toEqual(factsAsOf(facts, day));
      }),
      { numRuns: 25 },
    );
  });

  it('has what was wanted before it, counted from it', () => {
    const want = {
      ...{ procedureId: 'brows', visitKind: 'first session' as const, artistId: 'ada' },
      ...{ sessionId: 'lapsed', followsSessionId: null, item: 'needle' },
    };
    const unmetWants = [-60, -50, -49].map((day) => ({ ...want, day }));
    expect(factsAsOf({ ...facts, unmetWants }, -50).unmetWants).toEqual([{ ...want, day: -10 }]);
  });

  it('has the sessions before it as past, and those booked before it as bookings', () => {
    const then = factsAsOf(facts, -50);
    expect(then.sessions.every((session) => session.day < 0)).toBe(true);
    expect(then.bookings.length).toBeGreaterThan(0);
    expect(then.bookings.every((booking) => booking.day >= 0)).toBe(true);
    expect(then.lapsedBookings.every(({ calledOffOn }) => calledOffOn < 0)).toBe(true);
    // 50 days before a Wednesday is a Tuesday.
    expect(then.weekday).toBe(2);
    expect(then.recordedFrom).toBe(facts.recordedFrom + 50);
  });

  it('owes the touch-ups that nobody had come for nor booked', () => {
    const then = factsAsOf(facts, -50);
    const owed = new Set(then.owedTouchUps.map(({ sessionId }) => sessionId));
    expect(owed.size).toBeGreaterThan(0);
    for (const { followsSessionId } of [...then.sessions, ...then.bookings]) {
      expect(owed.has(followsSessionId ?? '')).toBe(false);
    }
  });

  it('knows an item from its first day on', () => {
    const item = {
      item: 'needle',
      unitsOfKitQuantity: 1,
      availableFrom: -30,
      replaces: null,
      otherUses: [-80, -20].map((day) => ({ day, amount: 5 })),
    };
    expect(itemFactsAsOf(item, -50)).toMatchObject({
      availableFrom: 0,
      otherUses: [{ day: -30, amount: 5 }],
    });
    expect(itemFactsAsOf(item, -10)).toMatchObject({
      availableFrom: -20,
      otherUses: [{ day: -70 }, { day: -10 }],
    });
  });
});
