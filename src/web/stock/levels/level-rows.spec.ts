import { describe, expect, it } from 'vitest';
import type { ConfigurationView } from '../../../catalogue/configurations.views.js';
import type { StockLevelsView } from '../../../stock/levels.views.js';
import { isLookedFor } from './level-filter.js';
import { levelRows } from './level-rows.js';

const none = {
  usablePieces: 0,
  endingSoonPieces: 0,
  onHandPieces: 0,
  onHandMicrolitres: 0,
  heldPieces: 0,
  expiredPieces: 0,
  practicePieces: 0,
  openedContainers: 0,
};
const counted = { quantities: none, reservedPieces: 0, level: null, low: false, toTake: [] };
const level = (subjectKind: 'product' | 'configuration', subjectId: string) => ({
  ...{ id: 'l1', subjectKind, subjectId, minimumPieces: 2, version: 1 },
});
const cartridge = { makerName: 'Corvin', shade: null, kind: 'cartridge' as const, ...counted };
const levels: StockLevelsView = {
  products: [
    {
      ...counted,
      productId: 'p1',
      productName: 'Umber',
      shade: 'Warm 02',
      makerName: 'Halden',
      kind: 'pigment',
    },
    { ...counted, productId: 'p2', productName: 'Gel', shade: null, makerName: 'Halden', kind: 'consumable' },
    { ...cartridge, productId: 'c1', productName: 'Liner' },
    { ...cartridge, productId: 'c2', productName: 'Other liner' },
    { ...cartridge, productId: 'c3', productName: 'Unknown taper' },
    { ...cartridge, productId: 'c4', productName: 'Spare', level: level('product', 'c4') },
  ],
  configurations: [
    {
      ...counted,
      keys: ['seven', 'eight'],
      productIds: ['c1', 'c2', 'c4'],
      level: level('configuration', 'eight'),
    },
    { ...counted, keys: ['gone'], productIds: [] },
  ],
};
const pooled = { machineFit: 'universal', membrane: null };
const configurations: ConfigurationView[] = [
  {
    keys: ['seven', 'eight'],
    products: [
      { ...pooled, id: 'c1', makerName: 'Corvin', name: 'Liner', notation: '1207RL' },
      { ...pooled, id: 'c2', makerName: 'Corvin', name: 'Other liner', notation: '1207RL' },
      { ...pooled, id: 'c4', makerName: 'Corvin', name: 'Spare', notation: '1207RL' },
    ],
    declared: true,
    equivalences: [],
  },
];

describe('rows of the levels', () => {
  const rows = levelRows(levels, configurations);

  it('show a shade by its product and shade, with its maker', () => {
    expect(rows.pigments).toMatchObject([{ name: 'Umber Warm 02', about: ['Halden'], subjectId: 'p1' }]);
    expect(rows.consumables).toMatchObject([{ name: 'Gel' }]);
  });

  it('show a configuration once, by its notation, and set its minimum where one stands', () => {
    expect(rows.cartridges[0]).toMatchObject({
      name: '1207RL',
      subjectKind: 'configuration',
      subjectId: 'eight',
      about: ['universal'],
    });
  });

  it('name every product that a configuration is made up of', () => {
    expect(rows.cartridges[0]?.products).toEqual([
      { productId: 'c1', name: 'Corvin Liner' },
      { productId: 'c2', name: 'Corvin Other liner' },
      { productId: 'c4', name: 'Corvin Spare' },
    ]);
  });

  it('show by its key what no cartridge is any more', () => {
    expect(rows.cartridges[1]).toMatchObject({ name: 'gone', subjectId: 'gone' });
  });

  it('show by itself a cartridge of no configuration, and one with its own minimum', () => {
    expect(rows.cartridges.slice(2).map(({ subjectId }) => subjectId)).toEqual(['c3', 'c4']);
  });
});

describe('looking for a row', () => {
  const [umber] = levelRows(levels, []).pigments;
  const found = (text: string, filter: Parameters<typeof isLookedFor>[1]['filter'], more = {}) =>
    umber && isLookedFor({ ...umber, ...more }, { text, filter });

  it('finds it by words of its name and maker, in any case and order', () => {
    expect(found('halden WARM', null)).toBe(true);
    expect(found('warm black', null)).toBe(false);
    expect(found('  ', null)).toBe(true);
  });

  it.each([
    ['low', { low: true }],
    ['ending soon', { quantities: { ...none, usablePieces: 2, endingSoonPieces: 1 } }],
    ['held', { quantities: { ...none, heldPieces: 1 } }],
    ['here', { quantities: { ...none, onHandPieces: 1 } }],
  ] as const)('finds what is %s', (filter, more) => {
    expect([found('', filter), found('', filter, more)]).toEqual([false, true]);
  });
});
