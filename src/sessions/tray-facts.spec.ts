import { describe, expect, it } from 'vitest';
import { type TakenScan, trayFacts } from './tray-facts.js';
import type { TrayThing } from './tray-thing.js';

function box(containerId: string, given: Partial<TrayThing> = {}): TrayThing {
  return {
    containerId,
    lotId: 'lot-1',
    productId: 'liner',
    label: 'Corvin 1207RL',
    labelCode: 'A00000000000',
    lotCode: 'C7',
    stockForm: 'pieces',
    isPigment: false,
    state: 'sealed',
    receivedAt: '2026-01-05T08:00:00.000Z',
    ownerId: null,
    pieces: 10,
    reservedPieces: 0,
    holds: [],
    useByLastDay: '2027-12-31',
    openedAt: null,
    openedLife: null,
    assumedOpenedLife: null,
    usableThrough: null,
    ...given,
  };
}

function taken(given: Partial<TakenScan> = {}): TakenScan {
  const thing = box('box-1');
  return {
    thing,
    things: [thing],
    lines: [],
    containerNamed: true,
    session: {
      id: 'here',
      artistId: 'mira',
      visitKind: 'refresh',
      touchUpDays: { fromDays: 30, toDays: 40 },
    },
    symbolUseBy: null,
    symbolIsOwnLabel: false,
    serial: null,
    serialKnown: false,
    another: false,
    onKitList: 'yes',
    day: '2026-03-10',
    ...given,
  };
}

describe('the facts of an admission', () => {
  it('compare a thing with the other containers of its product only', () => {
    const thing = box('box-1');
    const things = [thing, box('box-2'), box('box-3', { productId: 'magnum' })];
    expect(trayFacts(taken({ thing, things })).others.map((other) => other.containerId)).toEqual(['box-2']);
  });

  describe('count the lines on this tray', () => {
    const lines = [
      { sessionId: 'here', containerId: 'box-1', lotId: 'lot-1' },
      { sessionId: 'here', containerId: 'box-2', lotId: 'lot-1' },
      { sessionId: 'elsewhere', containerId: 'box-1', lotId: 'lot-1' },
      { sessionId: 'here', containerId: 'box-1', lotId: 'lot-1' },
      { sessionId: 'here', containerId: 'box-3', lotId: 'lot-2' },
    ];

    it('of this container when it was named itself', () => {
      expect(trayFacts(taken({ lines })).linesOnTray).toBe(2);
    });

    it('of the whole lot when a symbol names pieces, for it is the same on each of its boxes', () => {
      expect(trayFacts(taken({ lines, containerNamed: false })).linesOnTray).toBe(3);
    });

    it('of this container when it is a bottle, of which another one is another line', () => {
      const thing = box('box-1', { stockForm: 'container' });
      expect(trayFacts(taken({ thing, lines, containerNamed: false })).linesOnTray).toBe(2);
    });
  });

  it('hold a known serial against a piece, but not against a bottle that is used many times', () => {
    const known = { serial: 'S1', serialKnown: true };
    expect(trayFacts(taken(known))).toMatchObject({ serialTaken: true, hasSerial: true });
    const bottle = box('bottle-1', { stockForm: 'container' });
    expect(trayFacts(taken({ ...known, thing: bottle }))).toMatchObject({ serialTaken: false });
    expect(trayFacts(taken())).toMatchObject({ serialTaken: false, hasSerial: false });
  });

  it('name the last day of the touch-up window after a visit that will have one', () => {
    const session = { ...taken().session, visitKind: 'first session' as const };
    expect(trayFacts(taken({ session })).touchUpBy).toBe('2026-04-19');
    expect(trayFacts(taken()).touchUpBy).toBeNull();
  });
});
