import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Where the processes stand that outlive the files that started them: by their numbers, with their folders. */
const folderVariable = 'LOTWARD_TEST_SHARED_PROCESSES';

/** Leaves a process running until all tests are done; whoever started it need not wait for its end. */
export function endWithAllTests(child: ChildProcess, dataFolder: string): void {
  const folder = process.env[folderVariable];
  if (folder === undefined || child.pid === undefined) throw new Error('Nothing would end this process.');
  writeFileSync(join(folder, String(child.pid)), dataFolder);
  child.unref();
  for (const stream of [child.stdout, child.stderr]) (stream as { unref?: () => void } | null)?.unref?.();
}

/** To be called before all tests. @returns what ends the processes that they leave running, and removes their folders */
export function awaitSharedProcesses(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'lotward-shared-'));
  process.env[folderVariable] = folder;
  return () => {
    for (const pid of readdirSync(folder)) {
      try {
        process.kill(Number(pid), 'SIGKILL');
      } catch {
        // It ended by itself.
      }
      const gone = { recursive: true, force: true, maxRetries: 10, retryDelay: 50 };
      rmSync(readFileSync(join(folder, pid), 'utf8'), gone);
    }
    rmSync(folder, { recursive: true });
  };
}
