/** The pieces of one box. Those on trays still count as its own until their session is completed. */
export interface BoxPieces {
  /** By the book, those on trays included. */
  booked: number;
  /** Laid out for sessions. */
  onTrays: number;
}

/**
 * Whether pieces may be taken out of a box for good, to another box or back to the supplier: only what no tray holds.
 *
 * @returns null when they may, else why not and what to do
 */
export function refusalToTake({ booked, onTrays }: BoxPieces, pieces: number): string | null {
  if (pieces > booked) {
    return `${pieces} pieces were named, but the book shows ${booked} in this box. Count the box first, then record this again.`;
  }
  const free = Math.max(0, booked - onTrays);
  if (pieces <= free) return null;
  return `${pieces} pieces were named, but of the ${booked} in this box ${onTrays} lie on trays. At most ${free} can be taken; take the others off their trays first.`;
}

/** What a person who throws pieces away should know; that they are gone is a fact all the same. */
export function warningsOfWaste({ booked, onTrays }: BoxPieces, pieces: number): string[] {
  const eaten = Math.min(onTrays, pieces - (booked - onTrays));
  if (eaten <= 0) return [];
  return [
    `${onTrays} of the ${booked} pieces in this box lie on trays, so ${eaten} of those thrown away are missing there. Take them off their trays, and scan others.`,
  ];
}

/** What a count of a box finds: the pieces in it, and those that lie on trays. */
export function countedPieces(
  { booked, onTrays }: BoxPieces,
  inTheBox: number,
): { present: number; warnings: string[] } {
  const present = inTheBox + onTrays;
  if (onTrays === 0) return { present, warnings: [] };
  return {
    present,
    warnings: [
      `${onTrays} more pieces lie on trays and were counted as here: ${present} in all, the book showed ${booked}. If the ones on trays were counted too, count the box again without them.`,
    ],
  };
}
