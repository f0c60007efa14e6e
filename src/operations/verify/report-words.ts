import type { RememberedHead, VerifiedStudio, VerifyReport } from './verify-report.js';

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
    ...(untold > 0 ? [`  and ${untold} more.`] : []),
  ];
}

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
}
