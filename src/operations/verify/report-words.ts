/** What was looked at when something wrong was found. */
export type Check = 'database' | 'chain' | 'head' | 'row' | 'balance' | 'level';

/** One thing that does not fit, in words, with the row that it is about. */
export interface Finding {
  check: Check;
  /** Or the chain, for what is in its register; null for what belongs to neither. */
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

/** Whose findings are told: those of one studio, its chain's register included; of the rest only that there are some. */
export interface Concern {
  studioId: string;
  chainId: string;
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

/** How many of the things that are wrong are told after the first. */
const mostTold = 20;

/** A report in plain sentences, a line each: what was looked at in each studio, then the first thing that is wrong. */
export function reportLines(report: VerifyReport): string[] {
  return [
    ...report.studios.flatMap(studioLines),
    ...report.registers.map(
      ({ name, chainId, rows }) => `Product register of ${name} (${chainId}): ${counted(rows, 'row')}.`,
    ),
    ...verdictLines(report),
  ];
}

function studioLines({
  id,
  name,
  entries,
  head,
  rows,
  balances,
  levels,
  heads,
  furthestHead,
}: VerifiedStudio): string[] {
  return [
    `Studio ${name} (${id})`,
    `  Audit log: ${counted(entries, 'entry', 'entries')}${head === null ? '' : `; its head is entry ${head.sequence}, ${head.hash}`}.`,
    `  Held against it: ${counted(rows, 'row')}.`,
    `  Held against the ledger: ${counted(balances, 'balance')}, and what is on hand of ${counted(levels, 'product')}.`,
    `  ${headsLine(heads, furthestHead)}`,
  ];
}

function headsLine(heads: number, furthest: RememberedHead | null): string {
  if (furthest === null) {
    return 'No backup and no exported log remembers a head of this chain: a cut end, or a chain computed anew, would not show.';
  }
  return `Compared with ${counted(heads, 'head')} in backups and exported logs; the furthest is entry ${furthest.sequence}, in ${furthest.from.replace(/,$/, '')}.`;
}

function verdictLines({ wrong, findings }: VerifyReport): string[] {
  const [first, ...further] = findings;
  if (!first) return ['Everything fits together.'];
  const told = further.slice(0, mostTold);
  const untold = wrong - 1 - told.length;
  return [
    wrong === 1 ? 'One thing is wrong:' : `${counted(wrong, 'thing')} are wrong. The first:`,
    `  ${first.message}`,
    ...(told.length > 0 ? ['Then:', ...told.map(({ message }) => `  ${message}`)] : []),
    ...(untold > 0 ? [`  and ${untold.toLocaleString('en')} more.`] : []),
  ];
}

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
}
