import { foldedName } from '../../stock/opening-stock/folded-name.js';
import type { SessionState } from '../vocabulary.js';
import type { BookingColumn } from './booking-columns.js';
import type { BookingCellFault, BookingRow } from './booking-row.js';

export interface KnownBookingClient {
  id: string;
  reference: string;
  nameHash: string | null;
  contactHash: string | null;
  erased: boolean;
}

export interface KnownBooking {
  id: string;
  clientId: string;
  artistId: string;
  procedureId: string;
  plannedStart: string;
  state: SessionState;
  bookingHash: string | null;
}

/** What is on record, as far as a list of bookings may touch it. */
export interface BookingsOnRecord {
  procedures: readonly { id: string; name: string }[];
  /** Who works here, by name. */
  people: readonly { id: string; name: string }[];
  /** Clients of the references, names and contacts that the list names. */
  clients: readonly KnownBookingClient[];
  /** Planned sessions around the times of the list, and those that came from it earlier. */
  sessions: readonly KnownBooking[];
}

/** A booking as it was read, with the keyed hashes by which it and its client are found. */
export interface ReadBooking {
  /** Its row, or its entry in a calendar, in words: `row 5`. */
  place: string;
  row: BookingRow;
  faults: readonly BookingCellFault[];
  warnings: readonly string[];
  nameHash: string | null;
  contactHash: string | null;
  bookingHash: string | null;
  /** Whether the calendar says that it was cancelled. */
  cancelled: boolean;
  /** Why it is no booking that could be taken in; null for one that is. */
  leftOut: string | null;
}

export interface BookingDefaults {
  artistId: string | null;
  procedureId: string | null;
}

export type BookingEffect = 'new session' | 'on record already' | 'left out';

/** A client on record, or the booking that puts them there: its place in the list. */
export type MeantClient = { id: string } | { madeBy: number };

export interface PlannedBooking {
  read: ReadBooking;
  faults: BookingCellFault[];
  warnings: string[];
  /** Null while it has faults. */
  effect: BookingEffect | null;
  client: MeantClient | null;
  /** Of a client on record. */
  clientReference: string | null;
  /** Whether this booking puts its client on record. */
  makesClient: boolean;
  artistId: string | null;
  procedureId: string | null;
  /** Of the session that is on record already. */
  sessionId: string | null;
}

/** Starts of one artist or one client that lie closer are told: a session rarely takes less [C]. */
export const closeStartsMinutes = 60;

interface PlannedClient {
  meant: MeantClient;
  reference: string | null;
  nameHash: string | null;
  contactHash: string | null;
  erased: boolean;
  /** Where the list puts them on record; null for one who is. */
  place: string | null;
}

interface PlannedStart {
  client: string;
  artistId: string;
  procedureId: string;
  start: number;
  /** Where it stands in the list; null for a session on record. */
  place: string | null;
}

/**
 * Decides what every booking of a list would do, in their order. What is on record already is taken in no second time:
 * by its id in the list, or by its client, procedure and start. All faults of all rows are told.
 */
export function planBookings(
  bookings: readonly ReadBooking[],
  record: BookingsOnRecord,
  defaults: BookingDefaults,
): PlannedBooking[] {
  const plan = new Plan(record, defaults);
  return bookings.map((booking, index) => plan.add(booking, index));
}

class Plan {
  private readonly clients: PlannedClient[];
  private readonly starts: PlannedStart[];
  private readonly placesByHash = new Map<string, string>();

  constructor(
    private readonly record: BookingsOnRecord,
    private readonly defaults: BookingDefaults,
  ) {
    this.clients = record.clients.map(({ id, ...client }) => ({ ...client, meant: { id }, place: null }));
    this.starts = record.sessions
      .filter(({ state }) => state === 'planned' || state === 'in setup')
      .map(({ clientId, artistId, procedureId, plannedStart }) => ({
        client: clientId,
        artistId,
        procedureId,
        start: Date.parse(plannedStart),
        place: null,
      }));
  }

