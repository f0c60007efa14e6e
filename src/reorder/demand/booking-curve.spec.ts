import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { learnBookingCurve } from './booking-curve.js';

describe('the booking curve', () => {
  it('is what is supposed while nothing is known', () => {
    const { notBooked, attended } = learnBookingCurve([{ day: -3, bookedOn: null }], [], 60);
    expect(notBooked[0]).toBeCloseTo(0.1, 12);
    expect(notBooked[21]).toBeCloseTo(0.1 + 0.9 * (1 - Math.exp(-1)), 12);
    expect(attended[30]).toBeCloseTo(0.93, 12);
  });

  it('comes to how early sessions were booked', () => {
    // Half walk in, half book ten days ahead.
    const held = Array.from({ length: 4_000 }, (_, index) => ({ day: -1, bookedOn: index % 2 ? -1 : -11 }));
    const { notBooked } = learnBookingCurve(held, [], 30);
    expect(notBooked[0]).toBeCloseTo(0.5, 2);
    expect(notBooked[9]).toBeCloseTo(0.5, 2);
    expect(notBooked[10]).toBeCloseTo(1, 2);
  });

  it('knows that what stands a day before takes place more often than what stands a month before', () => {
    const held = Array.from({ length: 300 }, () => ({ day: -1, bookedOn: -41 }));
    const lapsed = Array.from({ length: 100 }, () => ({ day: -1, bookedOn: -41, calledOffOn: -11 }));
    const { attended } = learnBookingCurve(held, lapsed, 60);
    expect(attended[1]).toBeGreaterThan(0.98);
    expect(attended[30]).toBeCloseTo(0.76, 1);
  });

  it('counts who did not come against all bookings that stood', () => {
    const held = Array.from({ length: 300 }, () => ({ day: -1, bookedOn: -11 }));
    const missed = Array.from({ length: 300 }, () => ({ day: -1, bookedOn: -11, calledOffOn: -1 }));
    expect(learnBookingCurve(held, missed, 20).attended[0]).toBeCloseTo(0.5, 1);
  });

  it('never falls with the days ahead, and is a share', () => {
    const day = fc.integer({ min: -400, max: -1 });
    const held = fc.array(fc.record({ day, bookedOn: fc.option(fc.integer({ min: -600, max: 0 })) }));
    const lapsed = fc.array(
      fc.record({ day, bookedOn: fc.option(fc.integer({ min: -600, max: 0 })), calledOffOn: day }),
    );
    fc.assert(
      fc.property(held, lapsed, fc.integer({ min: 1, max: 200 }), (sessions, gone, days) => {
        const { notBooked, attended } = learnBookingCurve(sessions, gone, days);
        expect(
          notBooked.every((share, ahead) => share >= (notBooked[ahead - 1] ?? 0) && share <= 1 + 1e-9),
        ).toBe(true);
        expect(attended.every((share) => share >= 0 && share <= 1)).toBe(true);
      }),
    );
  });
});
