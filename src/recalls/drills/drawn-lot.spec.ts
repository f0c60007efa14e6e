import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnLot, fnv1a } from './drawn-lot.js';

describe('drawing a lot', () => {
  // Test vectors of 32-bit FNV-1a as printed in appendix C of draft-eastlake-fnv [M].
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('hashes %j as published', (text, hash) => {
    expect(fnv1a(text)).toBe(hash);
  });

  it('draws the same by the same seed, in whatever order the lots come', () => {
    fc.assert(
      fc.property(fc.uuid(), fc.uniqueArray(fc.uuid(), { minLength: 1 }), (seed, lots) => {
        const drawn = drawnLot(seed, lots);
        expect(lots).toContain(drawn);
        expect(drawnLot(seed, [...lots].reverse())).toBe(drawn);
      }),
    );
  });

  it('draws none of none', () => {
    expect(drawnLot('seed', [])).toBeUndefined();
  });

  it('draws each lot about as often as the others', () => {
    const lots = ['a', 'b', 'c', 'd', 'e'];
    const counts = new Map<string | undefined, number>();
    for (let index = 0; index < 5_000; index += 1) {
      const drawn = drawnLot(`019a0000-0000-7000-8000-${String(index).padStart(12, '0')}`, lots);
      counts.set(drawn, (counts.get(drawn) ?? 0) + 1);
    }
    for (const lot of lots) expect(counts.get(lot) ?? 0).toBeGreaterThan(800);
  });
});
