import { describe, expect, it } from 'vitest';
import { NEVER } from '../projection/item-facts.js';
import { itemStock, openedLifeDays, type StockedContainer } from './item-stock.js';

const setting = {
  day: '2026-03-02',
  timeZone: 'Europe/Vienna',
  assumedOpenedLife: 'P6M',
  lastDayOfOwner: new Map(),
};
const bottle = (facts: Partial<StockedContainer> = {}): StockedContainer => ({
  containerId: 'c',
  lotId: 'l',
  productId: 'p',
  form: 'bottle',
  state: 'sealed',
  openedAt: null,
  pieces: 1,
  microlitres: 10_000,
  volumeMicrolitres: 10_000,
  useBy: '2026-12-31',
  openedLife: null,
  usableThrough: null,
  holds: [],
  ownerId: null,
  unitCostMinor: 3_000,
  ...facts,
});

describe('the stock of an item', () => {
  it('puts equal bottles together, and opened ones by what is left and by their own last day', () => {
    const opened = bottle({ state: 'opened', openedAt: '2026-02-01T10:00:00.000Z', microlitres: 4_000 });
    const { batches, counts } = itemStock([bottle(), bottle(), opened], 'microlitres', setting);
    expect(batches).toEqual([
      { containers: 1, unitsEach: 4_000, lastDay: 152, opened: true, costEachMinor: 1_200 },
      { containers: 2, unitsEach: 10_000, lastDay: 304, opened: false, costEachMinor: 3_000 },
    ]);
    expect(counts).toMatchObject({
      usableUnits: 24_000,
      containers: 3,
      opened: 1,
      nextLastDay: '2026-08-01',
    });
  });

  it('counts what is held, expired or for practice, and leaves it out', () => {
    const { batches, counts } = itemStock(
      [
        bottle({ holds: [{ on: 'lot' }] }),
        bottle({ useBy: '2026-03-01' }),
        bottle({ state: 'practice only' }),
        bottle({ state: 'finished' }),
        bottle({ useBy: '2026-03-02' }),
      ],
      'microlitres',
      setting,
    );
    expect(batches).toEqual([
      { containers: 1, unitsEach: 10_000, lastDay: 0, opened: false, costEachMinor: 3_000 },
    ]);
    expect(counts).toMatchObject({
      heldContainers: 1,
      heldUnits: 10_000,
      expiredContainers: 1,
      practiceContainers: 1,
    });
  });

  it('counts what belongs to single artists until they leave', () => {
    const lastDayOfOwner = new Map([
      ['ana', 10],
      ['bea', -1],
    ]);
    const { batches, counts, owned } = itemStock(
      [bottle(), ...['ana', 'bea', 'cleo'].map((ownerId) => bottle({ ownerId }))],
      'microlitres',
      { ...setting, lastDayOfOwner },
    );
    expect(batches).toEqual([
      { containers: 1, unitsEach: 10_000, lastDay: 10, opened: false, costEachMinor: 0 },
      { containers: 2, unitsEach: 10_000, lastDay: 304, opened: false, costEachMinor: 3_000 },
    ]);
    expect(counts).toMatchObject({ usableUnits: 30_000, containers: 3 });
    expect(owned).toEqual({ pieces: 2, leavingPieces: 1, leftPieces: 1 });
  });

  it('takes pieces of a box one by one', () => {
    const box = bottle({
      form: 'box',
      pieces: 20,
      microlitres: 0,
      useBy: null,
      unitCostMinor: 90,
      state: 'opened',
    });
    expect(itemStock([box, box], 'pieces', setting).batches).toEqual([
      { containers: 40, unitsEach: 1, lastDay: NEVER, opened: false, costEachMinor: 90 },
    ]);
  });
});

it('counts an opened life in days from the day of the plan', () => {
  expect(openedLifeDays('P12M', '2026-03-02', 'Europe/Vienna')).toBe(365);
  expect(openedLifeDays('PT24H', '2026-03-02', 'Europe/Vienna')).toBe(1);
  expect(openedLifeDays(null, '2026-03-02', 'Europe/Vienna')).toBe(NEVER);
});
