/** What was written down of a label. */
export interface WrittenLot {
  productId: string;
  /** Null when none was printed or it could not be read. */
  code: string | null;
  /** Last day of use, YYYY-MM-DD; null when none was written down. */
  useBy: string | null;
}

/** A lot on record, once for each code printed on it. */
export interface LotOnRecord extends WrittenLot {
  lotId: string;
}

/**
 * The lot that a paper note names: the one of the product with that code and that use-by date. A note without a date
 * means the lot without one, else the only lot that has the code: people leave dates out. Unlike goods at receipt, where
 * the same code with another date is a question, what touched a client is recorded at once, so another date is another lot.
 *
 * @returns null when it is not on record, or when nothing tells which of several it is
 */
export function matchWrittenLot(written: WrittenLot, recorded: readonly LotOnRecord[]): string | null {
  if (written.code === null) return null;
  const same = recorded.filter((lot) => lot.productId === written.productId && lot.code === written.code);
  const exact = same.find((lot) => lot.useBy === written.useBy);
  if (exact) return exact.lotId;
  if (written.useBy !== null) return null;
  const [only, ...others] = new Set(same.map((lot) => lot.lotId));
  return only !== undefined && others.length === 0 ? only : null;
}

/** The lots of the product that have the code under another date, each once: what a lot made for the note is told of. */
export function sistersOf(written: WrittenLot, recorded: readonly LotOnRecord[]): LotOnRecord[] {
  if (written.code === null) return [];
  const sisters = new Map<string, LotOnRecord>();
  for (const lot of recorded) {
    const same = lot.productId === written.productId && lot.code === written.code;
    if (same && lot.useBy !== written.useBy && !sisters.has(lot.lotId)) sisters.set(lot.lotId, lot);
  }
  return [...sisters.values()];
}
