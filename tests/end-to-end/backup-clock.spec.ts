import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readManifest, writeManifest } from '../../src/operations/backup/manifest.file.js';
import { backupsIn } from '../support/backups.js';
import { commandOutput } from '../support/commands.js';
import { type RunningService, startService } from '../support/service.js';
import { until } from '../support/waiting.js';

interface Status {
  lastGoodAt: string | null;
  nextDueAt: string | null;
}

/** What a backup is called, and when it was made, by a clock that was years ahead. */
const ahead = { name: '20990101T080000Z-scheduled', madeAt: '2099-01-01T08:00:00.000Z' };

describe('where a clock that was ahead made a backup', () => {
  const away = mkdtempSync(join(tmpdir(), 'lotward-clock-'));
  const backupFolder = join(away, 'backups');
  let service: RunningService;

  beforeAll(async () => {
    const first = await startService('sqlite');
    const settings = { DATA_DIR: first.dataFolder, BACKUP_DIR: backupFolder };
    await commandOutput(['backup'], { environment: settings });
    const [made] = backupsIn(backupFolder);
    const folder = join(backupFolder, ahead.name);
    cpSync(made?.folder ?? '', folder, { recursive: true });
    const { digest: _, ...manifest } = readManifest(folder) as ReturnType<typeof readManifest> & {
      digest?: string;
    };
    writeManifest(folder, { ...manifest, madeAt: ahead.madeAt });
    rmSync(made?.folder ?? '', { recursive: true });
    await first.stop();
    // Every 1.8 seconds.
    const environment = { BACKUP_DIR: backupFolder, BACKUP_EVERY_HOURS: '0.0005', BACKUP_KEEP: '1' };
    service = await startService('sqlite', { dataFolder: first.dataFolder, environment });
  });
  afterAll(async () => {
    await service.dispose();
    rmSync(away, { recursive: true });
  });

  it('backups are made all the same, the newest stays and is the one that is told of', async () => {
    const names = () => backupsIn(backupFolder).map(({ name }) => name);
    const first = await until('a backup', () => names().find((name) => name !== ahead.name));
    await until('a later one', () => names().find((name) => name !== ahead.name && name !== first));
    const { lastGoodAt, nextDueAt } = await service.seen<Status>('/backups');
    expect(Math.abs(Date.now() - Date.parse(lastGoodAt ?? ''))).toBeLessThan(60_000);
    expect(Date.parse(nextDueAt ?? '') - Date.parse(lastGoodAt ?? '')).toBe(1_800);
    await service.stop();
    const left = names();
    expect(left).toHaveLength(2);
    expect(left.at(-1)).toBe(ahead.name);
  });
});
