import { describe, expect, it } from 'vitest';
import {
  claimsOfDelivery,
  claimsOfDifference,
  claimsOfShortLine,
  costOfPieces,
  type DeliveredLine,
  suggestionKey,
} from './claim-suggestions.js';

const line = (more: Partial<DeliveredLine> = {}): DeliveredLine => ({
  deliveryLineId: 'line',
  lotId: 'lot',
  arrivedOn: '2026-03-01',
  pieces: 10,
  useBy: '2027-03-01',
  brokenSeals: 0,
  damagedPackages: 0,
  promisedLifeDays: 365,
  ...more,
});
const short = (given: DeliveredLine) => claimsOfDelivery(given).map(({ reason, pieces }) => [reason, pieces]);

describe('what a delivery gives reason to claim', () => {
  it('is nothing when all is as it was promised, to the day', () => {
    expect(short(line())).toEqual([]);
    expect(short(line({ useBy: null }))).toEqual([]);
    expect(short(line({ useBy: '2026-03-01', promisedLifeDays: null }))).toEqual([]);
  });

  it('is a short date from one day less on, and what is past its day without any promise', () => {
    expect(short(line({ useBy: '2027-02-28' }))).toEqual([['short date', 10]]);
    expect(short(line({ useBy: '2026-02-28', promisedLifeDays: null }))).toEqual([['short date', 10]]);
    const [past] = claimsOfDelivery(line({ useBy: '2026-02-28' }));
    expect(past?.why).toContain('past their last day, 2026-02-28');
    expect(past?.shortDate).toMatchObject({ useBy: '2026-02-28', promisedDays: null });
    expect(past?.shortDate?.daysLeft).toBeLessThan(0);
  });

  it('claims no piece twice', () => {
    const faulty = line({ useBy: '2026-06-01', brokenSeals: 3, damagedPackages: 2 });
    expect(short(faulty)).toEqual([
      ['broken seal', 3],
      ['damaged package', 2],
      ['short date', 5],
    ]);
    expect(short(line({ useBy: '2026-06-01', brokenSeals: 10 }))).toEqual([['broken seal', 10]]);
  });
});

it('says what came beside an order, and what never came', () => {
  const difference = {
    kind: 'another product',
    deliveryLineId: 'd',
    lotId: 'l',
    orderLineId: 'o',
    pieces: 1,
  } as const;
  expect(claimsOfDifference(difference)).toMatchObject({
    ...{
      reason: 'not ordered',
      pieces: 1,
      orderLineId: 'o',
      why: '1 piece came of another product than was ordered.',
    },
  });
  expect(claimsOfShortLine({ orderLineId: 'o', missingPieces: 7 })).toMatchObject({
    ...{ reason: 'too few', pieces: 7, deliveryLineId: null },
  });
});

it('knows what was claimed by the line and the reason', () => {
  const keys = [
    { reason: 'short date', orderLineId: null, deliveryLineId: 'd' },
    { reason: 'broken seal', orderLineId: null, deliveryLineId: 'd' },
    { reason: 'too few', orderLineId: 'd', deliveryLineId: null },
  ] as const;
  expect(new Set(keys.map(suggestionKey)).size).toBe(3);
  // The order is said beside the line of the delivery by some, and not by others.
  expect(suggestionKey({ reason: 'not ordered', orderLineId: 'o', deliveryLineId: 'd' })).toBe(
    suggestionKey({ reason: 'not ordered', orderLineId: null, deliveryLineId: 'd' }),
  );
});

it('costs whole minor units, rounded once', () => {
  expect(costOfPieces(7, { minor: 3_001, pieces: 20 })).toBe(1_050);
  expect(costOfPieces(1, { minor: 1, pieces: 2 })).toBe(1);
  expect(costOfPieces(20, { minor: 3_001, pieces: 20 })).toBe(3_001);
  expect(costOfPieces(1, null)).toBeNull();
  expect(costOfPieces(1, { minor: 5, pieces: 0 })).toBeNull();
});
