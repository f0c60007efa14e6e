import { describe, expect, it } from 'vitest';
import {
  type BookingDefaults,
  type BookingsOnRecord,
  type KnownBooking,
  planBookings,
  type ReadBooking,
} from './booking-plan.js';

const ida = { id: 'ida', reference: '7KQ2-M4', nameHash: 'Ida', contactHash: '+43', erased: false };
const record: BookingsOnRecord = {
  procedures: [
    { id: 'brows', name: 'Powdered brows' },
    { id: 'lips', name: 'Lip blush' },
  ],
  people: [
    { id: 'mara', name: 'Mara Lindqvist' },
    { id: 'jo', name: 'Jo Berg' },
  ],
  clients: [ida],
  sessions: [],
};
const at = (time: string) => `2026-12-03T${time}:00.000Z`;
let places = 1;
const booking = (
  more: Partial<Omit<ReadBooking, 'row'>> & { row?: Partial<ReadBooking['row']> } = {},
): ReadBooking => ({
  place: `row ${++places}`,
  faults: [],
  warnings: [],
  nameHash: 'Ida',
  contactHash: '+43',
  bookingHash: null,
  cancelled: false,
  leftOut: null,
  ...more,
  row: {
    clientReference: null,
    clientName: 'Ida',
    contact: null,
    artist: 'mara lindqvist',
    procedure: 'Powdered Brows',
    visitKind: 'first session',
    plannedStart: at('13:30'),
    bookedAt: null,
    ...more.row,
  },
});
const session = (more: Partial<KnownBooking> = {}): KnownBooking => ({
  id: 'known',
  clientId: 'somebody',
  artistId: 'mara',
  procedureId: 'brows',
  plannedStart: at('13:00'),
  state: 'planned',
  bookingHash: null,
  ...more,
});
const nobody: BookingDefaults = { artistId: null, procedureId: null };
const plan = (bookings: ReadBooking[], more: Partial<BookingsOnRecord> = {}, defaults = nobody) =>
  planBookings(bookings, { ...record, ...more }, defaults);
const faultsOf = (bookings: ReadBooking[], more: Partial<BookingsOnRecord> = {}) =>
  plan(bookings, more).map(({ faults }) => faults.map(({ column, message }) => `${column} ${message}`));
const jo = { nameHash: 'Jo', contactHash: null };

