/** What was looked at when something wrong was found. */
export type Check = 'database' | 'chain' | 'head' | 'row' | 'balance' | 'level';

/** One thing that does not fit, in words, with the row that it is about. */
export interface Finding {
  check: Check;
  studioId: string | null;
  table: string | null;
  id: string | null;
  message: string;
}

/** A head of a chain as something outside the database remembers it: a backup or an exported log. */
export interface RememberedHead {
  /** What remembers it, in words: `the backup 20261125T081500Z-scheduled`. */
  from: string;
  studioId: string;
  sequence: number;
  hash: string;
}

/** All that backups and exported logs remember. */
export interface Remembered {
  heads: RememberedHead[];
  /** What should remember heads and cannot be read, in words. */
  unreadable: string[];
}

/** What was looked at in one studio. */
export interface VerifiedStudio {
  id: string;
  name: string;
  entries: number;
  /** Null when the studio has no head. */
  head: { sequence: number; hash: string } | null;
  /** Rows that were held against the audit log. */
  rows: number;
  balances: number;
  /** Products whose quantity on hand was added up anew. */
  levels: number;
  /** Heads outside the database that were compared with the chain, and the one that reaches furthest. */
  heads: number;
  furthestHead: RememberedHead | null;
}

/** The product register that the studios of a chain share. */
export interface VerifiedRegister {
  chainId: string;
  name: string;
  rows: number;
}

export interface VerifyReport {
  engine: 'sqlite' | 'postgres';
  studios: VerifiedStudio[];
  registers: VerifiedRegister[];
  /** How many things are wrong. */
  wrong: number;
  /** The first of them, in the order of the checks. */
  findings: Finding[];
}
