import { describe, expect, it } from 'vitest';
import { judgeScan, type ScanFacts, type ScanOutcome, wantsStandIns } from './scan-judgement.js';
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

function judge(given: Partial<ScanFacts>): ScanOutcome {
  const judgement = judgeScan(
    {
      session: {
        id: 'here',
        artistId: 'mira',
        visitKind: 'refresh',
        touchUpFromDays: 30,
        touchUpToDays: 40,
        kitItems: null,
      },
      named: { productIds: ['liner'], lotIds: ['lot-1'], containerId: null },
      things: [box('box-1')],
      lines: [],
      reading: null,
      pieceSerial: null,
      productsWithSerial: [],
      another: false,
      poolKeysOf: () => [],
      standIns: [],
      productLabel: 'Corvin 1207RL',
      ...given,
    },
    '2026-03-10T09:00:00Z',
    'Europe/Vienna',
  );
  if (judgement.kind !== 'judged') throw new Error('It was not judged.');
  return judgement.outcome;
}

const codes = ({ reasons }: ScanOutcome) => reasons.map(({ code }) => code);

describe('judging a scan', () => {
  it('admits what may be used', () => {
    const outcome = judge({});
    expect(outcome).toMatchObject({
      verdict: 'admitted',
      thing: { containerId: 'box-1' },
      unmetProductId: null,
    });
    expect(wantsStandIns(outcome)).toBe(false);
  });

  it('asks which lot when only the product is named', () => {
    const things = [box('box-1'), box('box-2', { lotId: 'lot-2' })];
    const outcome = judge({ named: { productIds: ['liner'], lotIds: null, containerId: null }, things });
    expect([outcome.verdict, codes(outcome), outcome.choices.length]).toEqual([
      'question',
      ['which lot?'],
      2,
    ]);
  });

  it('counts as wanted what is not here at all, unless something stands for it', () => {
    const none = judge({ things: [] });
    expect(none).toMatchObject({ verdict: 'refused', thing: null, unmetProductId: 'liner' });
    expect(wantsStandIns(none)).toBe(true);
    const standIn = box('other', { productId: 'round', label: 'Halden 7 round' });
    const instead = judge({ things: [], standIns: [standIn] });
    expect(instead).toMatchObject({ instead: { containerId: 'other' }, unmetProductId: null });
    expect(instead.reasons[0]?.message).toContain('Halden 7 round');
  });

  it('names what stands for a product of which none may be used', () => {
    const expired = box('box-1', { useByLastDay: '2026-01-31' });
    const alone = judge({ things: [expired] });
    expect([alone.verdict, codes(alone), alone.instead]).toEqual(['refused', ['expired'], null]);
    expect(wantsStandIns(alone)).toBe(true);
    const standIn = box('other', { productId: 'round', label: 'Halden 7 round' });
    expect(judge({ things: [expired], standIns: [standIn] })).toMatchObject({
      verdict: 'refused',
      instead: { containerId: 'other' },
    });
    const unusable = { ...standIn, useByLastDay: '2026-01-31' };
    expect(judge({ things: [expired], standIns: [unusable] }).instead).toBeNull();
  });

  it('does not look for another one when this very piece was used', () => {
    const outcome = judge({ pieceSerial: 'S1', productsWithSerial: ['liner'] });
    expect(codes(outcome)).toEqual(['already used']);
    expect(wantsStandIns(outcome)).toBe(false);
    expect(judge({ pieceSerial: 'S1', productsWithSerial: ['round'] }).verdict).toBe('admitted');
  });

  it('counts as wanted what is gone by the book', () => {
    const outcome = judge({ things: [box('box-1', { pieces: 0 })] });
    expect([outcome.verdict, codes(outcome), outcome.unmetProductId]).toEqual([
      'refused',
      ['none left'],
      'liner',
    ]);
  });

  it('asks before a second piece of the same symbol on the same tray only', () => {
    const line = { containerId: 'box-1', lotId: 'lot-1' };
    expect(codes(judge({ lines: [{ ...line, sessionId: 'here' }] }))).toEqual(['another one?']);
    expect(judge({ lines: [{ ...line, sessionId: 'here' }], another: true }).verdict).toBe('admitted');
    expect(judge({ lines: [{ ...line, sessionId: 'elsewhere' }] }).verdict).toBe('admitted');
  });

  it('goes by the kit list, by product or by configuration', () => {
    const session = {
      id: 'here',
      artistId: 'mira',
      visitKind: 'refresh' as const,
      touchUpFromDays: 30,
      touchUpToDays: 40,
      kitItems: [{ productId: null, configuration: '7 round' }],
    };
    expect(codes(judge({ session }))).toEqual(['not on the kit list']);
    expect(judge({ session, poolKeysOf: () => ['7 round'] }).verdict).toBe('admitted');
  });

  it('tells a container that is none of those named', () => {
    const facts = { named: { productIds: ['liner'], lotIds: ['lot-1'], containerId: 'box-9' } };
    expect(() => judge(facts)).toThrow('not judged');
  });
});
