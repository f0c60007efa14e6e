/** All that is said of the complications of one session fits into so many characters. */
export const longestComplicationsInAll = 20_000;

/**
 * The complications of a session with what was noticed later: appended on a line of its own with the day on which it was
 * told, so that what was said before stays readable as it was.
 *
 * @param earlier null: nothing was asked until now
 * @param text what was noticed later
 * @param day local day of the studio, YYYY-MM-DD
 * @returns null when it would be longer than `longestComplicationsInAll`
 */
export function addedComplications(earlier: string | null, text: string, day: string): string | null {
  const added = `${day}: ${text}`;
  const all = earlier === null ? added : `${earlier}\n${added}`;
  return all.length > longestComplicationsInAll ? null : all;
}