describe('a plan of bookings', () => {
  it('finds artist, procedure and client by what the list calls them', () => {
    expect(plan([booking()])[0]).toMatchObject({
      faults: [],
      warnings: [],
      effect: 'new session',
      client: { id: 'ida' },
      clientReference: '7KQ2-M4',
      makesClient: false,
      artistId: 'mara',
      procedureId: 'brows',
    });
  });

  it('takes what was chosen for all, or the only one there is, where a cell is empty', () => {
    const empty = booking({ row: { artist: null, procedure: null } });
    expect(plan([empty], {}, { artistId: 'jo', procedureId: 'lips' })[0]).toMatchObject({
      artistId: 'jo',
      procedureId: 'lips',
    });
    expect(
      plan([empty], { people: record.people.slice(0, 1), procedures: record.procedures.slice(0, 1) })[0],
    ).toMatchObject({
      artistId: 'mara',
      procedureId: 'brows',
    });
    expect(faultsOf([empty])[0]).toEqual([
      'artist is empty; write it, or choose one for all; there are: Mara Lindqvist, Jo Berg',
      'procedure is empty; write it, or choose one for all; there are: Powdered brows, Lip blush',
    ]);
    expect(faultsOf([booking({ row: { artist: 'Nobody', procedure: 'Nothing' } })])[0]).toHaveLength(2);
  });

  it('puts a client who is not known on record once, however many bookings they have', () => {
    const [first, second] = plan([booking(jo), booking({ ...jo, row: { plannedStart: at('18:00') } })]);
    expect(first).toMatchObject({ makesClient: true, client: { madeBy: 0 } });
    expect(second).toMatchObject({ makesClient: false, client: { madeBy: 0 }, warnings: [] });
  });

  it('finds a client by name alone with a warning, and asks when several have it', () => {
    const byName = booking({ contactHash: null });
    expect(plan([byName])[0]).toMatchObject({
      client: { id: 'ida' },
      warnings: [expect.stringContaining('by name alone')],
    });
    const other = { ...ida, id: 'other', reference: 'AAAA-AA', contactHash: '+49' };
    expect(faultsOf([byName], { clients: [ida, other] })[0]?.[0]).toContain('several clients');
  });

  it('makes a namesake with another contact a client of their own, and says so', () => {
    const [row] = plan([booking({ contactHash: '+49' })]);
    expect(row).toMatchObject({ makesClient: true, warnings: [expect.stringContaining('7KQ2-M4')] });
  });

  it('takes a reference at its word, but for one of nobody or of somebody erased', () => {
    const referred = booking({
      nameHash: null,
      contactHash: null,
      row: { clientReference: '7KQ2-M4', clientName: null },
    });
    expect(plan([referred])[0]).toMatchObject({ client: { id: 'ida' }, warnings: [] });
    expect(plan([{ ...referred, nameHash: 'Eva' }])[0]?.warnings[0]).toContain('not the one on record');
    expect(faultsOf([referred], { clients: [] })[0]?.[0]).toContain("nobody's here");
    expect(faultsOf([referred], { clients: [{ ...ida, nameHash: null, erased: true }] })[0]?.[0]).toContain(
      'erased',
    );
  });

  it('takes nothing in a second time, known by its id or by client, procedure and start', () => {
    const same = session({ clientId: 'ida', plannedStart: at('13:30') });
    expect(plan([booking()], { sessions: [same] })[0]).toMatchObject({
      effect: 'on record already',
      sessionId: 'known',
    });
    const moved = session({ bookingHash: 'B-1', plannedStart: at('19:00') });
    expect(plan([booking({ bookingHash: 'B-1' })], { sessions: [moved] })[0]).toMatchObject({
      effect: 'on record already',
      warnings: [expect.stringContaining('another start')],
    });
    // What was cancelled here since is not brought back.
    const cancelled = session({ bookingHash: 'B-1', state: 'cancelled' });
    expect(plan([booking({ bookingHash: 'B-1' })], { sessions: [cancelled] })[0]).toMatchObject({
      effect: 'on record already',
      warnings: [],
    });
  });

  it('refuses the same booking twice in one list', () => {
    expect(faultsOf([booking(), booking()])[1]?.[0]).toMatch(/says the same as row \d+/);
    const twice = [
      booking({ bookingHash: 'B-1' }),
      booking({ bookingHash: 'B-1', row: { plannedStart: at('18:00') } }),
    ];
    expect(faultsOf(twice)[1]?.[0]).toMatch(/booking id is the same as in row \d+/);
  });

  it('leaves out what is cancelled, unless it is planned here, which is said', () => {
    const cancelled = booking({ bookingHash: 'B-1', cancelled: true });
    expect(plan([cancelled])[0]).toMatchObject({ effect: 'left out' });
    expect(plan([cancelled], { sessions: [session({ bookingHash: 'B-1' })] })[0]).toMatchObject({
      effect: 'on record already',
      warnings: [expect.stringContaining('cancelled in the calendar')],
    });
    const noBooking = booking({
      leftOut: 'It is lunch.',
      faults: [{ column: 'visit', message: 'is empty' }],
    });
    expect(plan([noBooking])[0]).toMatchObject({
      effect: 'left out',
      faults: [],
      warnings: ['It is lunch.'],
    });
  });

  it('warns of sessions that start close to each other, on record or in the list', () => {
    expect(plan([booking()], { sessions: [session()] })[0]).toMatchObject({
      effect: 'new session',
      warnings: ['The artist has another session 30 minutes before.'],
    });
    const [, second] = plan([booking(), booking({ row: { artist: 'Jo Berg', procedure: 'Lip blush' } })]);
    expect(second?.warnings[0]).toMatch(/^The client has another session at the same time \(row \d+\)\.$/);
    expect(plan([booking()], { sessions: [session({ plannedStart: at('12:30') })] })[0]?.warnings).toEqual(
      [],
    );
    expect(plan([booking()], { sessions: [session({ state: 'cancelled' })] })[0]?.warnings).toEqual([]);
  });
});
