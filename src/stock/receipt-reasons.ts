/** Why goods are put aside at receipt until a person decides; a lot's reasons come from what is printed on it. */
export type LotReceiptReason = 'no lot printed' | 'lot unreadable' | 'no use-by printed' | 'already past';

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

/**
 * Whether what arrived is put aside although its lot is not past: it joined the lot by the date on record, but what is
 * printed on it is past. The record may be right and the print a slip; until a person decided, the earlier date counts.
 *
 * @param printedUseBy last day of use printed on what arrived, YYYY-MM-DD; null when none is
 * @param lotReasons the reasons of the lot it joined
 * @param day the studio's local day of receipt, YYYY-MM-DD
 */
export function isPastByItsOwnPrint(
  printedUseBy: string | null,
  lotReasons: readonly LotReceiptReason[],
  day: string,
): boolean {
  return printedUseBy !== null && printedUseBy < day && !lotReasons.includes('already past');
}
