/** A complete backup as it lies in the folder of backups. */
export interface KeptBackup {
  name: string;
  /** Whether all its files are there; a damaged one is not counted as kept. */
  whole: boolean;
}

/**
 * Which backups may go, the oldest first: all that are older than the newest `keep` whole ones. As long as there are
 * not more whole ones than that, none.
 * @param keep at least 1
 */
export function backupsToRemove(backups: readonly KeptBackup[], keep: number): string[] {
  const wholeNewestFirst = backups
    .filter(({ whole }) => whole)
    .map(({ name }) => name)
    .sort()
    .reverse();
  const oldestKept = wholeNewestFirst[Math.max(1, keep) - 1];
  if (oldestKept === undefined) return [];
  return backups
    .map(({ name }) => name)
    .filter((name) => name < oldestKept)
    .sort();
}
