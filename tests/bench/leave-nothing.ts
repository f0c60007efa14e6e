import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * However the bench ends – done, failed or told to stop – it leaves neither files nor processes behind.
 */
const folders = new Set<string>();
const children = new Set<ChildProcess>();

process.on('exit', () => {
  for (const child of children) if (child.exitCode === null) child.kill('SIGKILL');
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});
for (const [signal, code] of [
  ['SIGINT', 130],
  ['SIGTERM', 143],
] as const) {
  process.once(signal, () => process.exit(code));
}

/** An empty folder for the bench, removed by `removeFolder`, or at the latest when the bench ends. */
export function makeFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'lotward-bench-'));
  folders.add(folder);
  return folder;
}

export function removeFolder(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
  folders.delete(folder);
}

/** Ends a process with the bench, when it has not ended before. */
export function endWithBench<Process extends { child: ChildProcess }>(started: Process): Process {
  children.add(started.child);
  started.child.once('exit', () => children.delete(started.child));
  return started;
}
