import { describe, expect, it } from 'vitest';
import { followedOrder } from './followed-order.js';

const own = { packs: 2, offerId: 'o', on: '2026-12-08' };

describe('the order that a basket made of an item', () => {
  it.each([
    ['another day', { packs: 2, offerId: 'o', orderOn: '2026-11-26' }, { packs: 2, offerId: 'o', day: 0 }],
    ['more packs', { packs: 3, offerId: 'o', orderOn: '2026-12-08' }, { packs: 3, offerId: 'o', day: 12 }],
    ['another offer', { packs: 2, offerId: 'p', orderOn: '2026-12-08' }, { packs: 2, offerId: 'p', day: 12 }],
  ])('is one of its own: %s', (_, line, order) => {
    expect(followedOrder('2026-11-26', line, own)).toEqual(order);
  });

  it('is one where it would order nothing by itself, and none where nothing is ordered or all is the same', () => {
    const line = { packs: 1, offerId: 'o', orderOn: '2026-11-26' };
    expect(followedOrder('2026-11-26', line, null)).toEqual({ packs: 1, offerId: 'o', day: 0 });
    expect(followedOrder('2026-11-26', { packs: 0, offerId: null, orderOn: null }, own)).toBeNull();
    expect(followedOrder('2026-11-26', { packs: 2, offerId: 'o', orderOn: '2026-12-08' }, own)).toBeNull();
  });
});
