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

export interface Rotated {
  names: string[];
  /** What could not be removed, in words. */
  faults: string[];
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

  /**
   * The newest whole one.
   * @param now an instant; what was made later by its own account was made by a clock that was ahead, and is passed over
   */
  lastGood(now: string): ShelvedBackup | undefined {
    return this.backups().findLast(({ whole, manifest }) => whole && manifest.madeAt <= now);
  }

  /**
   * Removes the oldest beyond the number to be kept. One that cannot be removed does not spoil the one just made.
   * @param made the name of the one just made, which stays
   */
  rotate(keep: number, made: string): Rotated {
    const rotated: Rotated = { names: [], faults: [] };
    for (const name of backupsToRemove(this.backups(), keep, made)) {
      // Renamed first, so that one removed by halves is never taken for a backup.
      const removed = join(this.folder, removedName(name));
      try {
        renameSync(join(this.folder, name), removed);
        rmSync(removed, { recursive: true, force: true });
        rotated.names.push(name);
      } catch (error) {
        const { code, message } = error as NodeJS.ErrnoException;
        // Another process was faster.
        if (code !== 'ENOENT') rotated.faults.push(`${name} could not be removed: ${message}`);
      }
    }
    return rotated;
  }

  /** Removes what backups and removals left behind that were killed; what is being made just now stays. */
  removeLeftovers(): void {
    for (const name of this.names().filter(isLeftoverName)) {
      const folder = join(this.folder, name);
      try {
        if (Date.now() - statSync(folder).mtimeMs < abandonedMilliseconds) continue;
        rmSync(folder, { recursive: true, force: true });
      } catch {
        // In nobody's way; it is tried again with the next backup.
      }
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
