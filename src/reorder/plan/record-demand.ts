import type { TouchUpDays } from '../../sessions/touch-up-window.js';
import type { VisitKind } from '../../sessions/vocabulary.js';
import type {
  Booking,
  DemandFacts,
  KitListFacts,
  LapsedBooking,
  PastSession,
  SessionAmount,
  UnmetWant,
} from '../demand/demand-facts.js';
import type { ItemUnit } from '../item.js';

/** A session as the record has it; days count from the day of the plan. */
export interface RecordedSession {
  id: string;
  procedureId: string;
  visitKind: VisitKind;
  artistId: string;
  state: 'planned' | 'in setup' | 'completed' | 'cancelled' | 'not attended';
  /** When it was booked; null: nobody wrote it down. */
  bookedOn: number | null;
  plannedOn: number | null;
  completedOn: number | null;
  calledOffOn: number | null;
  followsSessionId: string | null;
}

/** What one session took of one product. */
export interface RecordedUse {
  sessionId: string;
  productId: string;
  pieces: number;
  microlitres: number;
}

/** That none was left of a product a session asked for at setup. */
export interface RecordedRefusal {
  sessionId: string;
  productId: string;
  day: number;
}

export interface RecordedKitList {
  procedureId: string;
  artistId: string | null;
  items: readonly { productId: string | null; configuration: string | null; quantity: number }[];
}

/** By what product and configuration an item is known. */
export interface ItemNames {
  /** Name and unit of the item a product belongs to. */
  ofProduct: ReadonlyMap<string, { name: string; unit: ItemUnit }>;
  ofConfiguration: ReadonlyMap<string, string>;
}

export interface RecordOfDemand {
  weekday: number;
  days: number;
  sessions: readonly RecordedSession[];
  /** Uses, and what was opened for a session and thrown away. */
  uses: readonly RecordedUse[];
  refusals: readonly RecordedRefusal[];
  kitLists: readonly RecordedKitList[];
  courses: readonly { procedureId: string; day: number; trainees: number }[];
  /**
   * Visits whose touch-up is owed, and the last day for which a visit is planned to follow; null: none is. One that is
   * planned for a day of the past, and that nobody marked, hides nothing.
   */
  owed: readonly { sessionId: string; followedOn: number | null }[];
  touchUpDays: ReadonlyMap<string, TouchUpDays>;
  lastDays: ReadonlyMap<string, number>;
  returnPerMille: number | null;
}

/**
 * What the record says of demand. What was completed on the day of the plan itself is out of stock already and counts from
 * the next day on; a tray that is being laid out is a booking of today.
 */
export function recordDemand(record: RecordOfDemand, names: ItemNames): DemandFacts {
  const amounts = amountsBySession(record, names);
  const sessions: PastSession[] = [];
  const bookings: Booking[] = [];
  const lapsedBookings: LapsedBooking[] = [];
  const booked = new Set<string>();
  for (const session of record.sessions) {
    const { id, procedureId, visitKind, artistId, state, bookedOn, plannedOn, completedOn } = session;
    const { followsSessionId } = session;
    const visit = { procedureId, visitKind, artistId };
    if (state === 'completed') {
      if (completedOn === null || completedOn >= 0) continue;
      const uses = [...(amounts.get(id)?.values() ?? [])];
      const knownOn = bookedOn === null ? null : Math.min(bookedOn, completedOn);
      sessions.push({ ...visit, id, day: completedOn, bookedOn: knownOn, followsSessionId, uses });
    } else if (state === 'planned' || state === 'in setup') {
      const day = state === 'in setup' ? 0 : plannedOn;
      if (day === null || day < 0) continue;
      bookings.push({ ...visit, day, followsSessionId });
      booked.add(id);
    } else if (plannedOn !== null) {
      const calledOffOn = state === 'cancelled' ? (session.calledOffOn ?? plannedOn) : plannedOn;
      lapsedBookings.push({
        visitKind,
        day: plannedOn,
        bookedOn,
        calledOffOn: Math.min(calledOffOn, plannedOn),
      });
    }
  }
  const past = new Set(sessions.map(({ id }) => id));
  const first = sessions.reduce((day, session) => Math.min(day, session.day), 0);
  return {
    weekday: record.weekday,
    days: record.days,
    recordedFrom: first,
    sessions,
    unmetWants: unmetWants(record, names, booked),
    bookings,
    lapsedBookings,
    courses: record.courses.filter(({ day }) => day >= 0),
    owedTouchUps: record.owed
      .filter(({ sessionId, followedOn }) => past.has(sessionId) && (followedOn === null || followedOn < 0))
      .map(({ sessionId }) => ({ sessionId })),
    touchUpDays: record.touchUpDays,
    kitLists: record.kitLists.map((list) => kitListOf(list, names)),
    lastDays: record.lastDays,
    returnPerMille: record.returnPerMille,
  };
}

