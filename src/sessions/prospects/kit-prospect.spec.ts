import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KitNeed } from '../kit-lack.js';
import { type KitAhead, kitsLacking, type StockAhead } from './kit-prospect.js';

function liner(quantityPieces: number): KitNeed {
  return { kind: 'product', productId: 'liner', label: 'Halden liner', quantityPieces };
}

function anyLiner(quantityPieces: number): KitNeed {
  return { kind: 'configuration pool', poolId: '3RL', label: '3RL', quantityPieces };
}

function brown(quantityPieces = 1): KitNeed {
  return { kind: 'product', productId: 'brown', label: 'Halden brown', quantityPieces };
}

function kit(sessionId: string, day: string, needs: KitNeed[]): KitAhead {
  return { sessionId, day, startsAt: `${day}T09:00:00.000Z`, needs };
}

function box(facts: Partial<StockAhead> = {}): StockAhead {
  return {
    productId: 'liner',
    poolId: '3RL',
    isShared: false,
    freePieces: 2,
    end: { lastDay: '2026-12-31', lastInstant: null },
    ...facts,
  };
}

function bottle(facts: Partial<StockAhead> = {}): StockAhead {
  return box({ productId: 'brown', poolId: null, isShared: true, freePieces: 1, ...facts });
}

const until = (lastDay: string) => ({ lastDay, lastInstant: null });

describe('kits of sessions to come', () => {
  it('lack nothing while there is enough for all of them', () => {
    const kits = [
      kit('one', '2026-06-16', [liner(1), brown()]),
      kit('two', '2026-06-17', [liner(1), brown()]),
    ];
    expect(kitsLacking(kits, [box(), bottle()])).toEqual([]);
  });

  it('lack what earlier sessions take, whatever the order in which they are given', () => {
    const kits = [kit('later', '2026-06-17', [liner(2)]), kit('sooner', '2026-06-16', [liner(1)])];
    expect(kitsLacking(kits, [box()])).toEqual([{ sessionId: 'later', lacks: [liner(1)] }]);
  });

  it('share a bottle, but not two in one session', () => {
    const kits = [kit('one', '2026-06-16', [brown(2)]), kit('two', '2026-06-17', [brown()])];
    expect(kitsLacking(kits, [bottle()])).toEqual([{ sessionId: 'one', lacks: [brown()] }]);
  });

  it('count what is in date on their own day, its last one included', () => {
    const kits = [kit('in time', '2026-06-16', [brown()]), kit('late', '2026-06-17', [brown()])];
    expect(kitsLacking(kits, [bottle({ end: until('2026-06-16') })])).toEqual([
      { sessionId: 'late', lacks: [brown()] },
    ]);
  });

  it('count an opened life in hours to its hour', () => {
    const end = { lastDay: '2026-06-16', lastInstant: '2026-06-16T08:59:00.000Z' };
    expect(kitsLacking([kit('one', '2026-06-16', [brown()])], [bottle({ end })])).toHaveLength(1);
    const longer = { ...end, lastInstant: '2026-06-16T09:00:00.000Z' };
    expect(kitsLacking([kit('one', '2026-06-16', [brown()])], [bottle({ end: longer })])).toEqual([]);
  });

  it('take any cartridge of a pool, and leave to others what only they can use', () => {
    const other = box({ productId: 'other liner', freePieces: 1, end: until('2027-12-31') });
    const kits = [kit('any', '2026-06-16', [anyLiner(1)]), kit('this', '2026-06-17', [liner(1)])];
    // The first would take what ends first, which is all the second can use.
    expect(kitsLacking(kits, [box({ freePieces: 1 }), other])).toEqual([]);
    expect(kitsLacking(kits, [box({ freePieces: 1 })])).toEqual([{ sessionId: 'this', lacks: [liner(1)] }]);
  });

  it('leave fresh stock to the sessions that need it', () => {
    const kits = [kit('today', '2026-06-16', [liner(1)]), kit('next week', '2026-06-23', [liner(1)])];
    const stock = [
      box({ freePieces: 1, end: until('2026-12-31') }),
      box({ freePieces: 1, end: until('2026-06-20') }),
    ];
    expect(kitsLacking(kits, stock)).toEqual([]);
  });

  it('lack what nobody has', () => {
    expect(kitsLacking([kit('one', '2026-06-16', [brown(), liner(3)])], [])).toEqual([
      { sessionId: 'one', lacks: [brown(), liner(3)] },
    ]);
  });

  const days = ['2026-06-16', '2026-06-17', '2026-06-18'];
  const anyNeed = fc
    .record({ any: fc.boolean(), quantity: fc.integer({ min: 1, max: 2 }) })
    .map(({ any, quantity }) => (any ? anyLiner(quantity) : liner(quantity)));
  const anyKits = fc
    .array(fc.record({ day: fc.constantFrom(...days), needs: fc.array(anyNeed, { maxLength: 2 }) }), {
      maxLength: 6,
    })
    .map((given) =>
      [...given]
        .sort((one, other) => (one.day < other.day ? -1 : 1))
        .map(({ day, needs }, index) => ({
          ...kit(`session ${index}`, day, needs),
          startsAt: `${day}T1${index}:00:00.000Z`,
        })),
    );
  const anyStock = fc.array(
    fc.record({
      productId: fc.constantFrom('liner', 'other liner'),
      poolId: fc.constantFrom('3RL', null),
      isShared: fc.constant(false),
      freePieces: fc.integer({ min: 0, max: 2 }),
      end: fc.constantFrom(...days.map(until), { lastDay: null, lastInstant: null }),
    }),
    { maxLength: 4 },
  );

  it('are walked through once for what nobody can have, however many sessions lack it', () => {
    let looks = 0;
    const counted: KitNeed = {
      ...anyLiner(2),
      get poolId() {
        looks += 1;
        return '3RL';
      },
    };
    const kits = Array.from({ length: 400 }, (_, index) => kit(`session ${index}`, '2026-06-16', [counted]));
    const boxes = Array.from({ length: 40 }, () => box({ freePieces: 10 }));
    expect(kitsLacking(kits, boxes)).toHaveLength(200);
    // A look for each piece, and one at each session when the first piece is lacking.
    expect(looks).toBeLessThan(2 * 800);
  });

  it('give up to every session what some way of sharing out gives it and all before it', () => {
    fc.assert(
      fc.property(anyKits, anyStock, (kits, stock) => {
        const lacking = new Map(
          kitsLacking(kits, stock).map(({ sessionId, lacks }) => [sessionId, piecesOf(lacks)]),
        );
        let served = 0;
        kits.forEach(({ sessionId, needs }, index) => {
          served += piecesOf(needs) - (lacking.get(sessionId) ?? 0);
          expect(served).toBe(mostServed(kits.slice(0, index + 1), stock));
        });
      }),
    );
  });

  it('never lack less when something is taken away', () => {
    fc.assert(
      fc.property(anyKits, anyStock, fc.nat(), (kits, stock, taken) => {
        const left = stock.filter((_, index) => index !== taken % Math.max(1, stock.length));
        const lack = (of: StockAhead[]) =>
          kitsLacking(kits, of).reduce((sum, { lacks }) => sum + piecesOf(lacks), 0);
        expect(lack(left)).toBeGreaterThanOrEqual(lack(stock));
      }),
    );
  });
});

