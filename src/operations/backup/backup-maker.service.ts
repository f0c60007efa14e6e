import { existsSync, mkdirSync, renameSync, rmSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { Config } from '../../platform/config.js';
import { syncFolder } from '../../platform/write-for-good.js';
import { BackupFailure, backupFailure } from './backup-failure.error.js';
import { backupName, unfinishedName } from './backup-name.js';
import { BackupShelf, heartbeatMilliseconds, type Rotated } from './backup-shelf.service.js';
import { copyFiles, damageOf, describeFile, filesBelow, makeStay } from './file-copies.service.js';
import { writeManifest } from './manifest.file.js';
import { type BackupReason, databaseFiles, filesFolder, type Manifest } from './manifest.js';
import { copyPostgres } from './postgres-copy.service.js';
import { PostgresToolMissing, PostgresTools } from './postgres-tool.service.js';
import type { RecordFacts } from './record-facts.service.js';
import { copySqlite } from './sqlite-copy.service.js';

export interface MadeBackup {
  folder: string;
  manifest: Manifest;
  /** Older backups that went, since enough newer ones are kept. */
  removed: Rotated;
}

/**
 * Makes a backup of the database and of the files beside it, also while the service runs. Guarantees: everything
 * acknowledged before the call is in it; it bears the name of a backup only once it is complete, checked and on the
 * disk; when it fails, nothing of it stays and no other backup was touched. The key file is never in it.
 * @throws BackupFailure
 */
export async function makeBackup(
  config: Config,
  reason: BackupReason,
  signal?: AbortSignal,
): Promise<MadeBackup> {
  if (config.DATABASE_URL === undefined && !existsSync(config.sqliteFile)) {
    throw new BackupFailure(
      'there is no database',
      `It was looked for at ${config.sqliteFile}: look at DATA_DIR.`,
    );
  }
  const shelf = new BackupShelf(config.backupFolder);
  const { name, madeAt } = await begin(shelf, reason);
  const unfinished = join(shelf.folder, unfinishedName(name));
  const folder = join(shelf.folder, name);
  const heartbeat = setInterval(() => touch(unfinished), heartbeatMilliseconds);
  let manifest: Manifest;
  try {
    manifest = await fill(unfinished, config, { reason, madeAt }, signal);
    renameSync(unfinished, folder);
    syncFolder(shelf.folder);
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true });
    if (error instanceof PostgresToolMissing) {
      throw new BackupFailure(
        "a suitable client of PostgreSQL is missing on the service's machine",
        error.message,
      );
    }
    throw backupFailure(error, `It was being written to ${folder}; nothing of it was kept.`);
  } finally {
    clearInterval(heartbeat);
  }
  return { folder, manifest, removed: shelf.rotate(config.BACKUP_KEEP, name) };
}

/** Takes a name that no other backup has: two that begin in the same second get one a second apart. */
async function begin(shelf: BackupShelf, reason: BackupReason): Promise<{ name: string; madeAt: string }> {
  try {
    mkdirSync(shelf.folder, { recursive: true, mode: 0o700 });
    shelf.removeLeftovers();
    for (;;) {
      const madeAt = new Date().toISOString();
      const name = backupName(madeAt, reason);
      if (!shelf.has(name)) {
        try {
          mkdirSync(join(shelf.folder, unfinishedName(name)), { mode: 0o700 });
          return { name, madeAt };
        } catch (error) {
          if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
        }
      }
      await wait(1_000 - (Date.now() % 1_000));
    }
  } catch (error) {
    throw backupFailure(
      error,
      `BACKUP_DIR is ${shelf.folder}: it must be a folder that Lotward may write to.`,
    );
  }
}

async function fill(
  folder: string,
  config: Config,
  about: Pick<Manifest, 'reason' | 'madeAt'>,
  signal: AbortSignal | undefined,
): Promise<Manifest> {
  const engine = config.DATABASE_URL === undefined ? 'sqlite' : 'postgres';
  const database = databaseFiles[engine];
  const facts = await copyDatabase(config, join(folder, database), signal);
  await makeStay(join(folder, database));
  const described = await describeFile(folder, database);
  // Copied after the database: a file is written before the row that names it, so none that is named can be missing.
  const names = await filesBelow(config.filesFolder);
  const copied = (await copyFiles(config.filesFolder, join(folder, filesFolder), names, signal)).map(
    (file) => ({
      ...file,
      name: `${filesFolder}/${file.name}`,
    }),
  );
  // The copy of the database was read and checked; of the files only their sources were.
  const damage = await damageOf(folder, { files: copied });
  if (damage.length > 0) throw new Error(`what was written is not what is read back: ${damage.join('; ')}`);
  const manifest: Manifest = { format: 1, ...about, engine, ...facts, files: [described, ...copied] };
  writeManifest(folder, manifest);
  return manifest;
}

function copyDatabase(config: Config, target: string, signal: AbortSignal | undefined): Promise<RecordFacts> {
  if (config.DATABASE_URL === undefined) {
    return copySqlite(config.sqliteFile, target, signal);
  }
  const tools = new PostgresTools(config.POSTGRES_CLIENT_DIR, config.DATABASE_URL);
  return copyPostgres(config.DATABASE_URL, tools, target, signal);
}

function touch(folder: string): void {
  try {
    utimesSync(folder, new Date(), new Date());
  } catch {
    // Gone: the backup itself will tell.
  }
}
