import { type BackupReason, backupReasons } from './manifest.js';

/**
 * The folder name of a backup: UTC to the second, then why it was made. Names sort as time does.
 * @param madeAt ISO 8601 in UTC
 * @example backupName('2026-11-25T08:15:00.000Z', 'scheduled') // 20261125T081500Z-scheduled
 */
export function backupName(madeAt: string, reason: BackupReason): string {
  return `${madeAt.slice(0, 19).replace(/[-:]/g, '')}Z-${reason}`;
}

const form = new RegExp(`^\\d{8}T\\d{6}Z-(${backupReasons.join('|')})$`);

export function isBackupName(name: string): boolean {
  return form.test(name);
}

const unfinished = '.unfinished';
const removed = '.removed';

/** The name of a backup's folder as long as it is not complete. */
export function unfinishedName(name: string): string {
  return name + unfinished;
}

/** The name of a backup's folder as soon as it is being removed. */
export function removedName(name: string): string {
  return name + removed;
}

/** Whether a folder was left by a backup, or by the removal of one, that did not come to its end. */
export function isLeftoverName(name: string): boolean {
  return [unfinished, removed].some(
    (ending) => name.endsWith(ending) && isBackupName(name.slice(0, -ending.length)),
  );
}
