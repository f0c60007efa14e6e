import { describe, expect, it } from 'vitest';
import { pastRefusals } from './past-refusals.js';
import type { HoldFact, RecordedContainer } from './tray-thing.js';

const timeZone = 'Europe/Vienna';
const recall: HoldFact = { kind: 'recall', reason: 'recall notice', on: 'lot' };

function bottle(given: Partial<RecordedContainer> = {}): RecordedContainer {
  return {
    containerId: 'bottle-1',
    lotId: 'lot-1',
    productId: 'umber',
    form: 'bottle',
    labelCode: 'A00000000000',
    state: 'opened',
    ownerId: null,
    openedAt: '2026-01-10T09:00:00.000Z',
    receivedAt: '2026-01-05T08:00:00.000Z',
    pieces: 1,
    code: 'U12',
    useBy: '2026-06-30',
    kind: 'pigment',
    makerName: 'Halden',
    productName: 'Umber',
    shade: null,
    stockForm: 'container',
    openedLife: null,
    usableThrough: null,
    holds: [],
    ...given,
  };
}

const at = (day: string, container = bottle(), holds: HoldFact[] = []) =>
  pastRefusals(container, holds, 'P3M', `${day}T12:00:00.000Z`, timeZone);

describe('what stood against a use told afterwards', () => {
  it('is judged by the dates of that day', () => {
    expect(at('2026-04-10')).toEqual([]);
    expect(at('2026-04-11')).toEqual(['open too long']);
    expect(at('2026-07-01', bottle({ openedAt: null }))).toEqual(['expired']);
  });

  it('is judged by the holds of that instant, not by those of today', () => {
    expect(at('2026-02-01', bottle({ holds: [recall] }))).toEqual([]);
    expect(at('2026-02-01', bottle(), [recall])).toEqual(['recalled']);
  });

  it('is not what became of the bottle since', () => {
    for (const state of ['practice only', 'finished', 'discarded'] as const) {
      expect(at('2026-02-01', bottle({ state }))).toEqual([]);
    }
  });
});
