/** A stream that was lost, and one that the service refused, as when too many are open. */
const waits = {
  lost: { first: 1_000, longest: 60_000 },
  refused: { first: 60_000, longest: 600_000 },
} as const;

/**
 * How long to wait before a stream is opened again: twice as long after each failure, up to a minute where it was lost and
 * ten where it was refused. Half of it is left to chance, so that after a restart of the service not all pages ask at once.
 *
 * @param failures in a row, the last one included
 * @param chance 0 up to 1
 * @returns milliseconds
 */
export function waitBeforeRetry(how: keyof typeof waits, failures: number, chance: number): number {
  const { first, longest } = waits[how];
  const whole = Math.min(longest, first * 2 ** Math.min(failures - 1, 10));
  return (whole * (1 + chance)) / 2;
}
