import { describe, expect, it } from 'vitest';
import { type KnownProduct, planOpeningStock, type StockOnRecord } from './opening-stock-plan.js';
import { readStockRow, type StockCells } from './opening-stock-row.js';

const day = '2026-11-25';
const shelf = { id: 'shelf', name: 'Shelf' };
const empty: StockOnRecord = {
  makers: [],
  products: [],
  gtins: [],
  lots: [],
  places: [shelf],
  people: [],
  day,
};
const umber: KnownProduct = {
  id: 'umber',
  makerId: 'halden',
  name: 'Brow pigment',
  shade: 'Warm umber',
  kind: 'pigment',
  stockForm: 'container',
  volumeMicrolitres: 10_000,
  openedLife: 'P12M',
  points: null,
  grouping: null,
  archived: false,
};
const stocked: StockOnRecord = {
  ...empty,
  makers: [{ id: 'halden', name: 'Halden Colour Works' }],
  products: [umber],
};
const bottle: StockCells = {
  maker: 'halden colour works',
  product: 'Brow Pigment',
  shade: 'warm umber',
  lot: 'HU-118',
  'use by': '2027-06-30',
  quantity: '2',
};
const cartridges: StockCells = {
  maker: 'Corvin Needleworks',
  product: 'Liner',
  kind: 'cartridge',
  notation: '1003RL',
  gtin: '9506000134352',
  lot: 'CL-1',
  'use by': '2028-12',
  quantity: '3',
  'pieces per box': '20',
};
const plan = (record: StockOnRecord, ...rows: StockCells[]) =>
  planOpeningStock(
    rows.map((cells, index) => ({ number: index + 2, ...readStockRow(cells, day) })),
    record,
  );
const messages = (record: StockOnRecord, ...rows: StockCells[]) =>
  plan(record, ...rows).map(({ faults }) => faults.map(({ column, message }) => `${column} ${message}`));

