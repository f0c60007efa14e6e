const firstMilliseconds = 1_000;
const longestMilliseconds = 60_000;

/**
 * How long to wait before a lost stream is opened again: twice as long after each failure, up to a minute. Half of it is
 * left to chance, so that after a restart of the service not all pages ask at once.
 *
 * @param failures in a row, the last one included
 * @param chance 0 up to 1
 * @returns milliseconds
 */
export function waitBeforeRetry(failures: number, chance: number): number {
  const whole = Math.min(longestMilliseconds, firstMilliseconds * 2 ** Math.min(failures - 1, 10));
  return (whole * (1 + chance)) / 2;
}
