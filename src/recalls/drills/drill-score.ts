/** What a drill brought to light. */
export interface DrillFacts {
  /** Recorded uses of the lots, through blends too, less those that were reversed. */
  uses: number;
  /** Of these, how many lead to a client and a session by a lot that was read or typed, not picked from a list. */
  tracedUses: number;
  /** Pieces that came in, and how many of them are accounted for. */
  pieces: number;
  explainedPieces: number;
  containersToFind: number;
  containersFound: number;
  startedAt: string;
  closedAt: string;
}

/** Shares in per cent, cut to a tenth; null: there was nothing to count. */
export interface DrillScore {
  tracedPercent: number | null;
  balancedPercent: number | null;
  foundPercent: number | null;
  /** From the opening to the closing, cut to a tenth. */
  minutes: number;
}

/** How well a drill went. Cut and not rounded: 100 is said only of all. */
export function drillScore(facts: DrillFacts): DrillScore {
  return {
    tracedPercent: percent(facts.tracedUses, facts.uses),
    balancedPercent: percent(facts.explainedPieces, facts.pieces),
    foundPercent: percent(facts.containersFound, facts.containersToFind),
    minutes: minutesBetween(facts.startedAt, facts.closedAt),
  };
}

/** Cut to a tenth of a per cent; null of nothing. */
export function percent(part: number, whole: number): number | null {
  if (whole <= 0) return null;
  return Math.floor((Math.min(Math.max(part, 0), whole) * 1_000) / whole) / 10;
}

/** Minutes from one instant to a later one, cut to a tenth. */
export function minutesBetween(from: string, to: string): number {
  return Math.max(0, Math.floor((Date.parse(to) - Date.parse(from)) / 6_000)) / 10;
}
