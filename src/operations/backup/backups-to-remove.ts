/** A complete backup as it lies in the folder of backups. */
export interface KeptBackup {
  name: string;
  /** Whether all its files are there; a damaged one is not counted as kept. */
  whole: boolean;
}

/**
 * Which backups may go when one was made, the oldest first: all that are older than the newest `keep` whole ones. As long
 * as there are not more whole ones than that, none. Those of a later name were made by a clock that was ahead: they are
 * not counted, and stay until their time has come.
 * @param keep at least 1
 * @param made the name of the one just made
 */
export function backupsToRemove(backups: readonly KeptBackup[], keep: number, made: string): string[] {
  const known = backups.filter(({ name }) => name <= made);
  const wholeNewestFirst = known
    .filter(({ whole }) => whole)
    .map(({ name }) => name)
    .sort()
    .reverse();
  const oldestKept = wholeNewestFirst[Math.max(1, keep) - 1];
  if (oldestKept === undefined) return [];
  return known
    .map(({ name }) => name)
    .filter((name) => name < oldestKept)
    .sort();
}
