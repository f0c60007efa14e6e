import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alertConditions, type StockLevel, type StockOnHand } from './alert-conditions.js';

const at = '2026-06-15T10:00:00Z';
const timeZone = 'Europe/Berlin';
const settings = { useByNearDays: 30, openedLifeEndingDays: 14 };

function lot(facts: Partial<StockOnHand> = {}): StockOnHand {
  return {
    subjectKind: 'lot',
    subjectId: 'lot 1',
    productId: 'liner',
    pieces: 20,
    useByLastDay: '2028-12-31',
    openedAt: null,
    openedLife: null,
    assumedOpenedLife: null,
    usableThrough: null,
    held: false,
    practice: false,
    ...facts,
  };
}

function bottle(facts: Partial<StockOnHand> = {}): StockOnHand {
  return lot({
    subjectKind: 'container',
    subjectId: 'bottle 1',
    productId: 'brown',
    pieces: 1,
    openedAt: '2026-06-01T10:00:00Z',
    openedLife: 'P12M',
    ...facts,
  });
}

function level(facts: Partial<StockLevel> = {}): StockLevel {
  return {
    subjectKind: 'product',
    subjectId: 'liner',
    productIds: ['liner'],
    minimumPieces: 10,
    ...facts,
  };
}

function conditions(stock: StockOnHand[], levels: StockLevel[] = []) {
  return alertConditions(stock, levels, settings, at, timeZone);
}

function kinds(stock: StockOnHand[], levels: StockLevel[] = []) {
  return conditions(stock, levels).map((condition) => condition.kind);
}

describe('low stock', () => {
  it('opens at the level, not above it', () => {
    expect(kinds([lot({ pieces: 11 })], [level()])).toEqual([]);
    expect(conditions([lot({ pieces: 10 })], [level()])).toEqual([
      {
        kind: 'low stock',
        subjectKind: 'product',
        subjectId: 'liner',
        severity: 'warning',
        facts: { usablePieces: 10, minimumPieces: 10 },
      },
    ]);
  });

  it('is urgent when nothing usable is left, also for a product never received', () => {
    expect(conditions([], [level({ minimumPieces: 0 })])).toMatchObject([
      { kind: 'low stock', severity: 'urgent', facts: { usablePieces: 0 } },
    ]);
  });

  it('counts all lots and bottles of the product together', () => {
    const stock = [lot({ pieces: 6 }), lot({ subjectId: 'lot 2', pieces: 5 })];
    expect(kinds(stock, [level()])).toEqual([]);
    const brown = level({ subjectId: 'brown', productIds: ['brown'], minimumPieces: 3 });
    const sealed = lot({ productId: 'brown', pieces: 3 });
    expect(kinds([bottle(), sealed], [brown])).toEqual([]);
    expect(conditions([bottle(), { ...sealed, pieces: 2 }], [brown])).toMatchObject([
      { kind: 'low stock', facts: { usablePieces: 3 } },
    ]);
  });

  it('counts the products of a configuration pool together, each once', () => {
    const pool = level({
      subjectKind: 'configuration pool',
      subjectId: '7 liner',
      productIds: ['liner', 'other liner', 'liner'],
    });
    const other = lot({ subjectId: 'lot 2', productId: 'other liner', pieces: 4 });
    expect(conditions([lot({ pieces: 6 }), other], [pool])).toMatchObject([
      { subjectKind: 'configuration pool', subjectId: '7 liner', facts: { usablePieces: 10 } },
    ]);
    expect(kinds([lot({ pieces: 7 }), other], [pool])).toEqual([]);
  });

  it.each([
    ['held', { held: true }],
    ['expired', { useByLastDay: '2026-06-14' }],
    ['practice', { practice: true }],
  ])('does not count %s stock', (_name, facts) => {
    expect(kinds([lot(facts)], [level()])).toContain('low stock');
  });

  it('counts stock without a known date, which only a person can rule out', () => {
    expect(kinds([lot({ useByLastDay: null })], [level()])).toEqual([]);
  });
});

describe('use-by near', () => {
  it('opens with the named number of days left, not one more', () => {
    expect(kinds([lot({ useByLastDay: '2026-07-16' })])).toEqual([]);
    expect(conditions([lot({ useByLastDay: '2026-07-15' })])).toEqual([
      {
        kind: 'use-by near',
        subjectKind: 'lot',
        subjectId: 'lot 1',
        severity: 'warning',
        facts: {
          productId: 'liner',
          pieces: 20,
          status: 'usable',
          lastDay: '2026-07-15',
          daysLeft: 30,
          boundBy: 'use-by',
          held: false,
        },
      },
    ]);
  });

  it('stays open on the last usable day', () => {
    expect(kinds([lot({ useByLastDay: '2026-06-15' })])).toEqual(['use-by near']);
  });

  it('counts the days of the studio', () => {
    const lateEvening = '2026-06-14T22:30:00Z';
    const stock = [lot({ useByLastDay: '2026-07-15' })];
    expect(alertConditions(stock, [], settings, lateEvening, 'Europe/Berlin')).toHaveLength(1);
    expect(alertConditions(stock, [], settings, lateEvening, 'America/New_York')).toEqual([]);
  });

  it.each([
    ['used up', { pieces: 0 }],
    ['held', { held: true }],
    ['practice stock', { practice: true }],
    ['without a known date', { useByLastDay: null }],
  ])('does not open for a lot that is %s', (_name, facts) => {
    expect(kinds([lot({ useByLastDay: '2026-06-20', ...facts })])).toEqual([]);
  });
});

