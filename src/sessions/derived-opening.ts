/**
 * Whatever was taken of a bottle was taken out of an open one.
 *
 * @param openedAt instant of its opening by the record; null: it is recorded as sealed
 * @param found instants at which it was open
 * @returns the instant to record as its opening; null when nothing tells of an earlier one
 */
export function earlierOpening(openedAt: string | null, found: readonly string[]): string | null {
  const [first] = [...found].sort();
  return first !== undefined && (openedAt === null || first < openedAt) ? first : null;
}

/** What the record tells of an open bottle when a use of it turns out to be a mistake. Instants are ISO 8601 in UTC. */
export interface OpeningFacts {
  /** When it was opened, as the record has it. */
  openedAt: string;
  /** When the mistaken use had it opened: its first drop, or its own instant. */
  derivedAt: readonly string[];
  /**
   * When everything else that still stands found or had it open: uses, what was wasted or poured of it, drops in cups,
   * and an opening that was recorded for itself.
   */
  standing: readonly string[];
}

export type OpeningAfterReversal =
  | { state: 'sealed'; openedAt: null }
  | { state: 'opened'; openedAt: string };

/**
 * What is left of an opening once a use is reversed. Nobody said that the bottle was opened when the opening was only
 * derived from that use: then the next thing that had it open tells when it was, and without any it is sealed as before.
 * An opening at any other instant was recorded for itself and stands.
 */
export function openingAfterReversal({ openedAt, derivedAt, standing }: OpeningFacts): OpeningAfterReversal {
  if (!derivedAt.includes(openedAt)) return { state: 'opened', openedAt };
  const [first] = [...standing].sort();
  return first === undefined ? { state: 'sealed', openedAt: null } : { state: 'opened', openedAt: first };
}
