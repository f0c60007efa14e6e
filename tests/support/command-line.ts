import { spawn } from 'node:child_process';
import { text } from 'node:stream/consumers';
import type { RunningService } from './service.js';

/** Runs one command of the built program on the data of a service, which may be running, and returns what it printed. */
export async function commandLine(
  { dataFolder, databaseUrl, url }: Pick<RunningService, 'dataFolder' | 'databaseUrl' | 'url'>,
  ...given: string[]
): Promise<string> {
  const child = spawn(process.execPath, ['dist/src/cli.js', ...given], {
    env: {
      PATH: process.env.PATH,
      TZ: 'UTC',
      DATA_DIR: dataFolder,
      PUBLIC_URL: url,
      ...(databaseUrl === undefined ? {} : { DATABASE_URL: databaseUrl }),
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const code = new Promise<number | null>((resolve) => child.once('exit', resolve));
  const [printed, complaint] = await Promise.all([text(child.stdout), text(child.stderr)]);
  if ((await code) !== 0) throw new Error(`${given.join(' ')} ended with ${await code}: ${complaint}`);
  return printed;
}
