import type { TouchUpDays } from '../../sessions/touch-up-window.js';
import type { VisitKind } from '../../sessions/vocabulary.js';

/**
 * What a studio knows that bears on demand, once for all items. Days are local days counted from the day of the plan:
 * that day is 0, yesterday −1. An item is a string that names it among all (kind and key).
 */
export interface DemandFacts {
  /** ISO weekday of the day of the plan, Monday 1 to Sunday 7. */
  weekday: number;
  /** Days looked ahead, at least 1. */
  days: number;
  /** The first day the record is whole from; at most 0. */
  recordedFrom: number;
  /** Completed before the day of the plan. */
  sessions: readonly PastSession[];
  /** What sessions wanted that were never completed. */
  unmetWants: readonly UnmetWant[];
  /** Planned for the day of the plan or later, not begun, not cancelled. */
  bookings: readonly Booking[];
  /** What became of past bookings that did not take place. */
  lapsedBookings: readonly LapsedBooking[];
  courses: readonly BookedCourse[];
  /** Visits after which nothing took place and nothing is booked; whether one is still to be expected is decided here. */
  owedTouchUps: readonly OwedVisit[];
  /** Windows by procedure id. */
  touchUpDays: ReadonlyMap<string, TouchUpDays>;
  kitLists: readonly KitListFacts[];
  /** The last day of artists who leave, by person id. */
  lastDays: ReadonlyMap<string, number>;
  /** Share of clients who come back for a touch-up, as set by the studio; null: assumed. */
  returnPerMille: number | null;
}

export interface Visit {
  procedureId: string;
  visitKind: VisitKind;
  artistId: string;
}

export interface PastSession extends Visit {
  id: string;
  day: number;
  /** The day it was booked; the same as `day` for a walk-in; null when not known. */
  bookedOn: number | null;
  followsSessionId: string | null;
  uses: readonly SessionAmount[];
}

/** What one session took of one item, all its uses together. */
export interface SessionAmount {
  item: string;
  /** Pieces or microlitres; null: used, nobody knows how much. */
  amount: number | null;
  /** Answered `none left` at setup: it was needed all the same. */
  refused?: boolean;
}

/** That none was left of an item a session asked for, once for each session and item: it was needed all the same. */
export interface UnmetWant extends Visit {
  sessionId: string;
  /** The day it was asked for, before that of the plan. */
  day: number;
  followsSessionId: string | null;
  item: string;
}

export interface Booking extends Visit {
  day: number;
  followsSessionId: string | null;
}

export interface LapsedBooking {
  visitKind: VisitKind;
  /** The day it was planned for. */
  day: number;
  bookedOn: number | null;
  /** The day it was called off; the planned day itself when nobody came. */
  calledOffOn: number;
}

export interface BookedCourse {
  procedureId: string;
  day: number;
  trainees: number;
}

export interface OwedVisit {
  sessionId: string;
}

export interface KitListFacts {
  procedureId: string;
  /** Null: for all artists. */
  artistId: string | null;
  items: readonly { item: string; quantity: number }[];
}

/** What is known of one item beyond the sessions. */
export interface ItemDemandFacts {
  item: string;
  /** What a kit list's quantity 1 comes to in units: 1 for pieces, microlitres of a use for liquids; null: not known. */
  unitsOfKitQuantity: number | null;
  /** First day it could have been used (first receipt, or when it was listed); null: before the record begins. */
  availableFrom: number | null;
  /** The item it takes the place of, whose history counts as its own; null: none is linked. */
  replaces: string | null;
  /** The day from which the need of the one it replaces is its own; left out: at once. */
  inheritsFrom?: number;
  /** The day from which another one takes its place and its need; left out: never. */
  replacedFrom?: number;
  /** Taken for other things than sessions: blends, practice. */
  otherUses: readonly { day: number; amount: number }[];
}
