/** Longer series are not foretold better, and larger counts are no studio's. */
export const MOST_PERIODS_READ = 1_000;
const LARGEST_COUNT_READ = 100_000;

/** Blank, or as statistics programs write that nothing is known. */
const nothing = /^(NA|NaN|null|-)?$/i;
const count = /^\d+(\.0*)?$/;

/**
 * One series from the cells of a line or a column, the oldest period first. The first cell may be a name. Nothing at the
 * beginning or the end is left out: the series began later, or ended.
 *
 * @param place where it stands, such as `Line 3`
 * @returns null when no cell is a count: a heading
 * @throws RangeError that says which cell cannot be read
 */
export function seriesOfCells(cells: readonly string[], place: string): number[] | null {
  const trimmed = cells.map((cell) => cell.trim());
  if (!trimmed.some((cell) => count.test(cell))) return null;
  const named = !count.test(trimmed[0] ?? '') && !nothing.test(trimmed[0] ?? '') ? 1 : 0;
  let first = named;
  let last = trimmed.length;
  while (nothing.test(trimmed[first] ?? '') && first < last) first++;
  while (nothing.test(trimmed[last - 1] ?? '') && last > first) last--;
  if (last - first > MOST_PERIODS_READ) {
    throw new RangeError(
      `${place} has ${last - first} periods. Allowed are ${MOST_PERIODS_READ}. Leave out the oldest.`,
    );
  }
  return trimmed.slice(first, last).map((cell, index) => {
    const value = Number(cell);
    if (count.test(cell) && value <= LARGEST_COUNT_READ) return value;
    const seen = cell === '' ? 'is empty between two counts' : `is "${cell.slice(0, 40)}"`;
    throw new RangeError(
      `${place}: cell ${first + index + 1} ${seen}. Allowed are whole numbers from 0 to ${LARGEST_COUNT_READ}. Correct the file.`,
    );
  });
}
