import { describe, expect, it } from 'vitest';
import { type RecordedSession, type RecordOfDemand, recordDemand, sessionsLeftOut } from './record-demand.js';

const session = (id: string, facts: Partial<RecordedSession>): RecordedSession => ({
  id,
  procedureId: 'brows',
  visitKind: 'first session',
  artistId: 'ana',
  state: 'completed',
  bookedOn: -20,
  plannedOn: -3,
  completedOn: -3,
  calledOffOn: null,
  followsSessionId: null,
  ...facts,
});
const record = (facts: Partial<RecordOfDemand>): RecordOfDemand => ({
  weekday: 1,
  days: 100,
  sessions: [],
  uses: [],
  refusals: [],
  kitLists: [],
  courses: [],
  owed: [],
  touchUpDays: new Map(),
  lastDays: new Map(),
  returnPerMille: null,
  ...facts,
});
const names = {
  ofProduct: new Map([
    ['umber', { name: 'product umber', unit: 'microlitres' as const }],
    ['needle a', { name: 'configuration 3 points', unit: 'pieces' as const }],
    ['needle b', { name: 'configuration 3 points', unit: 'pieces' as const }],
  ]),
  ofConfiguration: new Map([['3 points', 'configuration 3 points']]),
};

describe('what the record says of demand', () => {
  it('adds up what a session took of an item, whichever product it was, and keeps an unknown amount unknown', () => {
    const facts = recordDemand(
      record({
        sessions: [session('s', {})],
        uses: [
          { sessionId: 's', productId: 'needle a', pieces: 1, microlitres: 0 },
          { sessionId: 's', productId: 'needle b', pieces: 2, microlitres: 0 },
          { sessionId: 's', productId: 'umber', pieces: 0, microlitres: 0 },
          { sessionId: 's', productId: 'of another chain', pieces: 1, microlitres: 0 },
        ],
        refusals: [{ sessionId: 's', productId: 'umber', day: -3 }],
      }),
      names,
    );
    expect(facts.sessions).toMatchObject([
      {
        day: -3,
        bookedOn: -20,
        uses: [
          { item: 'configuration 3 points', amount: 3 },
          { item: 'product umber', amount: null },
        ],
      },
    ]);
    expect(facts.recordedFrom).toBe(-3);
  });

  it('takes what was refused since none was left for needed', () => {
    const facts = recordDemand(
      record({ sessions: [session('s', {})], refusals: [{ sessionId: 's', productId: 'umber', day: -3 }] }),
      names,
    );
    expect(facts.sessions[0]?.uses).toEqual([{ item: 'product umber', amount: null, refused: true }]);
  });

  it('counts what was refused to sessions that were never completed, once a session and item, on its day', () => {
    const open = { completedOn: null };
    const facts = recordDemand(
      record({
        sessions: [
          session('cancelled', { ...open, state: 'cancelled', plannedOn: null, calledOffOn: -2 }),
          session('nobody came', { ...open, state: 'not attended', plannedOn: -4 }),
          session('forgotten', { ...open, state: 'planned', plannedOn: -1 }),
          session('on a tray', { ...open, state: 'in setup', plannedOn: -1 }),
          session('to come', { ...open, state: 'planned', plannedOn: 2 }),
          session('completed later', { completedOn: -1 }),
        ],
        uses: [{ sessionId: 'completed later', productId: 'umber', pieces: 0, microlitres: 200 }],
        refusals: [
          { sessionId: 'cancelled', productId: 'needle b', day: -2 },
          { sessionId: 'cancelled', productId: 'needle a', day: -3 },
          { sessionId: 'cancelled', productId: 'of another chain', day: -3 },
          { sessionId: 'nobody came', productId: 'umber', day: -4 },
          { sessionId: 'forgotten', productId: 'umber', day: 0 },
          { sessionId: 'on a tray', productId: 'umber', day: -1 },
          { sessionId: 'to come', productId: 'umber', day: -1 },
          { sessionId: 'completed later', productId: 'umber', day: -2 },
          { sessionId: 'long ago', productId: 'umber', day: -2 },
        ],
      }),
      names,
    );
    const wants = facts.unmetWants.map(({ sessionId, item, day }) => [sessionId, item, day]);
    expect(wants).toEqual([
      ['cancelled', 'configuration 3 points', -3],
      ['nobody came', 'product umber', -4],
    ]);
    expect(facts.sessions.flatMap(({ uses }) => uses)).toEqual([{ item: 'product umber', amount: 200 }]);
  });

  it('tells bookings from what lapsed, and leaves out what nobody marked', () => {
    const facts = recordDemand(
      record({
        sessions: [
          session('planned', { state: 'planned', plannedOn: 5, completedOn: null }),
          session('on a tray', { state: 'in setup', plannedOn: -1, completedOn: null }),
          session('forgotten', { state: 'planned', plannedOn: -1, completedOn: null }),
          session('cancelled', { state: 'cancelled', plannedOn: 4, completedOn: null, calledOffOn: -2 }),
          session('nobody came', { state: 'not attended', plannedOn: -4, completedOn: null }),
          session('today', { completedOn: 0 }),
        ],
        owed: ['today', 'planned'].map((sessionId) => ({ sessionId, followedOn: null })),
      }),
      names,
    );
    expect(facts.bookings.map(({ day }) => day)).toEqual([5, 0]);
    expect(facts.lapsedBookings).toEqual([
      { visitKind: 'first session', day: 4, bookedOn: -20, calledOffOn: -2 },
      { visitKind: 'first session', day: -4, bookedOn: -20, calledOffOn: -4 },
    ]);
    expect(facts.sessions).toEqual([]);
    expect(facts.owedTouchUps).toEqual([]);
  });

  it('owes a touch-up still when the visit that was to follow is over and nobody marked it', () => {
    const owed = [
      { sessionId: 'a', followedOn: null },
      { sessionId: 'b', followedOn: -1 },
      { sessionId: 'c', followedOn: 0 },
    ];
    const sessions = owed.map(({ sessionId }) => session(sessionId, {}));
    expect(recordDemand(record({ sessions, owed }), names).owedTouchUps).toEqual([
      { sessionId: 'a' },
      { sessionId: 'b' },
    ]);
  });

  it('counts planned sessions that are no part of the demand: without a day, or past and never closed', () => {
    const open = { state: 'planned' as const, completedOn: null };
    expect(
      sessionsLeftOut([
        session('done', {}),
        session('no day', { ...open, plannedOn: null }),
        session('forgotten', { ...open, plannedOn: -1 }),
        session('forgotten too', { ...open, plannedOn: -9 }),
        session('today', { ...open, plannedOn: 0 }),
        session('on a tray', { state: 'in setup', plannedOn: -1, completedOn: null }),
      ]),
    ).toEqual([
      { code: 'planned without a day', sessions: 1 },
      { code: 'past and never closed', sessions: 2 },
    ]);
    expect(sessionsLeftOut([session('done', {})])).toEqual([]);
  });

  it('reads kit lists by item', () => {
    const items = [
      { productId: null, configuration: '3 points', quantity: 2 },
      { productId: 'needle b', configuration: null, quantity: 1 },
      { productId: 'gone', configuration: null, quantity: 9 },
    ];
    const facts = recordDemand(
      record({ kitLists: [{ procedureId: 'brows', artistId: null, items }] }),
      names,
    );
    expect(facts.kitLists[0]?.items).toEqual([{ item: 'configuration 3 points', quantity: 3 }]);
  });
});
