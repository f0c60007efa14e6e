import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { isBackupName } from '../../src/operations/backup/backup-name.js';
import { readManifest } from '../../src/operations/backup/manifest.file.js';
import type { Manifest } from '../../src/operations/backup/manifest.js';
import type { SentWrite, StudioLoad } from './studio-load.js';

/** The complete backups in a folder, the oldest first. */
export function backupsIn(folder: string): { name: string; folder: string; manifest: Manifest }[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter(isBackupName)
    .sort()
    .map((name) => ({ name, folder: join(folder, name), manifest: readManifest(join(folder, name)) }));
}

/** Notes what was acknowledged when, so that it can be told what had been when a backup began. */
export class Acknowledgements {
  private readonly samples: { at: string; count: number }[] = [];
  private readonly timer: NodeJS.Timeout;

  constructor(private readonly load: StudioLoad) {
    this.timer = setInterval(() => this.sample(), 10);
  }

  /** All that was acknowledged before an instant. */
  before(instant: string): SentWrite[] {
    const last = this.samples.findLast(({ at }) => at < instant);
    return this.load.acknowledged.slice(0, last?.count ?? 0);
  }

  stop(): void {
    clearInterval(this.timer);
  }

  private sample(): void {
    this.samples.push({ at: new Date().toISOString(), count: this.load.acknowledged.length });
  }
}