describe('opened life ending', () => {
  it('opens with the named number of days left, not one more', () => {
    expect(kinds([bottle({ openedLife: 'P29D' })])).toEqual([]);
    expect(conditions([bottle({ openedLife: 'P28D' })])).toMatchObject([
      {
        kind: 'opened life ending',
        subjectKind: 'container',
        subjectId: 'bottle 1',
        facts: { lastDay: '2026-06-29', daysLeft: 14, boundBy: 'opened life', openedLifeFrom: 'label' },
      },
    ]);
  });

  it('says when the opened life is the assumption of the studio', () => {
    expect(conditions([bottle({ openedLife: null, assumedOpenedLife: 'P20D' })])).toMatchObject([
      { kind: 'opened life ending', facts: { openedLifeFrom: 'assumed' } },
    ]);
  });

  it('stands for an opened bottle whose use-by ends first, too', () => {
    expect(conditions([bottle({ useByLastDay: '2026-06-20' })])).toMatchObject([
      { kind: 'opened life ending', facts: { lastDay: '2026-06-20', boundBy: 'use-by' } },
    ]);
    // Thirty days are near for a sealed lot, not for an open bottle.
    expect(kinds([bottle({ useByLastDay: '2026-07-15' })])).toEqual([]);
  });
});

describe('expired on the shelf', () => {
  it('opens the day after the last usable day, and then alone', () => {
    expect(conditions([lot({ useByLastDay: '2026-06-14' })])).toMatchObject([
      { kind: 'expired on the shelf', severity: 'urgent', facts: { status: 'expired', daysLeft: -1 } },
    ]);
  });

  it('opens for a bottle open too long, and then alone', () => {
    expect(conditions([bottle({ openedLife: 'P10D' })])).toMatchObject([
      { kind: 'expired on the shelf', facts: { status: 'open too long', lastDay: '2026-06-11' } },
    ]);
  });

  it('opens in the hour a life in hours ends', () => {
    const open = bottle({ openedAt: '2026-06-14T09:59:00Z', openedLife: 'PT24H' });
    expect(kinds([open])).toEqual(['expired on the shelf']);
    expect(kinds([{ ...open, openedAt: '2026-06-14T10:00:00Z' }])).toEqual(['opened life ending']);
  });

  it('stays a notice while the expired stock is held', () => {
    expect(conditions([lot({ useByLastDay: '2026-06-14', held: true })])).toMatchObject([
      { kind: 'expired on the shelf', severity: 'notice', facts: { held: true } },
    ]);
  });

  it.each([
    ['practice stock', { practice: true }],
    ['a lot used up', { pieces: 0 }],
  ])('does not open for %s', (_name, facts) => {
    expect(kinds([lot({ useByLastDay: '2026-06-14', ...facts })])).toEqual([]);
  });
});

describe('alert conditions of any shelf', () => {
  it('name each thing at most once by date, and expired exactly what may no longer be used', () => {
    const item = fc.record({
      useByLastDay: fc.constantFrom('2026-06-14', '2026-06-15', '2026-07-15', '2026-07-16', null),
      openedAt: fc.constantFrom('2026-06-01T10:00:00Z', '2026-06-14T10:00:00Z', null),
      openedLife: fc.constantFrom('P10D', 'P12M', 'PT24H', null),
      held: fc.boolean(),
      practice: fc.boolean(),
      pieces: fc.integer({ min: 0, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 8 }), (items) => {
        const stock = items.map((facts, index) => lot({ ...facts, subjectId: `lot ${index}` }));
        const found = conditions(stock, [level({ minimumPieces: 1 })]);
        const named = found.filter((one) => one.kind !== 'low stock').map((one) => one.subjectId);
        expect(new Set(named).size).toBe(named.length);
        for (const one of found) {
          if (one.kind === 'low stock') expect(one.facts.usablePieces).toBeLessThanOrEqual(1);
          else expect(one.kind === 'expired on the shelf').toBe(one.facts.status !== 'usable');
        }
      }),
    );
  });
});

describe('a level of nothing', () => {
  it('is never low: nothing of it is offered any more', () => {
    const level = {
      subjectKind: 'configuration pool',
      subjectId: 'gone',
      productIds: [],
      minimumPieces: 5,
    } as const;
    const settings = { useByNearDays: 30, openedLifeEndingDays: 14 };
    expect(alertConditions([], [level], settings, '2026-11-25T09:00:00Z', 'UTC')).toEqual([]);
  });
});
