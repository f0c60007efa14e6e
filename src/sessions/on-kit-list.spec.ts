import { describe, expect, it } from 'vitest';
import { onKitList } from './on-kit-list.js';

const lines = [
  { productId: 'umber', configuration: null },
  { productId: null, configuration: '7 round liner 0.35 mm' },
];

describe('whether a product is on the kit list', () => {
  it('is yes when the product is named', () => {
    expect(onKitList(lines, 'umber', [])).toBe('yes');
  });

  it('is yes when any configuration of its pool is named', () => {
    expect(onKitList(lines, 'liner', ['1207RL', '7 round liner 0.35 mm'])).toBe('yes');
  });

  it('is no when neither is, also for a product that stands in no pool', () => {
    expect(onKitList(lines, 'gel', [])).toBe('no');
    expect(onKitList(lines, 'magnum', ['9 magnum 0.30 mm'])).toBe('no');
    expect(onKitList([], 'umber', [])).toBe('no');
  });

  it('is not asked where there is no list', () => {
    expect(onKitList(null, 'umber', ['1207RL'])).toBe('there is no kit list');
  });
});
