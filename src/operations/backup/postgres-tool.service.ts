import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { OperatorError } from '../../platform/operator-error.js';

export type PostgresTool = 'pg_dump' | 'pg_restore';

const keptErrorCharacters = 2_000;

/** The tools that come with PostgreSQL, run against one database. */
export class PostgresTools {
  private readonly address: string;
  private readonly environment: NodeJS.ProcessEnv;

  /** @param folder where the tools lie; undefined: found by PATH */
  constructor(
    private readonly folder: string | undefined,
    databaseUrl: string,
  ) {
    const url = new URL(databaseUrl);
    // Parameters of a process can be read by everybody on the machine, its environment cannot.
    const password = url.password === '' ? {} : { PGPASSWORD: decodeURIComponent(url.password) };
    this.environment = { ...process.env, ...password };
    url.password = '';
    this.address = url.href;
  }

  /** The parameter that names the database. */
  get database(): string {
    return `--dbname=${this.address}`;
  }

  /**
   * Runs a tool and gives what it printed.
   * @param output `drop` when only its success matters
   * @throws OperatorError when it is not installed; Error with its own words when it fails
   */
  async run(
    tool: PostgresTool,
    parameters: readonly string[],
    { signal, output = 'keep' }: { signal?: AbortSignal | undefined; output?: 'keep' | 'drop' } = {},
  ): Promise<string> {
    const child = spawn(this.folder === undefined ? tool : join(this.folder, tool), parameters, {
      stdio: ['ignore', output === 'keep' ? 'pipe' : 'ignore', 'pipe'],
      env: this.environment,
      ...(signal === undefined ? {} : { signal }),
    });
    let printed = '';
    let complaint = '';
    child.stdout?.setEncoding('utf8').on('data', (text: string) => {
      printed += text;
    });
    child.stderr?.setEncoding('utf8').on('data', (text: string) => {
      complaint = (complaint + text).slice(-keptErrorCharacters);
    });
    const code = await exitCode(child, tool, this.folder);
    if (code !== 0)
      throw new Error(`${tool} ended with ${code}: ${complaint.trim().replace(/\s*\n\s*/g, ' ')}`);
    return printed;
  }

  /** The major version of a tool, such as 15. */
  async majorVersion(tool: PostgresTool): Promise<number> {
    const printed = await this.run(tool, ['--version']);
    const version = /\(PostgreSQL\) (\d+)/.exec(printed)?.[1];
    if (version === undefined) throw new Error(`${tool} --version printed ${JSON.stringify(printed)}`);
    return Number(version);
  }
}

function exitCode(
  child: ChildProcess,
  tool: PostgresTool,
  folder: string | undefined,
): Promise<number | null> {
  return new Promise((resolve, reject) => {
    child.once('close', resolve);
    child.once('error', (error: NodeJS.ErrnoException) => {
      reject(error.code === 'ENOENT' ? toolMissing(tool, folder) : error);
    });
  });
}

export class PostgresToolMissing extends OperatorError {}

function toolMissing(tool: PostgresTool, folder: string | undefined): PostgresToolMissing {
  const where = folder === undefined ? 'in PATH' : `in ${folder}, which POSTGRES_CLIENT_DIR names`;
  return new PostgresToolMissing(
    `${tool} was not found ${where}. Install PostgreSQL's client (on Debian: apt-get install postgresql-client) of the server's version or later, or set POSTGRES_CLIENT_DIR to the folder of pg_dump and pg_restore.`,
  );
}

/** @throws PostgresToolMissing when a tool is older than the server, whose data it could not write or read */
export async function requireVersion(
  tools: PostgresTools,
  tool: PostgresTool,
  serverVersion: number,
): Promise<void> {
  const version = await tools.majorVersion(tool);
  if (version >= serverVersion) return;
  throw new PostgresToolMissing(
    `${tool} is of PostgreSQL ${version}, and the server of PostgreSQL ${serverVersion}. Install the client of version ${serverVersion} or later, or set POSTGRES_CLIENT_DIR to the folder of its pg_dump and pg_restore.`,
  );
}
