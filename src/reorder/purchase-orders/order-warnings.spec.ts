import { describe, expect, it } from 'vitest';
import { type LineToApprove, type OrderToApprove, orderWarnings } from './order-warnings.js';

const line = (more: Partial<LineToApprove> = {}): LineToApprove => ({
  lineNumber: 1,
  product: 'Halden Ink Brow Umber',
  archived: false,
  packs: 3,
  packPriceMinor: 2_490,
  offer: { ended: false, minimumPacks: 1, packPriceMinor: 2_490 },
  packPieces: 1,
  planned: null,
  ...more,
});
const order = (more: Partial<OrderToApprove> = {}): OrderToApprove => ({
  supplier: 'Pellworm Supply',
  lines: [line()],
  linesMinor: 7_470,
  minimumOrderMinor: 5_000,
  plan: null,
  money: (minor) => `€${minor}`,
  ...more,
});
const codes = (given: OrderToApprove) =>
  orderWarnings(given).map(({ code, lineNumber }) => [code, lineNumber]);

describe('an order before it is approved', () => {
  it('is told nothing when there is nothing to tell', () => {
    expect(codes(order())).toEqual([]);
    expect(codes(order({ minimumOrderMinor: null, linesMinor: 1 }))).toEqual([]);
    expect(codes(order({ linesMinor: 5_000 }))).toEqual([]);
    // By hand, at a price of one's own.
    expect(codes(order({ lines: [line({ offer: null })] }))).toEqual([]);
  });

  it('is told how much is missing to the smallest order', () => {
    const [warning] = orderWarnings(order({ linesMinor: 4_200 }));
    expect(warning).toMatchObject({ code: 'below minimum order', lineNumber: null });
    expect(warning?.message).toContain('€5000; this one is €4200, €800 less');
  });

  it('is told of every line that should be looked at, under its number', () => {
    const lines = [
      line({ lineNumber: 1, offer: { ended: true, minimumPacks: 4, packPriceMinor: 2_490 } }),
      line({ lineNumber: 4, archived: true, packPriceMinor: null }),
      line({ lineNumber: 5, packPriceMinor: 2_000 }),
      line({ lineNumber: 6, offer: { ended: false, minimumPacks: 1, packPriceMinor: null } }),
    ];
    expect(codes(order({ lines }))).toEqual([
      ['offer ended', 1],
      ['below minimum packs', 1],
      ['product archived', 4],
      ['price not known', 4],
      ['price changed', 5],
    ]);
  });

  const planned = { packPieces: 1, packPriceMinor: 2_490 };

  it('is told what changed of a pack since the plan counted with it', () => {
    expect(codes(order({ lines: [line({ planned })] }))).toEqual([]);
    // A price of another currency says nothing.
    const unsaid = { ...planned, packPriceMinor: null };
    expect(codes(order({ lines: [line({ planned: unsaid })] }))).toEqual([]);
    const [warning] = orderWarnings(order({ lines: [line({ packs: 7, packPieces: 50, planned })] }));
    expect(warning).toMatchObject({ code: 'offer changed since the plan', lineNumber: 1 });
    expect(warning?.message).toContain('packs of 1, now 50');
    const dearer = line({ planned: { ...planned, packPriceMinor: 1_990 } });
    expect(orderWarnings(order({ lines: [dearer] }))[0]?.message).toContain('€1990 a pack, now €2490');
  });

  it.each([
    [{ ageDays: 7, wasLatest: true }, []],
    [{ ageDays: 8, wasLatest: true }, ['plan is old']],
    [{ ageDays: 0, wasLatest: false }, ['plan not the latest']],
  ])('is told of its plan %o: %o', (plan, told) => {
    expect(orderWarnings(order({ plan })).map(({ code }) => code)).toEqual(told);
  });
});
