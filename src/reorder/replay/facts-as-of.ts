import { visitsWithTouchUp } from '../../sessions/touch-up-window.js';
import type {
  Booking,
  DemandFacts,
  ItemDemandFacts,
  OwedVisit,
  PastSession,
} from '../demand/demand-facts.js';

/**
 * What the studio knew on the morning of an earlier day, as if that were the day of the plan. Nothing that happened, was
 * booked or was called off on that day or later is in it, but what had been booked before is.
 *
 * Three things are not kept as they were and are taken from today: kit lists, windows of touch-ups and the return rate that
 * is set. What is booked from today on, and courses, carry no day of booking: they are left out, as are last days of artists
 * that had not come yet. So an earlier day knows somewhat less than it did, never more.
 *
 * @param day at most 0, counted from the day of the plan
 */
export function factsAsOf(facts: DemandFacts, day: number): DemandFacts {
  const sessions = facts.sessions.filter((session) => session.day < day);
  const bookings = facts.sessions.flatMap((session): Booking[] => {
    const { procedureId, visitKind, artistId, followsSessionId, bookedOn } = session;
    if (session.day < day || bookedOn === null || bookedOn >= day) return [];
    return [{ procedureId, visitKind, artistId, day: session.day - day, followsSessionId }];
  });
  return {
    weekday: ((((facts.weekday - 1 + day) % 7) + 7) % 7) + 1,
    days: facts.days,
    recordedFrom: Math.min(0, facts.recordedFrom - day),
    sessions: sessions.map((session) => movedBy(session, day)),
    unmetWants: facts.unmetWants
      .filter((want) => want.day < day)
      .map((want) => ({ ...want, day: want.day - day })),
    bookings,
    lapsedBookings: facts.lapsedBookings
      .filter(({ calledOffOn }) => calledOffOn < day)
      .map((lapsed) => ({
        visitKind: lapsed.visitKind,
        day: lapsed.day - day,
        bookedOn: lapsed.bookedOn === null ? null : lapsed.bookedOn - day,
        calledOffOn: lapsed.calledOffOn - day,
      })),
    courses: [],
    owedTouchUps: owedThen(sessions, bookings),
    touchUpDays: facts.touchUpDays,
    kitLists: facts.kitLists,
    lastDays: new Map(
      [...facts.lastDays].flatMap(([artist, last]) => (last < day ? [[artist, last - day] as const] : [])),
    ),
    returnPerMille: facts.returnPerMille,
  };
}

/** What was known of an item on the morning of an earlier day, but for when one passes its need on to another. */
export function itemFactsAsOf(item: ItemDemandFacts, day: number): ItemDemandFacts {
  const { availableFrom, inheritsFrom, replacedFrom, ...lasting } = item;
  return {
    ...lasting,
    availableFrom: availableFrom === null ? null : Math.min(0, availableFrom - day),
    otherUses: item.otherUses
      .filter((use) => use.day < day)
      .map((use) => ({ day: use.day - day, amount: use.amount })),
  };
}

function movedBy(session: PastSession, day: number): PastSession {
  const { bookedOn } = session;
  return { ...session, day: session.day - day, bookedOn: bookedOn === null ? null : bookedOn - day };
}

function owedThen(sessions: readonly PastSession[], bookings: readonly Booking[]): OwedVisit[] {
  const followed = new Set([...sessions, ...bookings].map(({ followsSessionId }) => followsSessionId));
  return sessions
    .filter(({ id, visitKind }) => visitsWithTouchUp.has(visitKind) && !followed.has(id))
    .map(({ id }) => ({ sessionId: id }));
}
