import { describe, expect, it } from 'vitest';
import { lotsInUse, type Pouring } from './lots-in-use.js';

const named = (productName: string) => ({
  makerName: 'Halden',
  productName,
  shade: null,
  lotCode: `${productName} 1`,
  useBy: '2027-06-30',
});
const pouring = (
  parentLotId: string,
  lotId: string,
  parentMicrolitres: number,
  producedMicrolitres: number,
): Pouring => ({ parentLotId, lotId, parentMicrolitres, producedMicrolitres, ...named(parentLotId) });
const used = (lotId: string, microlitres: number) => ({ lotId, microlitres, ...named(lotId) });

describe('the lots that were in a use', () => {
  it('are the one in hand alone when it is no blend', () => {
    expect(lotsInUse([])(used('umber', 80))).toEqual([
      { ...named('umber'), lotId: 'umber', direct: true, shareMicrolitres: 80 },
    ]);
  });

  it('are the blend first, then what it was made of at any depth, the greatest share first', () => {
    const lots = lotsInUse([
      pouring('umber', 'warm', 7_500, 10_000),
      pouring('rose', 'warm', 2_500, 10_000),
      pouring('warm', 'soft', 4_000, 8_000),
      pouring('white', 'soft', 4_000, 8_000),
    ])(used('soft', 80));
    expect(lots.map((lot) => [lot.lotId, lot.direct, lot.shareMicrolitres])).toEqual([
      ['soft', true, 80],
      ['warm', false, 40],
      ['white', false, 40],
      ['umber', false, 30],
      ['rose', false, 10],
    ]);
    expect(lots[3]).toMatchObject(named('umber'));
  });

  it('have no share where the amount is not known', () => {
    const lots = lotsInUse([pouring('umber', 'warm', 5_000, 5_000)])(used('warm', 0));
    expect(lots.map((lot) => lot.shareMicrolitres)).toEqual([null, null]);
  });

  it('are told of each use by itself, however often its lot was used', () => {
    const lotsOf = lotsInUse([pouring('umber', 'warm', 5_000, 10_000)]);
    expect([40, 80].map((microlitres) => lotsOf(used('warm', microlitres))[1]?.shareMicrolitres)).toEqual([
      20, 40,
    ]);
  });
});