  add(read: ReadBooking, index: number): PlannedBooking {
    const planned: PlannedBooking = {
      read,
      faults: [...read.faults],
      warnings: [...read.warnings],
      effect: null,
      client: null,
      clientReference: null,
      makesClient: false,
      artistId: null,
      procedureId: null,
      sessionId: null,
    };
    // A row whose cells stand under no columns says nothing that could be judged.
    if (read.faults.some(({ column }) => column === null)) return planned;
    if (read.leftOut !== null) return leaveOut(planned, read.leftOut);
    const earlier = this.earlierByHash(planned);
    if (earlier !== undefined) return earlier;
    if (read.cancelled) return leaveOut(planned, 'It is cancelled in the calendar.');
    planned.artistId = this.named(planned, 'artist', this.record.people, this.defaults.artistId);
    planned.procedureId = this.named(planned, 'procedure', this.record.procedures, this.defaults.procedureId);
    const client = this.clientOf(planned, index);
    if (client === null || planned.faults.length > 0) return planned;
    planned.client = client.meant;
    planned.clientReference = client.reference;
    const key = keyOf(client.meant);
    const { plannedStart } = read.row;
    const { artistId, procedureId } = planned;
    if (plannedStart === null || artistId === null || procedureId === null) return planned;
    const start = Date.parse(plannedStart);
    const recorded = this.record.sessions.find(
      (session) =>
        session.clientId === key &&
        session.procedureId === procedureId &&
        Date.parse(session.plannedStart) === start,
    );
    if (recorded !== undefined) return onRecord(planned, recorded);
    const twin = this.starts.find(
      (each) =>
        each.place !== null &&
        each.client === key &&
        each.procedureId === procedureId &&
        each.start === start,
    );
    if (twin !== undefined) {
      tell(planned, null, `says the same as ${twin.place}: this client, procedure and start; take one out`);
      return planned;
    }
    planned.effect = 'new session';
    planned.makesClient = 'madeBy' in client.meant && client.meant.madeBy === index;
    this.warnOfCloseStarts(planned, { client: key, artistId, start });
    this.starts.push({ client: key, artistId, procedureId, start, place: read.place });
    return planned;
  }

  /** What became of a booking of the same id, on record or above; undefined for one that is new. */
  private earlierByHash(planned: PlannedBooking): PlannedBooking | undefined {
    const { bookingHash, place, row, cancelled } = planned.read;
    if (bookingHash === null) return undefined;
    const above = this.placesByHash.get(bookingHash);
    this.placesByHash.set(bookingHash, place);
    if (above !== undefined) {
      tell(planned, 'booking id', `is the same as in ${above}; take one of the two out`);
      return planned;
    }
    const session = this.record.sessions.find((each) => each.bookingHash === bookingHash);
    if (session === undefined) return undefined;
    if (cancelled && session.state === 'planned') {
      planned.warnings.push('It is cancelled in the calendar but planned here. Cancel the session if it is.');
    } else if (
      row.plannedStart !== null &&
      row.plannedStart !== session.plannedStart &&
      session.state === 'planned'
    ) {
      planned.warnings.push(
        'It has another start here than in the file. Change the session if the file is right.',
      );
    }
    return onRecord(planned, session);
  }

  private named(
    planned: PlannedBooking,
    column: 'artist' | 'procedure',
    known: readonly { id: string; name: string }[],
    instead: string | null,
  ): string | null {
    const text = planned.read.row[column];
    const shown = known.slice(0, 20).map(({ name }) => name);
    const list = `${shown.join(', ')}${known.length > shown.length ? ', …' : ''}`;
    const allowed = shown.length > 0 ? `there are: ${list}` : 'there are none yet';
    if (text === null) {
      if (instead !== null) return instead;
      const [only, ...others] = known;
      if (only !== undefined && others.length === 0) return only.id;
      tell(planned, column, `is empty; write it, or choose one for all; ${allowed}`);
      return null;
    }
    const found = known.filter(({ name }) => foldedName(name) === foldedName(text));
    if (found.length === 1 && found[0]) return found[0].id;
    const seen = found.length === 0 ? 'is not known' : 'is the name of several';
    tell(planned, column, `"${text.slice(0, 40)}" ${seen}; ${allowed}`);
    return null;
  }

