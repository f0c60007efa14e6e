/** How long a symbol is out of the picture before it counts as shown again: longer than a hand trembles or light flickers. */
export const absentMilliseconds = 1_500;

/** What the camera has in its picture, and what left it a moment ago: since when each is missing, if it is. */
export type Showings = ReadonlyMap<string, { readonly missingSince?: number }>;

/** Before the first look. */
export const nothingShown: Showings = new Map();

/**
 * One look of the camera: which of the symbols in the picture are handed on. A symbol that stays, trembles or is missed
 * for a moment is one showing, handed on once; it is another one only after looks without it over `absentMilliseconds`.
 * Without a look nothing is missing, however long that takes.
 *
 * @param before what the look before answered
 * @param symbols in the picture now, each as its text with its symbology identifier in front; in any order, also twice
 * @param at milliseconds by a clock that never goes back
 */
export function look(
  before: Showings,
  symbols: readonly string[],
  at: number,
): { showings: Showings; shown: readonly string[] } {
  const seen = new Set(symbols);
  const hasLeft = (missingSince: number | undefined) =>
    missingSince !== undefined && at - missingSince >= absentMilliseconds;
  const remembered = [...before].filter(([, { missingSince }]) => !hasLeft(missingSince));
  const stillShown = new Set(remembered.map(([symbol]) => symbol));
  return {
    shown: [...seen].filter((symbol) => !stillShown.has(symbol)),
    showings: new Map([
      ...remembered
        .filter(([symbol]) => !seen.has(symbol))
        .map(([symbol, { missingSince = at }]) => [symbol, { missingSince }] as const),
      ...[...seen].map((symbol) => [symbol, {}] as const),
    ]),
  };
}
