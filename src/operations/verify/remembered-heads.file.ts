import { createReadStream, existsSync, readdirSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { OperatorError } from '../../platform/operator-error.js';
import { readOpening } from '../audit-log/exported-log.js';
import { isBackupName } from '../backup/backup-name.js';
import { readManifest } from '../backup/manifest.file.js';
import { manifestFile } from '../backup/manifest.js';
import type { Remembered, RememberedHead } from './report-words.js';

const exportEnding = '.ndjson';

/** The heads that the backups in the folder of backups remember; none when there is no such folder. */
export async function headsInBackups(folder: string): Promise<Remembered> {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return { heads: [], unreadable: [] };
  return headsIn(foldersOfBackups(folder));
}

/**
 * The heads that backups and exported logs remember.
 * @param paths each a backup, its manifest, an exported log, or a folder of backups and exported logs
 * @throws OperatorError when one of them is not there or is none of these
 */
export async function headsRemembered(paths: readonly string[]): Promise<Remembered> {
  return headsIn(paths.flatMap(sourcesAt));
}

function sourcesAt(path: string): string[] {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found)
    throw new OperatorError(`There is no ${path}. Name a backup, an exported log, or a folder of them.`);
  if (!found.isDirectory()) return [basename(path) === manifestFile ? dirname(path) : path];
  if (statSync(join(path, manifestFile), { throwIfNoEntry: false })) return [path];
  const exports = readdirSync(path).filter((name) => name.endsWith(exportEnding));
  const sources = [...foldersOfBackups(path), ...exports.sort().map((name) => join(path, name))];
  if (sources.length > 0) return sources;
  throw new OperatorError(
    `In ${path} is neither a backup nor an exported log (*${exportEnding}). Name a backup, an exported log, or a folder of them.`,
  );
}

function foldersOfBackups(folder: string): string[] {
  return readdirSync(folder)
    .filter(isBackupName)
    .sort()
    .map((name) => join(folder, name));
}

async function headsIn(sources: readonly string[]): Promise<Remembered> {
  const remembered: Remembered = { heads: [], unreadable: [] };
  for (const source of sources) {
    try {
      remembered.heads.push(...(statSync(source).isDirectory() ? ofBackup(source) : await ofExport(source)));
    } catch (error) {
      // A backup that was made meanwhile sent it away.
      if (!existsSync(source)) continue;
      if (!(error instanceof OperatorError)) throw error;
      remembered.unreadable.push(error.message);
    }
  }
  return remembered;
}

function ofBackup(folder: string): RememberedHead[] {
  const from = `the backup ${basename(folder)}`;
  return readManifest(folder).heads.map((head) => ({ from, ...head }));
}

async function ofExport(file: string): Promise<RememberedHead[]> {
  const name = basename(file);
  const opening = readOpening(await firstLine(file));
  if (!opening)
    throw new OperatorError(`${name} does not begin as an exported log does; it remembers no head.`);
  const { studioId, head } = opening;
  return [{ from: `the log ${name}, exported at ${opening.exportedAt},`, studioId, ...head }];
}

async function firstLine(file: string): Promise<string> {
  const lines = createInterface({ input: createReadStream(file, 'utf8') });
  try {
    for await (const line of lines) return line;
    return '';
  } finally {
    lines.close();
  }
}
