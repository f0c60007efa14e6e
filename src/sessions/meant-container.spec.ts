import { describe, expect, it } from 'vitest';
import { meantContainer } from './meant-container.js';
import type { TrayThing } from './tray-thing.js';

const timeZone = 'Europe/Vienna';
const at = '2026-03-10T10:00:00.000Z';

function bottle(containerId: string, given: Partial<TrayThing> = {}): TrayThing {
  return {
    containerId,
    lotId: 'lot-1',
    productId: 'umber',
    label: 'Halden Umber',
    labelCode: 'A00000000000',
    lotCode: 'U12',
    stockForm: 'container',
    isPigment: true,
    state: 'sealed',
    receivedAt: '2026-01-05T08:00:00.000Z',
    ownerId: null,
    pieces: 1,
    reservedPieces: 0,
    holds: [],
    useByLastDay: '2027-12-31',
    openedAt: null,
    openedLife: 'P12M',
    assumedOpenedLife: null,
    ...given,
  };
}
const opened = { state: 'opened', openedAt: '2026-03-01T09:00:00.000Z' } as const;

describe("what a maker's symbol means", () => {
  it('means the opened bottle of the lot', () => {
    const things = [bottle('sealed', { useByLastDay: '2026-04-01' }), bottle('open', opened)];
    expect(meantContainer(things, at, timeZone)).toMatchObject({
      kind: 'this',
      thing: { containerId: 'open' },
    });
  });

  it('means the first-expiring sealed bottle when none is open', () => {
    const things = [bottle('late'), bottle('soon', { useByLastDay: '2026-04-01' })];
    expect(meantContainer(things, at, timeZone)).toMatchObject({ thing: { containerId: 'soon' } });
  });

  it('asks when several are open', () => {
    const meant = meantContainer([bottle('a', opened), bottle('b', opened), bottle('c')], at, timeZone);
    expect(meant).toMatchObject({ kind: 'ask', things: [{ containerId: 'a' }, { containerId: 'b' }] });
  });

  it('means the box that still has a piece which no tray holds', () => {
    const pieces = { stockForm: 'pieces', pieces: 1 } as const;
    const things = [bottle('taken', { ...pieces, reservedPieces: 1 }), bottle('free', pieces)];
    expect(meantContainer(things, at, timeZone)).toMatchObject({ thing: { containerId: 'free' } });
  });

  it('means one that may not be used when there is no other, so that the refusal can say why', () => {
    const expired = bottle('expired', { useByLastDay: '2026-01-31' });
    const finished = bottle('finished', { state: 'finished', pieces: 0 });
    expect(meantContainer([finished, expired], at, timeZone)).toMatchObject({
      thing: { containerId: 'expired' },
    });
    expect(meantContainer([finished], at, timeZone)).toMatchObject({ thing: { containerId: 'finished' } });
    expect(meantContainer([], at, timeZone)).toEqual({ kind: 'none' });
  });
});
