/** What is printed on goods and decides which lot they belong to. */
export interface LotIdentity {
  /** Null when no code is printed or it cannot be read. */
  code: string | null;
  /** Last day of use, YYYY-MM-DD; null when none is printed. */
  useBy: string | null;
}

/** A lot on record, of the same product. */
export interface RecordedLot extends LotIdentity {
  lotId: string;
}

export const sameCodeDecisions = ['separate lot', 'keep recorded date', 'correct recorded date'] as const;
/** What a person decides when a code is known with another use-by date. */
export type SameCodeDecision = (typeof sameCodeDecisions)[number];

export type LotMatch =
  | { kind: 'new lot' }
  | { kind: 'joins'; lotId: string }
  /** Joins the lot, whose recorded date becomes the one given. */
  | { kind: 'corrects'; lotId: string }
  | { kind: 'question'; recorded: RecordedLot[]; choices: SameCodeDecision[] };

/**
 * Decides which lot received goods belong to: the one of the same code and use-by date; none when their code is not
 * known, since then nothing says that they are of one batch. The same code with another date is a question: a
 * misprint, a misreading, or two batches. Dates that several lots of the code bear cannot be kept or corrected as if
 * there were one.
 */
export function matchLot(
  printed: LotIdentity,
  lotsOfProduct: readonly RecordedLot[],
  decision: SameCodeDecision | undefined,
): LotMatch {
  if (printed.code === null) return { kind: 'new lot' };
  const sameCode = lotsOfProduct.filter((lot) => lot.code === printed.code);
  const same = sameCode.find((lot) => lot.useBy === printed.useBy);
  if (same) return { kind: 'joins', lotId: same.lotId };
  const [first, ...others] = sameCode;
  if (first === undefined || decision === 'separate lot') return { kind: 'new lot' };
  const choices: SameCodeDecision[] = others.length === 0 ? [...sameCodeDecisions] : ['separate lot'];
  if (decision === undefined || !choices.includes(decision)) {
    return { kind: 'question', recorded: sameCode, choices };
  }
  return { kind: decision === 'keep recorded date' ? 'joins' : 'corrects', lotId: first.lotId };
}
