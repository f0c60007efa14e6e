/** One entry's word on a row: as the entry's write found it and as it left it. Digests are opaque here. */
export interface RowChange {
  /** The studio and the sequence of the entry. */
  studioId: string;
  sequence: number;
  /** Null when it inserted the row, or was written before entries told it. */
  before: string | null;
  /** Null when it removed the row. */
  after: string | null;
  /** The number the database gave the row; null when the entry tells none. */
  number: number | null;
}

/** The row as it stands in its table. */
export interface StandingRow {
  digest: string;
  number: number | null;
}

/** What is wrong with a row, and the entry that shows it. */
export type RowFault =
  | { kind: 'in no entry' }
  /** The last entry left it otherwise; `standsAs`: an earlier entry left it so. */
  | { kind: 'changed'; last: RowChange; standsAs: RowChange | null }
  /** The entry `at` found it otherwise than the one before had left it. */
  | { kind: 'changed in between'; last: RowChange; at: RowChange }
  /** The entry `at` found a row that no entry had made. */
  | { kind: 'not made by an entry'; at: RowChange }
  | { kind: 'gone'; last: RowChange }
  | { kind: 'back'; last: RowChange }
  | { kind: 'renumbered'; at: RowChange; number: number | null };

/**
 * Holds a row against all that the audit log says of it.
 * @param changes of this row, those of one studio in the order of its chain
 * @param standing undefined when the row is not there
 * @returns undefined when all is as it should be
 */
export function rowFault(
  changes: readonly RowChange[],
  standing: StandingRow | undefined,
): RowFault | undefined {
  let last: RowChange | undefined;
  const history = inOrder(changes);
  for (const change of history) {
    const left = last?.after ?? null;
    if (change.before !== null && change.before !== left) {
      return last && left !== null
        ? { kind: 'changed in between', last, at: change }
        : { kind: 'not made by an entry', at: change };
    }
    last = change;
  }
  if (last === undefined) return standing && { kind: 'in no entry' };
  if (standing === undefined) return last.after === null ? undefined : { kind: 'gone', last };
  if (last.after === null) return { kind: 'back', last };
  if (last.after !== standing.digest) {
    const standsAs = history.findLast(({ after }) => after === standing.digest) ?? null;
    return { kind: 'changed', last, standsAs };
  }
  const numbering = history.find(({ number }) => number !== null && number !== standing.number);
  return numbering && { kind: 'renumbered', at: numbering, number: standing.number };
}

/**
 * The order in which a row was changed. Each studio's chain is in order; where several studios wrote one row, as those of
 * a chain do in its register, each change follows the one that left what it found.
 */
function inOrder(changes: readonly RowChange[]): readonly RowChange[] {
  const [first] = changes;
  if (changes.every(({ studioId }) => studioId === first?.studioId)) return changes;
  const waiting = [...changes];
  const ordered: RowChange[] = [];
  let left: string | null = null;
  for (let next = takeNext(waiting, left); next !== undefined; next = takeNext(waiting, left)) {
    ordered.push(next);
    left = next.after;
  }
  return ordered;
}

/** Takes out the change that found what was left; failing that, the first. Of each studio only its first may be next. */
function takeNext(waiting: RowChange[], left: string | null): RowChange | undefined {
  const seen = new Set<string>();
  const index = waiting.findIndex(({ studioId, before }) => {
    const isFirst = !seen.has(studioId);
    seen.add(studioId);
    return isFirst && before === left;
  });
  return waiting.splice(Math.max(index, 0), 1)[0];
}
