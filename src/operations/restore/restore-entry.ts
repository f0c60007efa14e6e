/** The action of the audit entry by which each studio's chain says that an older state of the record was restored. */
export const restoreAction = 'record.restore';

/** The backup of which such an entry tells, in words: `the backup 20261125T081500Z-scheduled`. */
export function restoredBackup(payload: string): string {
  try {
    const { backup } = JSON.parse(payload) as { backup?: unknown };
    return typeof backup === 'string' ? `the backup ${backup}` : 'a backup';
  } catch {
    return 'a backup';
  }
}
