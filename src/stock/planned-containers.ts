/** What can be wrong with single pieces. */
export const pieceFaults = ['broken seal', 'damaged package'] as const;
export type PieceFault = (typeof pieceFaults)[number];

/** More pieces in one line, or containers in one delivery, are a slip: nobody could label them or put them away. */
export const mostPiecesInLine = 10_000;
export const mostContainersInDelivery = 2_000;

export interface PlannedContainer {
  form: 'bottle' | 'box';
  pieces: number;
  /** Put aside for this; null for sound pieces. */
  fault: PieceFault | null;
}

/**
 * The containers a received line makes: a bottle for each piece of what is opened and used over time, else a box for each
 * pack that came, so that each gets its label and place; loose pieces make one box, and a broken pack a box of its rest.
 * Faulty pieces come apart from the sound ones, so that they can be put aside alone.
 *
 * @param packPieces pieces in one pack; 1 for loose pieces
 * @param faults pieces by fault; a piece with two faults is named under one
 * @returns what stands on the shelf, sound first; or how many more pieces are faulty than came
 */
export function plannedContainers(
  stockForm: 'container' | 'pieces',
  pieces: number,
  packPieces: number,
  faults: readonly { kind: PieceFault; pieces: number }[],
): { containers: PlannedContainer[] } | { faultyPieces: number } {
  const faultyPieces = faults.reduce((sum, fault) => sum + fault.pieces, 0);
  if (faultyPieces > pieces) return { faultyPieces };
  const groups: { pieces: number; fault: PieceFault | null }[] = [
    { pieces: pieces - faultyPieces, fault: null },
    ...pieceFaults.map((kind) => ({
      pieces: faults.filter((fault) => fault.kind === kind).reduce((sum, fault) => sum + fault.pieces, 0),
      fault: kind,
    })),
  ].filter((group) => group.pieces > 0);
  if (stockForm === 'pieces') {
    const boxPieces = packPieces > 1 ? packPieces : pieces;
    return {
      containers: groups.flatMap((group) =>
        Array.from(
          { length: Math.ceil(group.pieces / boxPieces) },
          (_, index): PlannedContainer => ({
            form: 'box',
            pieces: Math.min(boxPieces, group.pieces - index * boxPieces),
            fault: group.fault,
          }),
        ),
      ),
    };
  }
  const bottle = (fault: PieceFault | null): PlannedContainer => ({ form: 'bottle', pieces: 1, fault });
  return {
    containers: groups.flatMap((group) => Array.from({ length: group.pieces }, () => bottle(group.fault))),
  };
}
