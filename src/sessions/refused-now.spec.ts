import { describe, expect, it } from 'vitest';
import { refusedNow } from './refused-now.js';
import type { TrayThing } from './tray-thing.js';

const at = '2026-03-10T10:00:00.000Z';
const codes = (given: Partial<TrayThing>) => {
  const bottle: TrayThing = {
    containerId: 'bottle-1',
    lotId: 'lot-1',
    productId: 'umber',
    label: 'Halden Umber',
    labelCode: 'A00000000000',
    lotCode: 'U12',
    stockForm: 'container',
    isPigment: true,
    state: 'opened',
    receivedAt: '2026-01-05T08:00:00.000Z',
    ownerId: null,
    pieces: 1,
    reservedPieces: 0,
    holds: [],
    useByLastDay: '2027-12-31',
    openedAt: '2026-03-01T09:00:00.000Z',
    openedLife: 'P12M',
    assumedOpenedLife: null,
    usableThrough: null,
    ...given,
  };
  return refusedNow(bottle, at, 'Europe/Vienna').map(({ code }) => code);
};

describe('what may not be used any more', () => {
  it('is what was held, recalled or ran out since it was laid out, the worst first', () => {
    expect(codes({})).toEqual([]);
    const holds = (['quarantine', 'recall'] as const).map((kind) => ({
      kind,
      reason: 'doubt',
      on: 'lot' as const,
    }));
    expect(codes({ holds, useByLastDay: '2026-03-09' })).toEqual(['recalled', 'on hold', 'expired']);
  });

  it('is what is gone', () => {
    expect(codes({ state: 'finished', pieces: 0 })).toEqual(['none left']);
    expect(codes({ state: 'discarded', pieces: 0 })).toEqual(['none left']);
  });
});
