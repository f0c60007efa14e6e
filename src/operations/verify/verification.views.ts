export class ChainHeadView {
  sequence: number;
  /** SHA-256 of the entry. */
  hash: string;
}

export class FurthestHeadView {
  /** Such as `the backup 20261125T081500Z-scheduled`. */
  from: string;
  sequence: number;
}

export class FindingView {
  /** What was looked at. */
  check: 'database' | 'chain' | 'head' | 'row' | 'balance' | 'level';
  table: string | null;
  /** Of the row in that table. */
  id: string | null;
  message: string;
}

/** What came out when the studio's record was held against its audit log. */
export class VerificationView {
  /** Entries of the audit log. */
  entries: number;
  head: ChainHeadView | null;
  /** Rows of the studio that were held against the audit log. */
  rows: number;
  /** The same of the product register, which belongs to the chain. */
  registerRows: number;
  balances: number;
  /** Products whose quantity on hand was added up anew. */
  levels: number;
  /** Heads in the service's backups that were compared with the log, and the one that reaches furthest. */
  heads: number;
  furthestHead: FurthestHeadView | null;
  /** How many things are wrong; none: everything fits together. */
  wrong: number;
  /** The first 100 of them. */
  findings: FindingView[];
}