describe('a plan of opening stock', () => {
  it('finds products by their names, whatever their capitals', () => {
    const [row] = plan(stocked, bottle);
    expect(row).toMatchObject({
      faults: [],
      effects: ['new lot'],
      product: { id: 'umber' },
      placeId: 'shelf',
      pieces: 2,
      containers: 2,
    });
  });

  it('makes a maker, a product and a GTIN that are not known, once for all rows', () => {
    const { kind: _, ...again } = cartridges;
    const [first, second] = plan(empty, cartridges, { ...again, lot: 'CL-2', quantity: '1' });
    expect(first).toMatchObject({
      faults: [],
      effects: ['new maker', 'new product', 'new GTIN', 'new lot'],
      newMaker: 'Corvin Needleworks',
      newProduct: { kind: 'cartridge', stockForm: 'pieces', fields: { points: 3 } },
      newGtin: { gtin: '09506000134352', contentCount: 20 },
      pieces: 60,
      containers: 3,
    });
    expect(second).toMatchObject({ effects: ['new lot'], product: { madeByRow: 2 }, pieces: 20 });
  });

  it('says what a product that is added lacks, and that one without a kind is not known', () => {
    expect(messages(empty, { ...bottle, kind: 'pigment' })).toEqual([
      ['bottle ml is empty; a pigment that is added needs it'],
    ]);
    expect(messages(stocked, { ...bottle, shade: 'Ash' })[0]?.[0]).toContain(
      'is not in the catalogue; of this name there are: Warm umber',
    );
    // What follows from a fault that is told already is not told again.
    expect(messages(empty, { ...bottle, kind: 'pigment' }, bottle)[1]).toEqual([]);
    expect(messages({ ...stocked, products: [{ ...umber, archived: true }] }, bottle)[0]?.[0]).toContain(
      'archived',
    );
  });

  it('lets no row contradict the catalogue or an earlier row', () => {
    expect(
      messages(stocked, { ...bottle, 'bottle ml': '15', kind: 'consumable', 'opened life': 'P6M' })[0],
    ).toEqual([
      expect.stringContaining('kind is not what the catalogue says: pigment'),
      expect.stringContaining('bottle ml is not what the catalogue says: 10 ml'),
      expect.stringContaining('opened life is not what the catalogue says: P12M'),
    ]);
    const added = { ...bottle, kind: 'pigment', 'bottle ml': '10' };
    expect(messages(empty, cartridges, { ...cartridges, notation: '1005RL' })[1]?.[0]).toContain(
      'notation is not what row 2 says',
    );
    expect(messages(empty, added, { ...added, 'bottle ml': '15' })[1]?.[0]).toContain('row 2 says: 10 ml');
  });

  it('finds a product by a registered GTIN, counted with its content', () => {
    const record = { ...stocked, gtins: [{ gtin: '09506000134352', productId: 'umber', contentCount: 6 }] };
    const { maker: _, product: __, shade: ___, ...unnamed } = bottle;
    const [row] = plan(record, { ...unnamed, gtin: '9506000134352' });
    expect(row).toMatchObject({ faults: [], product: { id: 'umber' }, pieces: 12, containers: 12 });
    expect(messages(record, { ...cartridges, quantity: '1' })[0]?.[0]).toContain(
      'another product in the catalogue',
    );
    expect(messages(record, { ...bottle, gtin: '9506000134352', 'pieces per box': '5' })[0]?.[0]).toContain(
      'stands for 6',
    );
    expect(messages(empty, { ...unnamed, gtin: '9506000134352' })[0]?.[0]).toContain('not registered');
  });

  it('joins rows of one code and date into one lot, and asks when the date is another', () => {
    const joined = plan(stocked, bottle, {
      ...bottle,
      quantity: '1',
      'opened on': '2026-03-12',
      remaining: '60 %',
    });
    expect(joined[1]).toMatchObject({ effects: ['joins a lot'], remainingMicrolitres: 6_000 });
    const other = { ...bottle, 'use by': '2027-12-31' };
    expect(messages(stocked, bottle, other)[1]?.[0]).toContain('2027-06-30 (row 2) is known');
    expect(plan(stocked, bottle, { ...other, 'same code': 'separate lot' })[1]?.effects).toEqual(['new lot']);
    const record = {
      ...stocked,
      lots: [{ lotId: 'l', productId: 'umber', code: 'HU-118', useBy: '2027-01-31' }],
    };
    expect(messages(record, bottle)[0]?.[0]).toContain('but 2027-01-31 is known');
    expect(
      plan(record, { ...bottle, 'same code': 'correct recorded date' }, bottle).map(({ effects }) => effects),
    ).toEqual([['corrects a lot'], ['joins a lot']]);
  });

  it('says why a lot will be put aside', () => {
    const rows = plan(
      stocked,
      { ...bottle, 'use by': '2026-11-24' },
      { ...bottle, lot: 'none printed', 'use by': 'none printed' },
    );
    expect(rows.map(({ setAside }) => setAside)).toEqual([
      ['already past'],
      ['no lot printed', 'no use-by printed'],
    ]);
  });

  it('finds places and people by name, and names those there are', () => {
    const record = {
      ...stocked,
      places: [shelf, { id: 'room', name: 'Room 1' }],
      people: [{ id: 'mara', name: 'Mara' }],
    };
    expect(plan(record, { ...bottle, place: 'ROOM 1', owner: 'mara' })[0]).toMatchObject({
      faults: [],
      placeId: 'room',
      ownerId: 'mara',
    });
    expect(messages(record, { ...bottle, place: 'Cellar', owner: 'Nobody' })[0]).toEqual([
      'place "Cellar" is not known; places here are: Shelf, Room 1',
      expect.stringContaining('nobody who works here'),
    ]);
    expect(messages(record, bottle)[0]?.[0]).toContain('is empty; places here are: Shelf, Room 1');
  });

  it('takes an opened date of bottles only, and no more left than they hold', () => {
    expect(messages(empty, { ...cartridges, 'opened on': '2026-03-12' })[0]?.[0]).toContain('bottles only');
    expect(messages(stocked, { ...bottle, 'opened on': '2026-03-12', remaining: '11 ml' })[0]?.[0]).toContain(
      '11 ml are more than the bottle holds, 10 ml',
    );
  });

  it('refuses more than can be put away at a time', () => {
    expect(messages(stocked, { ...bottle, quantity: '1500' }, { ...bottle, quantity: '600' })).toEqual([
      [],
      [expect.stringContaining('2100 bottles and boxes; at most 2000')],
    ]);
    expect(messages(empty, { ...cartridges, quantity: '9000' })[0]?.[0]).toContain('180000 pieces');
  });
});
