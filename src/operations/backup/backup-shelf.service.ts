import { readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isBackupName, isLeftoverName, removedName } from './backup-name.js';
import { backupsToRemove } from './backups-to-remove.js';
import { readManifest } from './manifest.file.js';
import type { Manifest } from './manifest.js';

export interface ShelvedBackup {
  name: string;
  folder: string;
  manifest: Manifest;
  /** Whether every file is there with its size. */
  whole: boolean;
}

/** Whoever makes a backup touches its unfinished folder whenever its thread is free. */
export const heartbeatMilliseconds = 10_000;
const abandonedMilliseconds = 3_600_000;

/**
 * The folder of backups. Guarantees: only what a backup made is ever removed, and never the last good one; what does
 * not have the name and the manifest of a backup is passed over.
 */
export class BackupShelf {
  constructor(readonly folder: string) {}

  /** All complete backups, the oldest first. */
  backups(): ShelvedBackup[] {
    return this.names()
      .filter(isBackupName)
      .sort()
      .flatMap((name) => {
        const folder = join(this.folder, name);
        try {
          const manifest = readManifest(folder);
          return [{ name, folder, manifest, whole: hasAllFiles(folder, manifest) }];
        } catch {
          // Whether a backup made it cannot be told any more.
          return [];
        }
      });
  }

  has(name: string): boolean {
    return statSync(join(this.folder, name), { throwIfNoEntry: false }) !== undefined;
  }

  lastGood(): ShelvedBackup | undefined {
    return this.backups().findLast(({ whole }) => whole);
  }

  /** Removes the oldest beyond the number to be kept, and gives their names. */
  rotate(keep: number): string[] {
    const names = backupsToRemove(this.backups(), keep);
    for (const name of names) {
      // Renamed first, so that one removed by halves is never taken for a backup.
      const removed = join(this.folder, removedName(name));
      renameSync(join(this.folder, name), removed);
      rmSync(removed, { recursive: true, force: true });
    }
    return names;
  }

  /** Removes what backups and removals left behind that were killed; what is being made just now stays. */
  removeLeftovers(): void {
    for (const name of this.names().filter(isLeftoverName)) {
      const folder = join(this.folder, name);
      const touched = statSync(folder, { throwIfNoEntry: false })?.mtimeMs;
      if (touched === undefined || Date.now() - touched < abandonedMilliseconds) continue;
      rmSync(folder, { recursive: true, force: true });
    }
  }

  /** None when the folder cannot be read: whoever makes a backup there is told why. */
  private names(): string[] {
    try {
      return readdirSync(this.folder);
    } catch {
      return [];
    }
  }
}

function hasAllFiles(folder: string, { files }: Manifest): boolean {
  return files.every(
    ({ name, bytes }) => statSync(join(folder, name), { throwIfNoEntry: false })?.size === bytes,
  );
}