  private clientOf(planned: PlannedBooking, index: number): PlannedClient | null {
    const { row, nameHash, contactHash, place } = planned.read;
    if (row.clientReference !== null) {
      const client = this.clients.find(({ reference }) => reference === row.clientReference);
      if (client === undefined) {
        tell(
          planned,
          'client reference',
          `${row.clientReference} is nobody's here; compare it, or write name and contact`,
        );
        return null;
      }
      if (client.erased) {
        tell(
          planned,
          'client reference',
          `${row.clientReference} was erased; write name and contact, as of somebody new`,
        );
        return null;
      }
      if (nameHash !== null && nameHash !== client.nameHash) {
        planned.warnings.push(
          'The name is not the one on record, which is kept. Compare the client reference.',
        );
      }
      return client;
    }
    if (nameHash === null) return null;
    const called = this.clients.filter((client) => !client.erased && client.nameHash === nameHash);
    const reached = contactHash === null ? [] : called.filter((client) => client.contactHash === contactHash);
    if (reached[0] !== undefined) return reached[0];
    if (contactHash === null && called.length > 0) {
      const [only, ...others] = called;
      if (only === undefined || others.length > 0) {
        tell(
          planned,
          'client name',
          'is the name of several clients; write the client reference or the contact',
        );
        return null;
      }
      if (only.place === null)
        planned.warnings.push('The client was found by name alone. Compare who is meant.');
      return only;
    }
    const [namesake] = called;
    if (namesake !== undefined) {
      const who = namesake.reference ?? `the client of ${namesake.place}`;
      planned.warnings.push(
        `There is a client of this name with another contact, ${who}. If it is the same person, write that reference or contact.`,
      );
    }
    const made: PlannedClient = {
      meant: { madeBy: index },
      reference: null,
      nameHash,
      contactHash,
      erased: false,
      place,
    };
    this.clients.push(made);
    return made;
  }

  private warnOfCloseStarts(
    { warnings }: PlannedBooking,
    booking: { client: string; artistId: string; start: number },
  ): void {
    const close = this.starts.filter(
      ({ start }) => Math.abs(start - booking.start) < closeStartsMinutes * 60_000,
    );
    const told = ({ place, start }: PlannedStart, whose: string) => {
      const minutes = Math.round(Math.abs(start - booking.start) / 60_000);
      const when =
        minutes === 0
          ? 'at the same time'
          : `${minutes} minutes ${start < booking.start ? 'before' : 'after'}`;
      return `${whose} has another session ${when}${place === null ? '' : ` (${place})`}.`;
    };
    const ofArtist = close.find(({ artistId }) => artistId === booking.artistId);
    if (ofArtist !== undefined) warnings.push(told(ofArtist, 'The artist'));
    const ofClient = close.find(({ client }) => client === booking.client);
    if (ofClient !== undefined) warnings.push(told(ofClient, 'The client'));
  }
}

function leaveOut(planned: PlannedBooking, why: string): PlannedBooking {
  return { ...planned, faults: [], warnings: [why], effect: 'left out' };
}

function onRecord(planned: PlannedBooking, { id, clientId }: KnownBooking): PlannedBooking {
  return { ...planned, faults: [], effect: 'on record already', sessionId: id, client: { id: clientId } };
}

function tell(planned: PlannedBooking, column: BookingColumn | null, message: string): void {
  // The first fault of a cell says enough.
  if (column !== null && planned.faults.some((fault) => fault.column === column)) return;
  planned.faults.push({ column, message });
}

function keyOf(meant: MeantClient): string {
  return 'id' in meant ? meant.id : `made by ${meant.madeBy}`;
}