function piecesOf(needs: readonly KitNeed[]): number {
  return needs.reduce((sum, { quantityPieces }) => sum + quantityPieces, 0);
}

/** The most pieces that can be given, by trying out everything. */
function mostServed(kits: readonly KitAhead[], stock: readonly StockAhead[]): number {
  const wanted = kits.flatMap(({ day, needs }) =>
    needs.flatMap((need) => Array.from({ length: need.quantityPieces }, () => ({ day, need }))),
  );
  const found = new Map<string, number>();
  const give = (index: number, left: number[]): number => {
    const want = wanted[index];
    if (!want) return 0;
    const key = [index, ...left].join(' ');
    const before = found.get(key);
    if (before !== undefined) return before;
    let most = give(index + 1, left);
    stock.forEach(({ productId, poolId, end }, place) => {
      const serves =
        want.need.kind === 'product' ? productId === want.need.productId : poolId === want.need.poolId;
      const inDate = end.lastDay === null || want.day <= end.lastDay;
      if (!serves || !inDate || (left[place] ?? 0) === 0) return;
      const rest = left.map((pieces, at) => (at === place ? pieces - 1 : pieces));
      most = Math.max(most, 1 + give(index + 1, rest));
    });
    found.set(key, most);
    return most;
  };
  return give(
    0,
    stock.map(({ freePieces }) => freePieces),
  );
}
