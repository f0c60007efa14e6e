import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { Redis } from 'ioredis';
import { sparePort } from './spare-port.js';
import { wait } from './waiting.js';

const program = (process.env.PATH ?? '')
  .split(delimiter)
  .map((folder) => join(folder, 'redis-server'))
  .find((file) => existsSync(file));

/** Without redis-server its tests are left out aloud; on a build machine, which must have it, they fail. */
export const hasRedis = program !== undefined || process.env.CI !== undefined;

if (program === undefined) {
  process.stdout.write('\nSKIPPED: what needs a Redis server (on Debian: apt-get install redis-server)\n\n');
}

export interface RedisOptions {
  /** Written down before it is answered, so that a kill loses nothing. By default it keeps nothing. */
  appendOnly?: boolean;
  /** Such as `3mb`: above it a write is refused, and nothing is evicted. */
  maximumMemory?: string;
}

const answerMilliseconds = 10_000;
/** Waits until its input ends, which it does with whoever holds the other end, however that ends. */
const watch = 'cat; kill -KILL "$1"; rm -rf "$2"';

/** A real Redis server of its own, in a folder of its own, that can be hurt in every way. */
export class RedisServer {
  private constructor(
    private readonly folder: string,
    readonly port: number,
    private readonly options: RedisOptions,
    private child: ChildProcess | undefined,
    private watcher?: ChildProcess,
  ) {}

  /** @param running false: down from the start, at a port that is free */
  static async start(options: RedisOptions = {}, running = true): Promise<RedisServer> {
    const folder = mkdtempSync(join(tmpdir(), 'lotward-redis-'));
    const server = new RedisServer(folder, await sparePort(), options, undefined);
    if (running) await server.restart();
    return server;
  }

  get url(): string {
    return `redis://127.0.0.1:${this.port}`;
  }

  /** Ends it as a power cut would. */
  async kill(): Promise<void> {
    await this.end('SIGKILL');
  }

  /** Ends it in order. */
  async stop(): Promise<void> {
    await this.end('SIGTERM');
  }

  /** Starts it again at the same port, with what it had written down, or empty. */
  async restart(kept: 'with its data' | 'empty' = 'with its data'): Promise<void> {
    if (program === undefined) throw new Error('There is no redis-server in PATH.');
    await this.kill();
    if (kept === 'empty') rmSync(join(this.folder, 'appendonlydir'), { recursive: true, force: true });
    const { appendOnly = false, maximumMemory = '0' } = this.options;
    this.child = spawn(
      program,
      [
        ...['--port', String(this.port), '--bind', '127.0.0.1', '--dir', this.folder],
        ...['--save', '', '--appendonly', appendOnly ? 'yes' : 'no', '--appendfsync', 'always'],
        ...['--maxmemory', maximumMemory, '--maxmemory-policy', 'noeviction'],
      ],
      { stdio: 'ignore' },
    );
    this.endWithThisProcess(this.child);
    await this.answers(this.child);
  }

  /** Neither answers nor closes a connection, until it is resumed. */
  pause(): void {
    this.child?.kill('SIGSTOP');
  }

  resume(): void {
    this.child?.kill('SIGCONT');
  }

  /** Sets how much it may hold from now on: `1` is less than it holds, so that every write is refused; `0`: no limit. */
  async limitMemory(maximumMemory: string): Promise<void> {
    await this.ask('CONFIG', 'SET', 'maxmemory', maximumMemory);
  }

  /** What it answers to a command, such as `DBSIZE`. */
  async ask(command: string, ...words: string[]): Promise<unknown> {
    const client = new Redis(this.port, '127.0.0.1', { lazyConnect: true, retryStrategy: () => null });
    client.on('error', () => undefined);
    try {
      await client.connect();
      return await client.call(command, ...words);
    } finally {
      client.disconnect();
    }
  }

  /** All that it holds, keys and values, in words: to be searched for what must not be there. */
  async everything(): Promise<string> {
    const keys = (await this.ask('KEYS', '*')) as string[];
    const parts: string[] = [...keys];
    const reading: Record<string, string[]> = {
      string: ['GET'],
      hash: ['HGETALL'],
      list: ['LRANGE', '0', '-1'],
      set: ['SMEMBERS'],
      zset: ['ZRANGE', '0', '-1'],
      stream: ['XRANGE', '-', '+'],
    };
    for (const key of keys) {
      const [command, ...limits] = reading[String(await this.ask('TYPE', key))] ?? [];
      if (command !== undefined) parts.push(JSON.stringify(await this.ask(command, key, ...limits)));
    }
    return parts.join('\n');
  }

  /** Ends it and removes its folder. */
  async dispose(): Promise<void> {
    await this.kill();
    rmSync(this.folder, { recursive: true, force: true });
  }

  /** Nothing is left of it also when this process is killed. */
  private endWithThisProcess({ pid }: ChildProcess): void {
    if (pid === undefined) return;
    this.watcher = spawn('sh', ['-c', watch, 'watch', String(pid), this.folder], {
      stdio: ['pipe', 'ignore', 'ignore'],
      // Ctrl-C is not for it.
      detached: true,
    });
    this.watcher.unref();
  }

  private async end(signal: NodeJS.Signals): Promise<void> {
    const { child } = this;
    // Before the server, whose id may be another's then.
    this.watcher?.kill('SIGKILL');
    this.watcher = undefined;
    this.child = undefined;
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGCONT');
    child.kill(signal);
    await ended;
  }

  private async answers(child: ChildProcess): Promise<void> {
    const deadline = Date.now() + answerMilliseconds;
    for (;;) {
      try {
        if ((await this.ask('PING')) === 'PONG') return;
      } catch (error) {
        if (Date.now() > deadline || child.exitCode !== null) {
          throw new Error(`redis-server does not answer: ${String(error)}`);
        }
      }
      await wait(20);
    }
  }
}
