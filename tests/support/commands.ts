import { type ChildProcess, fork, spawn } from 'node:child_process';
import { once } from 'node:events';
import type { DataPlace } from './plain-sql.js';

export interface CommandResult {
  code: number | null;
  /** What was printed for the person. */
  out: string;
  /** What was complained of. */
  err: string;
}

export interface CommandOptions {
  environment?: Record<string, string | undefined>;
  /** Largest file the command may write, in KiB: beyond it writing fails, as on a full disk. */
  largestFileKibibytes?: number;
  /** Gets the process as soon as it runs. */
  started?: (kill: (signal: NodeJS.Signals) => void) => void;
}

/** Runs a command of the built command line, as `npm run cli -- …` does, in a process of its own. */
export function runCommand(
  parameters: readonly string[],
  options: CommandOptions = {},
): Promise<CommandResult> {
  const { environment = {}, largestFileKibibytes, started } = options;
  const node = [process.execPath, 'dist/service/cli.js', ...parameters];
  const [program = '', ...rest] =
    largestFileKibibytes === undefined
      ? node
      : // The signal that comes with the limit is ignored, so that writing fails as it does on a full disk.
        ['bash', '-c', `trap '' XFSZ; ulimit -f ${largestFileKibibytes}; exec "$@"`, 'bash', ...node];
  const child = spawn(program, rest, {
    env: { PATH: process.env.PATH, TZ: 'UTC', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  started?.((signal) => child.kill(signal));
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => resolve({ code, out, err }));
  });
}

/**
 * Runs commands one after another in one process of theirs, so that only the first starts the program: for what they refuse
 * and what they print. What is asked of the process itself is for `runCommand`.
 */
export class CommandsInTurn {
  private process: ChildProcess | undefined;
  private last: Promise<unknown> = Promise.resolve();

  run(parameters: readonly string[], environment: Record<string, string> = {}): Promise<CommandResult> {
    const result = this.last.then(() => this.runNow(parameters, environment));
    this.last = result.catch(() => undefined);
    return result;
  }

  end(): void {
    this.process?.disconnect();
    this.process = undefined;
  }

  private async runNow(
    parameters: readonly string[],
    environment: Record<string, string>,
  ): Promise<CommandResult> {
    this.process ??= fork('tests/support/commands-in-turn.mjs', {
      env: { PATH: process.env.PATH, TZ: 'UTC' },
      execArgv: [],
    });
    const child = this.process;
    const abort = new AbortController();
    const { signal } = abort;
    const answered = once(child, 'message', { signal });
    const ended = once(child, 'exit', { signal }).then(([code]) => {
      throw new Error(`The process of the commands ended with ${code} during ${parameters.join(' ')}.`);
    });
    child.send({ parameters, environment });
    try {
      const [result] = await Promise.race([answered, ended]);
      return result as CommandResult;
    } finally {
      abort.abort();
      ended.catch(() => undefined);
    }
  }
}

/** The settings with which a command works on the data of a service, which may be running. */
export function settingsOf({
  dataFolder,
  databaseUrl,
  url,
}: DataPlace & { url?: string }): Record<string, string> {
  return {
    DATA_DIR: dataFolder,
    ...(url === undefined ? {} : { PUBLIC_URL: url }),
    ...(databaseUrl === undefined ? {} : { DATABASE_URL: databaseUrl }),
  };
}

/** As `runCommand`, but expects success and gives what was printed. */
export async function commandOutput(
  parameters: readonly string[],
  options: CommandOptions = {},
): Promise<string> {
  const { code, out, err } = await runCommand(parameters, options);
  if (code !== 0) throw new Error(`${parameters.join(' ')} ended with ${code}: ${err}${out}`);
  return out;
}

/** As `commandOutput`, on the data of a service. */
export function commandLine(service: DataPlace & { url?: string }, ...given: string[]): Promise<string> {
  return commandOutput(given, { environment: settingsOf(service) });
}
