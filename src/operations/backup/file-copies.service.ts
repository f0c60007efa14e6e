import { createHash } from 'node:crypto';
import { constants, createReadStream } from 'node:fs';
import { chmod, copyFile, mkdir, open, readdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { syncFolder } from '../../platform/write-for-good.js';
import type { BackedUpFile, Manifest } from './manifest.js';

async function sha256(file: string): Promise<string> {
  const hash = createHash('sha256');
  await pipeline(createReadStream(file, { highWaterMark: 1 << 20 }), hash);
  return hash.digest('hex');
}

/** What a manifest says of a file that lies in the folder. */
export async function describeFile(folder: string, name: string): Promise<BackedUpFile> {
  const file = join(folder, name);
  return { name, bytes: (await stat(file)).size, sha256: await sha256(file) };
}

/** Names of all files below a folder, sorted, with forward slashes; no links, and none when there is no such folder. */
export async function filesBelow(folder: string): Promise<string[]> {
  const found = await readdir(folder, { withFileTypes: true, recursive: true }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return [];
      throw error;
    },
  );
  return found
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
}

/**
 * Copies files from one folder below another and gives what was read from their sources, so that a later look at the
 * copies finds what went wrong on the way. What vanished in the meantime, because it was erased, is left out.
 */
export async function copyFiles(
  source: string,
  target: string,
  names: readonly string[],
  signal?: AbortSignal,
): Promise<BackedUpFile[]> {
  const copied: BackedUpFile[] = [];
  for (const name of names) {
    signal?.throwIfAborted();
    try {
      const described = await describeFile(source, name);
      await copyForGood(join(source, name), join(target, name));
      copied.push(described);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    }
  }
  for (const folder of foldersOf(copied.map(({ name }) => name))) syncFolder(join(target, folder));
  return copied;
}

/** The folders that names go through, the outermost as the empty name. */
function foldersOf(names: readonly string[]): Set<string> {
  const folders = new Set<string>();
  for (const name of names) {
    const parts = name.split('/').slice(0, -1);
    for (let depth = 0; depth <= parts.length; depth += 1) folders.add(parts.slice(0, depth).join('/'));
  }
  return folders;
}

/** Copies a file to where none is yet, for its owner only, to stay after a power cut. */
export async function copyForGood(source: string, target: string): Promise<void> {
  await mkdir(dirname(target), { recursive: true, mode: 0o700 });
  await copyFile(source, target, constants.COPYFILE_EXCL);
  await makeStay(target);
}

/** Lets only its owner read a file and makes it stay after a power cut. */
export async function makeStay(file: string): Promise<void> {
  await chmod(file, 0o600);
  const handle = await open(file, 'r+');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
  syncFolder(dirname(file));
}

/** What of a backup's files is not as its manifest says, in words; empty when all of it is. */
export async function damageOf(folder: string, manifest: Pick<Manifest, 'files'>): Promise<string[]> {
  const damage: string[] = [];
  for (const file of manifest.files) {
    const fault = await faultOf(folder, file);
    if (fault !== undefined) damage.push(fault);
  }
  return damage;
}

async function faultOf(folder: string, expected: BackedUpFile): Promise<string | undefined> {
  const { name, bytes } = expected;
  const found = await stat(join(folder, name)).catch(() => undefined);
  if (!found?.isFile()) return `${name} is missing`;
  if (found.size !== bytes) return `${name} has ${found.size} bytes instead of ${bytes}`;
  if ((await sha256(join(folder, name))) !== expected.sha256)
    return `${name} was changed: its SHA-256 is another`;
  return undefined;
}
