import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { exportFormat, logLine } from '../audit-log/exported-log.js';
import { writeManifest } from '../backup/manifest.file.js';
import { headsRemembered } from './remembered-heads.file.js';

const head = { sequence: 7, hash: 'ab'.repeat(32) };

it('passes over a backup that is removed while others are read, and no other that cannot be read', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lotward-heads-'));
  const log = join(folder, 'log.ndjson');
  writeFileSync(
    log,
    logLine({ format: exportFormat, studioId: 'studio', exportedAt: '2026-03-01T09:30:00.000Z', head }),
  );
  const shelf = join(folder, 'backups');
  const backup = (day: number) => join(shelf, `2026030${day}T093000Z-scheduled`);
  for (const day of [1, 2, 3]) {
    mkdirSync(backup(day), { recursive: true });
    writeManifest(backup(day), {
      format: 1,
      madeAt: `2026-03-0${day}T09:30:00.000Z`,
      reason: 'scheduled',
      engine: 'sqlite',
      migrations: [],
      heads: [{ studioId: 'studio', ...head }],
      masterKeyIds: [],
      files: [{ name: 'database.sqlite', bytes: 1, sha256: 'cd'.repeat(32) }],
    });
  }
  // Both folders are listed before the first line of the log is there.
  const reading = headsRemembered([log, shelf]);
  rmSync(backup(1), { recursive: true });
  rmSync(join(backup(2), 'manifest.json'));
  const { heads, unreadable } = await reading;
  rmSync(folder, { recursive: true });
  expect(heads.map(({ from }) => from)).toEqual([
    'the log log.ndjson, exported at 2026-03-01T09:30:00.000Z,',
    'the backup 20260303T093000Z-scheduled',
  ]);
  expect(unreadable).toEqual([expect.stringContaining('20260302T093000Z-scheduled is no complete backup')]);
});
