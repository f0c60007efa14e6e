/** How much of something: pieces, and an estimate of its volume; a bottle is one piece. */
export interface Quantity {
  pieces: number;
  microlitres: number;
}

/** What one of the two ends said of a line. */
export interface SaidOfLine {
  kind: 'arrived' | 'turned up' | 'withdrawn';
  /** What came into a container by it. */
  came: Quantity;
  /** Sent and not arrived; negative for what had been lost and turned up. */
  lost: Quantity;
}

/** Where what was sent is. The five add up: sent = in transit + arrived + lost + back. */
export interface LineBalance {
  sent: Quantity;
  inTransit: Quantity;
  arrived: Quantity;
  lost: Quantity;
  /** Called back by the sender. */
  back: Quantity;
}

export type LineState = 'in transit' | 'arrived' | 'lost' | 'withdrawn';

export const nothing: Quantity = { pieces: 0, microlitres: 0 };

/**
 * So many pieces of a whole, with their share of its volume in whole microlitres, rounded down. What remains is the whole
 * less the part, so that nothing is made or lost by dividing.
 */
export function partOf(whole: Quantity, pieces: number): Quantity {
  if (pieces >= whole.pieces) return { pieces: whole.pieces, microlitres: whole.microlitres };
  return { pieces, microlitres: Math.floor((whole.microlitres * pieces) / whole.pieces) };
}

export function plus(one: Quantity, other: Quantity): Quantity {
  return { pieces: one.pieces + other.pieces, microlitres: one.microlitres + other.microlitres };
}

export function minus(one: Quantity, other: Quantity): Quantity {
  return { pieces: one.pieces - other.pieces, microlitres: one.microlitres - other.microlitres };
}

/** Where the goods of a line are, by all that was said of it: all in transit until somebody says what became of it. */
export function lineBalance(sent: Quantity, said: readonly SaidOfLine[]): LineBalance {
  const sum = (quantities: readonly Quantity[]) => quantities.reduce(plus, nothing);
  const atReceiver = said.filter(({ kind }) => kind !== 'withdrawn');
  return {
    sent,
    inTransit: said.length === 0 ? { ...sent } : nothing,
    arrived: sum(atReceiver.map(({ came }) => came)),
    lost: sum(said.map(({ lost }) => lost)),
    back: sum(said.filter(({ kind }) => kind === 'withdrawn').map(({ came }) => came)),
  };
}

export function lineState({ inTransit, arrived, back }: LineBalance): LineState {
  if (inTransit.pieces > 0) return 'in transit';
  if (back.pieces > 0) return 'withdrawn';
  return arrived.pieces > 0 ? 'arrived' : 'lost';
}
