import { statSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A worker has no door to ask at: as long as it can work it writes this file anew, which its container has for itself. */
const signFile = join(tmpdir(), 'lotward-worker-works');
const signMilliseconds = 15_000;
/** Without a sign for so long it does not work any more. */
const longestSilenceMilliseconds = 60_000;

/** Gives signs of life from now on. */
export function giveSignsOfLife(canWork: () => Promise<boolean>): void {
  const give = async () => {
    // That no sign can be given is no reason to end.
    if (await canWork()) await writeFile(signFile, '').catch(() => undefined);
  };
  setInterval(() => void give(), signMilliseconds).unref();
  void give();
}

/** Whether a worker beside this program gave a sign of life of late. */
export function gaveSignOfLife(): boolean {
  const file = statSync(signFile, { throwIfNoEntry: false });
  return file !== undefined && Math.abs(Date.now() - file.mtimeMs) < longestSilenceMilliseconds;
}
