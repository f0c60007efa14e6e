export const balanceFigures = [
  'received',
  'produced',
  'transferred in',
  'counted more',
  'used',
  'emptied',
  'blended',
  'wasted',
  'returned',
  'transferred out',
  'counted fewer',
  'moved between boxes',
] as const;

/**
 * The terms of an account, finer than the kinds of movements. An adjustment is `emptied` when it wrote off what the book
 * still showed of a bottle that was used up, else `counted more` or `counted fewer` by its sign. What went from box to box
 * in the studio is neither sent nor received.
 */
export type BalanceFigure = (typeof balanceFigures)[number];

export interface Quantity {
  pieces: number;
  /** An estimate. */
  microlitres: number;
}

/** The sum of the movements of one figure, signed as the ledger has it: what left is negative. */
export interface FigureFact extends Quantity {
  figure: BalanceFigure;
}

/** What is on hand by the book, by how it stands; it adds up to the sum of the movements. */
export interface OnHandFacts {
  found: Quantity;
  notFound: Quantity;
  notLookedFor: Quantity;
  /** Left by the book in containers that are recorded as finished or discarded. */
  onEnded: Quantity;
}

export type UnexplainedReason =
  | 'counted more'
  | 'counted fewer'
  | 'lost on the way'
  | 'not found'
  | 'not looked for'
  | 'on ended containers';

export interface BalanceFacts {
  figures: readonly FigureFact[];
  onHand: OnHandFacts;
  /** Of what was transferred out: what did not arrive in the other studio. */
  lostOnTheWay: Quantity;
}

export interface BalanceAccount {
  /** Positive for what the word says. */
  figures: Record<BalanceFigure, Quantity>;
  /** By the ledger. */
  onHand: Quantity;
  found: Quantity;
  cameIn: Quantity;
  notAccounted: Quantity;
  /** Only what is not zero. */
  unexplained: (Quantity & { reason: UnexplainedReason })[];
  balancedPercent: number | null;
}

const incoming: ReadonlySet<BalanceFigure> = new Set<BalanceFigure>([
  'received',
  'produced',
  'transferred in',
  'counted more',
  'moved between boxes',
]);

const leaving = ['used', 'emptied', 'blended', 'wasted', 'returned', 'transferred out'] as const;

/**
 * The account of a lot:
 *
 * received + produced + transferred in + counted more = used + emptied + blended + wasted + returned + transferred out
 * + found on hand + not accounted,
 *
 * where counts are netted first, since what one box lacks another may have. It holds for pieces, exactly, and for
 * volumes, which are estimates on both sides.
 */
export function balanceAccount({ figures: facts, onHand, lostOnTheWay }: BalanceFacts): BalanceAccount {
  const figures = Object.fromEntries(
    balanceFigures.map((figure) => [figure, signed(facts, figure, incoming.has(figure) ? 1 : -1)]),
  ) as Record<BalanceFigure, Quantity>;
  const counted = minus(figures['counted more'], figures['counted fewer']);
  const more = { pieces: Math.max(0, counted.pieces), microlitres: Math.max(0, counted.microlitres) };
  const fewer = { pieces: Math.max(0, -counted.pieces), microlitres: Math.max(0, -counted.microlitres) };
  const cameIn = sum([figures.received, figures.produced, figures['transferred in'], more]);
  const { found, notFound, notLookedFor, onEnded } = onHand;
  const notAccounted = sum([fewer, lostOnTheWay, notFound, notLookedFor, onEnded]);
  const unexplained = (
    [
      ['counted more', more],
      ['counted fewer', fewer],
      ['lost on the way', lostOnTheWay],
      ['not found', notFound],
      ['not looked for', notLookedFor],
      ['on ended containers', onEnded],
    ] as const
  )
    .filter(([, { pieces, microlitres }]) => pieces !== 0 || microlitres !== 0)
    .map(([reason, quantity]) => ({ reason, ...quantity }));
  return {
    figures,
    onHand: sum([found, notFound, notLookedFor, onEnded]),
    found,
    cameIn,
    notAccounted,
    unexplained,
    balancedPercent: percentOf(cameIn.pieces, more.pieces + notAccounted.pieces),
  };
}

/**
 * What is missing on the right-hand side of the equation above; zero in both unless the record contradicts itself.
 */
export function imbalance(
  { figures, cameIn, found, notAccounted }: BalanceAccount,
  lost: Quantity,
): Quantity {
  const left = sum(leaving.map((figure) => figures[figure]));
  return minus(cameIn, minus(sum([left, found, notAccounted]), lost));
}

/** The accounts of several lots as one: each term is the sum of theirs. */
export function sumOfAccounts(accounts: readonly BalanceAccount[]): Omit<BalanceAccount, 'figures'> {
  const total = (of: (account: BalanceAccount) => Quantity) => sum(accounts.map(of));
  const unexplained = new Map<UnexplainedReason, Quantity>();
  for (const account of accounts) {
    for (const { reason, ...quantity } of account.unexplained) {
      unexplained.set(reason, sum([unexplained.get(reason) ?? nothing, quantity]));
    }
  }
  const cameIn = total((account) => account.cameIn);
  const open = [...unexplained.values()].reduce((pieces, quantity) => pieces + quantity.pieces, 0);
  return {
    onHand: total((account) => account.onHand),
    found: total((account) => account.found),
    cameIn,
    notAccounted: total((account) => account.notAccounted),
    unexplained: [...unexplained].map(([reason, quantity]) => ({ reason, ...quantity })),
    balancedPercent: percentOf(cameIn.pieces, open),
  };
}

export const nothing: Quantity = { pieces: 0, microlitres: 0 };

export function sum(quantities: readonly Quantity[]): Quantity {
  return quantities.reduce(
    (total, { pieces, microlitres }) => ({
      pieces: total.pieces + pieces,
      microlitres: total.microlitres + microlitres,
    }),
    nothing,
  );
}

function minus(one: Quantity, other: Quantity): Quantity {
  return { pieces: one.pieces - other.pieces, microlitres: one.microlitres - other.microlitres };
}

function signed(facts: readonly FigureFact[], figure: BalanceFigure, sign: 1 | -1): Quantity {
  const { pieces, microlitres } = sum(facts.filter((fact) => fact.figure === figure));
  // Never -0, which no JSON tells from 0 but every comparison does.
  return { pieces: sign * pieces || 0, microlitres: sign * microlitres || 0 };
}

/** Whole percent, rounded down, so that 100 means all of it. */
function percentOf(cameIn: number, unexplained: number): number | null {
  if (cameIn <= 0) return null;
  return Math.floor((100 * Math.max(0, cameIn - unexplained)) / cameIn);
}
