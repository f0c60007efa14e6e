import { describe, expect, it } from 'vitest';
import { type Meant, meantContainer, type Named, narrowed } from './meant-container.js';
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
    usableThrough: null,
    ...given,
  };
}
const opened = { state: 'opened', openedAt: '2026-03-01T09:00:00.000Z' } as const;

const lot: Named = { productIds: ['umber'], lotIds: ['lot-1'], containerId: null };
const product: Named = { ...lot, lotIds: null };
const meant = (things: TrayThing[], named = lot): Meant => meantContainer(named, things, at, timeZone);

describe('what a scan means', () => {
  it('means the container whose label was scanned, even one that has ended', () => {
    const things = [bottle('open', opened), bottle('ended', { state: 'finished', pieces: 0 })];
    expect(meant(things, { ...lot, containerId: 'ended' })).toMatchObject({
      thing: { containerId: 'ended' },
    });
  });

  it('does not take a container of another lot for an answer', () => {
    const things = [bottle('a', opened), bottle('b', { lotId: 'lot-2' })];
    expect(meant(things, { ...lot, containerId: 'b' })).toEqual({ kind: 'another container' });
  });

  it('means the opened bottle of the lot', () => {
    const things = [bottle('sealed', { useByLastDay: '2026-04-01' }), bottle('open', opened)];
    expect(meant(things)).toMatchObject({ kind: 'this', thing: { containerId: 'open' } });
  });

  it('means the first-expiring sealed bottle when none is open', () => {
    const things = [bottle('late'), bottle('soon', { useByLastDay: '2026-04-01' })];
    expect(meant(things)).toMatchObject({ thing: { containerId: 'soon' } });
  });

  it('looks at no bottle of another lot of the product', () => {
    const things = [bottle('other', { lotId: 'lot-2', useByLastDay: '2026-04-01' }), bottle('this')];
    expect(meant(things)).toMatchObject({ thing: { containerId: 'this' } });
  });

  it('asks when several are open', () => {
    expect(meant([bottle('a', opened), bottle('b', opened), bottle('c')])).toMatchObject({
      kind: 'ask',
      reason: { code: 'which container?' },
      choices: [{ containerId: 'a' }, { containerId: 'b' }],
    });
  });

  it('asks when the open bottle may not be used but a sealed one may: either could be in hand', () => {
    const tooLong = { state: 'opened', openedAt: '2024-03-01T09:00:00.000Z' } as const;
    const held = { ...opened, holds: [{ kind: 'quarantine', reason: 'doubt', on: 'container' }] } as const;
    for (const open of [tooLong, held]) {
      expect(meant([bottle('open', open), bottle('sealed')])).toMatchObject({
        kind: 'ask',
        reason: { code: 'which container?' },
        choices: [{ containerId: 'open' }, { containerId: 'sealed' }],
      });
    }
    expect(meant([bottle('open', tooLong), bottle('gone', { state: 'finished', pieces: 0 })])).toMatchObject({
      thing: { containerId: 'open' },
    });
  });

  it('asks when several are open, also when one of them may not be used', () => {
    const tooLong = { state: 'opened', openedAt: '2024-03-01T09:00:00.000Z' } as const;
    expect(meant([bottle('a', opened), bottle('b', tooLong)])).toMatchObject({
      kind: 'ask',
      choices: [{ containerId: 'a' }, { containerId: 'b' }],
    });
  });

  it('asks for the lot when one code stands on two lots of a product', () => {
    const named = { ...lot, lotIds: ['lot-1', 'lot-2'] };
    const things = [
      bottle('a'),
      bottle('a too'),
      bottle('b', { lotId: 'lot-2', useByLastDay: '2028-12-31' }),
    ];
    expect(meant(things, named)).toMatchObject({
      kind: 'ask',
      reason: { code: 'which lot?' },
      choices: [{ containerId: 'a' }, { containerId: 'b' }],
    });
  });

  it('asks for the lot when only the product is known, and offers none that may not be used', () => {
    const things = [bottle('good'), bottle('expired', { lotId: 'lot-2', useByLastDay: '2026-01-31' })];
    expect(meant(things, product)).toMatchObject({
      kind: 'ask',
      reason: { code: 'which lot?' },
      choices: [{ containerId: 'good' }],
    });
    expect(meant([bottle('expired', { useByLastDay: '2026-01-31' })], product)).toEqual({ kind: 'none' });
  });

  it('asks when a typed code stands on several products', () => {
    const named = { productIds: ['umber', 'rose'], lotIds: ['lot-1', 'lot-2'], containerId: null };
    const things = [bottle('a'), bottle('b', { lotId: 'lot-2', productId: 'rose' })];
    expect(meant(things, named)).toMatchObject({ kind: 'ask', reason: { code: 'which lot?' } });
  });

  it('means the box that still has a piece which no tray holds', () => {
    const pieces = { stockForm: 'pieces', pieces: 1 } as const;
    const things = [bottle('taken', { ...pieces, reservedPieces: 1 }), bottle('free', pieces)];
    expect(meant(things)).toMatchObject({ thing: { containerId: 'free' } });
  });

  it('means one that may not be used when there is no other, so that the refusal can say why', () => {
    const expired = bottle('expired', { useByLastDay: '2026-01-31' });
    const finished = bottle('finished', { state: 'finished', pieces: 0 });
    expect(meant([finished, expired])).toMatchObject({ thing: { containerId: 'expired' } });
    expect(meant([finished])).toMatchObject({ thing: { containerId: 'finished' } });
    expect(meant([])).toEqual({ kind: 'none' });
  });
});

describe('the answer to a question about a symbol', () => {
  it('names the container that is in hand', () => {
    expect(narrowed(lot, { containerId: 'open' })).toEqual({ ...lot, containerId: 'open' });
    expect(narrowed(lot, { containerId: 'open', lotId: 'lot-1' })).toEqual({ ...lot, containerId: 'open' });
    const label = { ...lot, containerId: 'open' };
    expect(narrowed(label, { containerId: 'open', lotId: 'lot-1' })).toEqual(label);
  });

  it('names one lot of a product, or one of the lots that bear the code', () => {
    expect(narrowed(product, { lotId: 'lot-9' })).toEqual({ ...product, lotIds: ['lot-9'] });
    const two = { ...lot, lotIds: ['lot-1', 'lot-2'] };
    expect(narrowed(two, { lotId: 'lot-2' })).toEqual({ ...two, lotIds: ['lot-2'] });
  });

  it('contradicts the symbol when it names another lot, or another container than that of the label', () => {
    expect(narrowed(lot, { lotId: 'lot-9' })).toEqual({ contradicts: 'lotId' });
    const label = { ...lot, containerId: 'open' };
    expect(narrowed(label, { containerId: 'other' })).toEqual({ contradicts: 'containerId' });
    expect(narrowed(label, { lotId: 'lot-9' })).toEqual({ contradicts: 'lotId' });
  });

  it('contradicts when it names another product', () => {
    for (const named of [lot, product, { ...lot, containerId: 'open' }]) {
      expect(narrowed(named, { productId: 'gel' })).toEqual({ contradicts: 'productId' });
      expect(narrowed(named, { productId: 'umber' })).toEqual(named);
    }
  });

  it('names one of the products that bear the code', () => {
    const two = { ...lot, productIds: ['gel', 'umber'] };
    expect(narrowed(two, { productId: 'umber' })).toEqual(lot);
  });

  it('changes nothing when there is none', () => {
    expect(narrowed(product, {})).toEqual(product);
  });
});
