import { describe, expect, it } from 'vitest';
import { type GoodsFromElsewhere, lotsHeldElsewhere } from './news-of-goods.js';

const recall = { kind: 'recall', reason: 'recall notice', on: 'lot' } as const;
const doubt = { kind: 'quarantine', reason: 'doubt', on: 'container' } as const;
const free = { lotIds: new Set<string>(), containerIds: new Set<string>() };

function goods(heldThere: GoodsFromElsewhere['heldThere'], given: Partial<GoodsFromElsewhere> = {}) {
  return { lotId: 'lot', containerId: 'bottle', heldThere, ...given };
}

describe('a hold where goods came from', () => {
  it('is told of the lot here, urgently for a recall, each kind and reason once', () => {
    expect(
      lotsHeldElsewhere([goods([recall, doubt]), goods([recall], { containerId: 'other' })], free),
    ).toEqual([
      {
        lotId: 'lot',
        severity: 'urgent',
        holdKinds: ['recall', 'quarantine'],
        reasons: ['doubt', 'recall notice'],
      },
    ]);
    expect(lotsHeldElsewhere([goods([doubt])], free)).toMatchObject([{ severity: 'warning' }]);
    expect(lotsHeldElsewhere([goods([])], free)).toEqual([]);
  });

  it('is answered by a hold on the lot here', () => {
    expect(lotsHeldElsewhere([goods([recall, doubt])], { ...free, lotIds: new Set(['lot']) })).toEqual([]);
  });

  it('is answered on a single container by a hold on what came of it, but not on a whole lot', () => {
    const held = { ...free, containerIds: new Set(['bottle']) };
    expect(lotsHeldElsewhere([goods([doubt])], held)).toEqual([]);
    expect(lotsHeldElsewhere([goods([recall])], held)).toHaveLength(1);
  });
});
