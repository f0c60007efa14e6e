import type { MatchReason } from '../lot-matching/match-reasons.js';

/** What a person is told whose goods or corrected lot a standing hold has caught. */
export function caughtWarning(
  lotCode: string | null,
  { grade, reasons }: { grade: 'certain' | 'possible'; reasons: readonly MatchReason[] },
): string {
  const lot = lotCode === null ? 'This lot' : `The lot ${lotCode}`;
  const because = reasons.map(({ message }) => message).join(' ');
  return grade === 'certain'
    ? `${lot} is recalled. ${because} It is on hold: put it aside and use none of it.`
    : `${lot} may be recalled. ${because} It is on hold until a person decides: put it aside and use none of it.`;
}