/** How many sessions nobody can say the day of, or what became of them: they are no part of the demand. */
export function sessionsLeftOut(
  sessions: readonly RecordedSession[],
): { code: 'planned without a day' | 'past and never closed'; sessions: number }[] {
  const planned = sessions.filter(({ state }) => state === 'planned');
  return [
    {
      code: 'planned without a day' as const,
      sessions: planned.filter(({ plannedOn }) => plannedOn === null).length,
    },
    {
      code: 'past and never closed' as const,
      sessions: planned.filter(({ plannedOn }) => plannedOn !== null && plannedOn < 0).length,
    },
  ].filter((each) => each.sessions > 0);
}

function amountsBySession(
  { uses, refusals }: RecordOfDemand,
  names: ItemNames,
): Map<string, Map<string, SessionAmount>> {
  const bySession = new Map<string, Map<string, SessionAmount>>();
  const ofSession = (id: string) => {
    const known = bySession.get(id) ?? new Map<string, SessionAmount>();
    bySession.set(id, known);
    return known;
  };
  for (const { sessionId, productId, pieces, microlitres } of uses) {
    const item = names.ofProduct.get(productId);
    if (!item) continue;
    const amount = item.unit === 'pieces' ? pieces : microlitres;
    const known = ofSession(sessionId);
    const before = known.get(item.name)?.amount ?? 0;
    const sum = before + Math.max(0, amount);
    // Used, and nobody knows how much.
    known.set(item.name, { item: item.name, amount: sum > 0 ? sum : null });
  }
  for (const { sessionId, productId } of refusals) {
    const item = names.ofProduct.get(productId);
    if (!item) continue;
    const known = ofSession(sessionId);
    if (!known.has(item.name)) known.set(item.name, { item: item.name, amount: null, refused: true });
  }
  return bySession;
}

/** Of sessions never completed; what a booking asked for already is expected of it anyway, and is not wanted twice. */
function unmetWants(
  { sessions, refusals }: RecordOfDemand,
  names: ItemNames,
  booked: ReadonlySet<string>,
): UnmetWant[] {
  const lapsed = new Map(
    sessions
      .filter(({ id, state }) => state !== 'completed' && !booked.has(id))
      .map((session) => [session.id, session] as const),
  );
  const wants = new Map<string, UnmetWant>();
  for (const { sessionId, productId, day } of refusals) {
    const session = lapsed.get(sessionId);
    const item = names.ofProduct.get(productId)?.name;
    if (!session || item === undefined || day >= 0) continue;
    const key = `${sessionId} ${item}`;
    const known = wants.get(key);
    if (known && known.day <= day) continue;
    const { procedureId, visitKind, artistId, followsSessionId } = session;
    wants.set(key, { sessionId, procedureId, visitKind, artistId, followsSessionId, day, item });
  }
  return [...wants.values()];
}

function kitListOf({ procedureId, artistId, items }: RecordedKitList, names: ItemNames): KitListFacts {
  const quantities = new Map<string, number>();
  for (const { productId, configuration, quantity } of items) {
    const name =
      productId === null
        ? names.ofConfiguration.get(configuration ?? '')
        : names.ofProduct.get(productId)?.name;
    if (name !== undefined) quantities.set(name, (quantities.get(name) ?? 0) + quantity);
  }
  return {
    procedureId,
    artistId,
    items: [...quantities].map(([item, quantity]) => ({ item, quantity })),
  };
}
