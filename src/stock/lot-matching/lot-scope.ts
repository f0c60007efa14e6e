/** Calendar days, both ends included, `YYYY-MM-DD`; null: open at that end. */
export interface DaySpan {
  from: string | null;
  through: string | null;
}

/**
 * Lots of a product as a notice names them. An expiry that was written beside a code or a range belongs to it.
 *
 * A range holds the codes from one through the other, both included: of equal length with leading zeros kept.
 */
export type LotTerm =
  | { kind: 'all lots' }
  | { kind: 'code'; code: string; useBy: DaySpan | null }
  | { kind: 'code range'; from: string; through: string; useBy: DaySpan | null }
  | { kind: 'use-by'; useBy: DaySpan }
  | { kind: 'manufactured'; manufactured: DaySpan };

/** One product of a notice, and which of its lots. */
export interface ScopeItem {
  /** Names as the notice writes them; null: not said. */
  makerName: string | null;
  productName: string | null;
  shade: string | null;
  /** 14 digits each. */
  gtins: string[];
  /** Products of the register that a person said are meant; when there are any, names and GTINs decide nothing more. */
  productIds: string[];
  /** Empty: the notice names no lots, so that each may be meant. */
  lots: LotTerm[];
  /** "Including but not limited to": lots beyond those named may be meant too. */
  openEnded: boolean;
}

/** What a notice is about. At least one item. */
export interface LotScope {
  items: ScopeItem[];
}

export type MatchGrade = 'certain' | 'possible' | 'not';
