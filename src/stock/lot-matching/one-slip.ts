/**
 * Whether two texts differ by exactly one slip of the hand: one character missing, added or changed, or two neighbours
 * swapped. That is a distance of one in Damerau's sense (F. J. Damerau, 1964, who found more than four in five misspellings to
 * be one of these [S]).
 */
export function isOneSlipApart(one: string, other: string): boolean {
  const [shorter, longer] = one.length <= other.length ? [one, other] : [other, one];
  if (longer.length - shorter.length > 1 || shorter === longer) return false;
  let start = 0;
  while (start < shorter.length && shorter[start] === longer[start]) start += 1;
  if (longer.length > shorter.length) return shorter.slice(start) === longer.slice(start + 1);
  if (shorter.slice(start + 1) === longer.slice(start + 1)) return true;
  return (
    shorter[start] === longer[start + 1] &&
    shorter[start + 1] === longer[start] &&
    shorter.slice(start + 2) === longer.slice(start + 2)
  );
}

/** Shorter texts than this have so many neighbours that one slip says nothing. */
const shortestJudged = 4;

/** The same, but never for two texts that are too short to tell a slip from another text. */
export function isLikelySlip(one: string, other: string): boolean {
  return Math.max(one.length, other.length) >= shortestJudged && isOneSlipApart(one, other);
}

/** The text without each of its characters in turn: two texts one slip apart are equal to, or share, one of these. */
export function withoutOne(text: string): string[] {
  return [...new Set(Array.from(text, (_, index) => text.slice(0, index) + text.slice(index + 1)))];
}
