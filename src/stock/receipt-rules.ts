/** Why goods are put aside at receipt until a person decides; a lot's reasons come from what is printed on it. */
export type LotReceiptReason = 'no lot printed' | 'lot unreadable' | 'no use-by printed' | 'already past';
/** What can be wrong with single pieces. */
export const pieceFaults = ['broken seal', 'damaged package'] as const;
export type PieceFault = (typeof pieceFaults)[number];

/**
 * The reasons for which a lot is put aside at receipt, in the order in which a person should look at them. The use-by
 * date is the last day of use (ISO 15223-1:2021, 5.1.4 [S]), so goods are past only on the day after it.
 *
 * @param day the studio's local day of receipt, YYYY-MM-DD
 */
export function lotReasonsAtReceipt(
  lot: { codeState: 'printed' | 'none printed' | 'unreadable'; useBy: string | null },
  day: string,
): LotReceiptReason[] {
  const reasons: LotReceiptReason[] = [];
  if (lot.codeState === 'none printed') reasons.push('no lot printed');
  if (lot.codeState === 'unreadable') reasons.push('lot unreadable');
  if (lot.useBy === null) reasons.push('no use-by printed');
  else if (lot.useBy < day) reasons.push('already past');
  return reasons;
}

/** A lot on record that goods join. */
export interface JoinedLot {
  /** Its reasons by what is recorded now. */
  reasons: readonly LotReceiptReason[];
  /** Its reasons before this delivery corrected its date; the same when it did not. */
  reasonsBefore: readonly LotReceiptReason[];
  /** Reasons of the open holds on the lot. */
  open: readonly string[];
  /** Reasons for which a hold on the lot was released: a person decided. */
  released: readonly string[];
}

/**
 * The reasons that still ask for a decision when goods join a lot on record. What is missing on its label is asked once
 * for the lot, for a lot that a late record made too, where nobody was asked yet; that its date has passed is asked
 * again for every arrival. What a correction brings up is asked for the whole lot, whatever was decided before.
 */
export function lotReasonsOnJoining({ reasons, reasonsBefore, open, released }: JoinedLot): {
  onLot: LotReceiptReason[];
  onArrivals: LotReceiptReason[];
} {
  const asked = reasons.filter((reason) => !open.includes(reason));
  const onLot = asked.filter(
    (reason) => !reasonsBefore.includes(reason) || (reason !== 'already past' && !released.includes(reason)),
  );
  return {
    onLot,
    onArrivals: asked.filter((reason) => !onLot.includes(reason) && reason === 'already past'),
  };
}

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
