/** How many rows a page holds when nothing is said. */
export const defaultPageSize = 50;

/**
 * One page of rows that were looked up with one more than the limit.
 * @param idOf what the next page is asked for with
 */
export function pageOf<Row>(
  rows: readonly Row[],
  limit: number,
  idOf: (row: Row) => string,
): { shown: Row[]; next: string | null } {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  return { shown, next: rows.length > limit && last !== undefined ? idOf(last) : null };
}
