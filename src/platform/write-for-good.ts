import { closeSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Writes a file that is there whole or not at all, and stays after a power cut. Only its owner may read it. */
export function writeForGood(file: string, content: string): void {
  const folder = dirname(file);
  const unfinished = `${file}.unfinished`;
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  try {
    const written = openSync(unfinished, 'w', 0o600);
    try {
      // Not writeSync, which on a full disk writes a part and says so only in its answer.
      writeFileSync(written, content);
      fsyncSync(written);
    } finally {
      closeSync(written);
    }
    renameSync(unfinished, file);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
  syncFolder(folder);
}

/** Makes what was created, renamed or removed in a folder stay after a power cut. */
export function syncFolder(folder: string): void {
  const directory = openSync(folder, 'r');
  try {
    fsyncSync(directory);
  } finally {
    closeSync(directory);
  }
}
