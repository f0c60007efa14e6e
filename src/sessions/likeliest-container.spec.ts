import { describe, expect, it } from 'vitest';
import { type ContainerOfLot, likeliestContainers } from './likeliest-container.js';

const container = (containerId: string, state: ContainerOfLot['state'], lotId = 'lot-1'): ContainerOfLot => ({
  containerId,
  lotId,
  state,
});

describe('the container a late use is booked on', () => {
  it('is the open one, else a sealed one, and only then one that is kept for practice or gone', () => {
    const all = [
      container('discarded', 'discarded'),
      container('finished', 'finished'),
      container('practice', 'practice only'),
      container('sealed', 'sealed'),
      container('opened', 'opened'),
    ];
    while (all.length > 0) {
      const expected = all.at(-1)?.containerId;
      expect(likeliestContainers(all).get('lot-1')).toBe(expected);
      expect(likeliestContainers([...all].reverse()).get('lot-1')).toBe(expected);
      all.pop();
    }
    expect(likeliestContainers([])).toEqual(new Map());
  });

  it('is the first of several that are alike, and is found for each lot by itself', () => {
    const containers = [
      container('a', 'sealed'),
      container('b', 'opened', 'lot-2'),
      container('c', 'sealed'),
      container('d', 'opened', 'lot-2'),
    ];
    expect([...likeliestContainers(containers)]).toEqual([
      ['lot-1', 'a'],
      ['lot-2', 'b'],
    ]);
  });
});
