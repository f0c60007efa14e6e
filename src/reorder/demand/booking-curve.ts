import { recencyWeight } from './learnt-use.js';

/** What is supposed counts as much as so many sessions or bookings. */
const SESSIONS_SUPPOSED = 20;
/** Supposed: one session in ten was not booked before its day, the others three weeks ahead on average. [C] */
const WALK_IN_SHARE = 0.1;
const MEAN_DAYS_AHEAD = 21;
/** Supposed share of bookings that take place. [C] */
const ATTENDANCE = 0.93;

export interface BookedSession {
  day: number;
  /** Null: not known. */
  bookedOn: number | null;
}

export interface BookingLapsed extends BookedSession {
  /** The day it was called off; its own day when nobody came. */
  calledOffOn: number;
}

export interface BookingCurve {
  /** Of each number of days ahead: the share of a day's sessions that is not booked yet; it never falls. */
  notBooked: Float64Array;
  /** Of each number of days ahead: the share of what is booked that takes place. */
  attended: Float64Array;
  /** Sessions and lapsed bookings it was learnt from. */
  sessions: number;
  lapsed: number;
}

/**
 * How early sessions are booked and how many bookings take place, drawn towards what is supposed while they are few. What
 * is booked on the day of the plan itself counts as not known.
 *
 * @param days looked ahead
 */
export function learnBookingCurve(
  held: readonly BookedSession[],
  lapsed: readonly BookingLapsed[],
  days: number,
): BookingCurve {
  const known = held.flatMap(({ day, bookedOn }) =>
    bookedOn === null ? [] : [{ ahead: Math.max(0, day - bookedOn), weight: recencyWeight(day) }],
  );
  const gone = lapsed.flatMap(({ day, bookedOn, calledOffOn }) =>
    bookedOn === null
      ? []
      : [
          {
            ahead: Math.max(0, day - bookedOn),
            calledOff: Math.max(0, day - calledOffOn),
            weight: recencyWeight(day),
          },
        ],
  );
  const bookedAt = new Float64Array(days + 1);
  let weight = 0;
  for (const session of known) {
    weight += session.weight;
    const at = Math.min(days, session.ahead);
    bookedAt[at] = (bookedAt[at] ?? 0) + session.weight;
  }
  const lapsedFrom = new Float64Array(days + 1);
  for (const booking of gone) {
    // It stood on the list from `ahead` days before its day until `calledOff` days before.
    const from = Math.min(days, booking.ahead);
    for (let ahead = Math.min(days, booking.calledOff); ahead < from; ahead++) {
      lapsedFrom[ahead] = (lapsedFrom[ahead] ?? 0) + booking.weight;
    }
  }
  const notBooked = new Float64Array(days);
  const attended = new Float64Array(days);
  let late = 0;
  for (let ahead = 0; ahead < days; ahead++) {
    late += bookedAt[ahead] ?? 0;
    const supposed = WALK_IN_SHARE + (1 - WALK_IN_SHARE) * (1 - Math.exp(-ahead / MEAN_DAYS_AHEAD));
    notBooked[ahead] = (late + SESSIONS_SUPPOSED * supposed) / (weight + SESSIONS_SUPPOSED);
    const kept = weight - late;
    const dropped = lapsedFrom[ahead] ?? 0;
    attended[ahead] = (kept + SESSIONS_SUPPOSED * ATTENDANCE) / (kept + dropped + SESSIONS_SUPPOSED);
  }
  return { notBooked, attended, sessions: known.length, lapsed: gone.length };
}
