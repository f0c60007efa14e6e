import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BalanceFacts,
  type BalanceFigure,
  balanceAccount,
  balanceFigures,
  imbalance,
  nothing,
  type Quantity,
  sum,
  sumOfAccounts,
} from './balance-account.js';

const of = (pieces: number, microlitres = 0): Quantity => ({ pieces, microlitres });
const facts = (
  figures: Partial<Record<BalanceFigure, Quantity>>,
  onHand: Partial<BalanceFacts['onHand']> = {},
  lostOnTheWay = nothing,
): BalanceFacts => ({
  figures: Object.entries(figures).map(([figure, quantity]) => ({
    figure: figure as BalanceFigure,
    ...quantity,
  })),
  onHand: { found: nothing, notFound: nothing, notLookedFor: nothing, onEnded: nothing, ...onHand },
  lostOnTheWay,
});

describe('the account of a lot', () => {
  it('is whole when all that came in left or was found', () => {
    const account = balanceAccount(
      facts(
        {
          received: of(10, 150_000),
          used: of(0, -60_000),
          emptied: of(-4, -300),
          wasted: of(-1, -14_700),
          returned: of(-2, -30_000),
        },
        { found: of(3, 45_000) },
      ),
    );
    expect(account).toMatchObject({
      cameIn: of(10, 150_000),
      onHand: of(3, 45_000),
      notAccounted: nothing,
      unexplained: [],
      balancedPercent: 100,
    });
    expect(account.figures.emptied).toEqual(of(4, 300));
    expect(imbalance(account, nothing)).toEqual(nothing);
  });

  it('names what is not explained, each by its reason', () => {
    const account = balanceAccount(
      facts(
        { received: of(100), used: of(-50), 'counted fewer': of(-3), 'transferred out': of(-20) },
        { found: of(10), notFound: of(7), notLookedFor: of(8), onEnded: of(2) },
        of(4),
      ),
    );
    expect(account.unexplained).toEqual([
      { reason: 'counted fewer', ...of(3) },
      { reason: 'lost on the way', ...of(4) },
      { reason: 'not found', ...of(7) },
      { reason: 'not looked for', ...of(8) },
      { reason: 'on ended containers', ...of(2) },
    ]);
    expect(account.notAccounted).toEqual(of(24));
    expect(account.balancedPercent).toBe(76);
    expect(imbalance(account, of(4))).toEqual(nothing);
  });

  it('nets what one count lacks against what another has more', () => {
    const account = balanceAccount(
      facts({ received: of(20), 'counted more': of(3), 'counted fewer': of(-3) }, { found: of(20) }),
    );
    expect(account).toMatchObject({ unexplained: [], balancedPercent: 100, cameIn: of(20) });
  });

  it('counts what is there beyond the book as unexplained too', () => {
    const account = balanceAccount(facts({ received: of(10), 'counted more': of(2) }, { found: of(12) }));
    expect(account).toMatchObject({
      cameIn: of(12),
      notAccounted: nothing,
      unexplained: [{ reason: 'counted more', ...of(2) }],
      balancedPercent: 83,
    });
  });

  it('never says 100 while a piece is missing', () => {
    const account = balanceAccount(facts({ received: of(10_000) }, { found: of(9_999), notFound: of(1) }));
    expect(account.balancedPercent).toBe(99);
  });

  it('has no percentage of nothing', () => {
    expect(balanceAccount(facts({})).balancedPercent).toBeNull();
  });

  it('always sums, whatever moved', () => {
    const amount = fc.record({ pieces: fc.nat({ max: 1_000 }), microlitres: fc.nat({ max: 1_000_000 }) });
    const split = fc.record({ one: fc.nat(), two: fc.nat(), three: fc.nat() });
    fc.assert(
      fc.property(
        fc.array(amount, { minLength: balanceFigures.length, maxLength: balanceFigures.length }),
        split,
        amount,
        (amounts, { one, two, three }, lostOnTheWay) => {
          // On hand is what the movements leave, in four parts; the last takes the rest, also when that is negative.
          const inwards = new Set(['received', 'produced', 'transferred in', 'counted more']);
          const figures = balanceFigures.map((figure, index) => {
            const { pieces, microlitres } = amounts[index] ?? nothing;
            if (figure === 'moved between boxes') return { figure, ...nothing };
            return inwards.has(figure)
              ? { figure, pieces, microlitres }
              : { figure, pieces: -pieces, microlitres: -microlitres };
          });
          const left = sum(figures);
          const parts = [one, two, three].map((part) => of(part % 50, part % 5_000));
          const rest = sum([left, ...parts.map((part) => of(-part.pieces, -part.microlitres))]);
          const [found = nothing, notFound = nothing, notLookedFor = nothing] = parts;
          const onHand = { found, notFound, notLookedFor, onEnded: rest };
          const account = balanceAccount({ figures, onHand, lostOnTheWay });
          expect(account.onHand).toEqual(left);
          expect(imbalance(account, lostOnTheWay)).toEqual(nothing);
          const added = sum(account.unexplained.filter(({ reason }) => reason !== 'counted more'));
          expect(added).toEqual(account.notAccounted);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('the sum of accounts', () => {
  it('adds every term, and takes the percentage of the sums', () => {
    const accounts = [
      balanceAccount(facts({ received: of(10) }, { found: of(9), notFound: of(1) })),
      balanceAccount(facts({ received: of(90) }, { found: of(85), notFound: of(5) })),
      balanceAccount(facts({})),
    ];
    expect(sumOfAccounts(accounts)).toEqual({
      onHand: of(100),
      found: of(94),
      cameIn: of(100),
      notAccounted: of(6),
      unexplained: [{ reason: 'not found', ...of(6) }],
      balancedPercent: 94,
    });
    expect(sumOfAccounts([])).toMatchObject({ cameIn: nothing, balancedPercent: null });
  });
});
