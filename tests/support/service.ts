import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { v7 as uuidv7 } from 'uuid';
import { permissionsOf } from '../../src/identity/permissions.js';
import { type PlainAnswer, type PlainRequest, plainExchange } from './plain-exchange.js';

export type TestedEngine = 'sqlite' | 'postgres';

/** The engines that tests run on: PostgreSQL only where its server could be started, which the set-up says aloud. */
export const engines: TestedEngine[] = process.env.LOTWARD_TEST_POSTGRES
  ? ['sqlite', 'postgres']
  : ['sqlite'];

/** For what the database has no part in, such as who is admitted: on SQLite, and on every engine in the soak. */
export const usualEngine: TestedEngine[] = process.env.SOAK ? engines : ['sqlite'];

/** For what PostgreSQL is stricter about, such as texts: there where it runs, and on every engine in the soak. */
export const strictestEngine: TestedEngine[] = process.env.SOAK ? engines : engines.slice(-1);

export interface Answer<Body = unknown> {
  status: number;
  headers: Headers;
  body: Body;
}

export interface ProblemBody {
  type: string;
  title: string;
  status: number;
  detail: string;
  code: string;
  faults?: { field: string; message: string }[];
}

export interface StartOptions {
  /** Kept from an earlier start, to run on the same data again. */
  dataFolder?: string;
  databaseUrl?: string;
  environment?: Record<string, string>;
  /** The built program, when it is not the one people start. */
  program?: string;
  /** Whether the first start itself is looked at; otherwise a copy of one that was started before will do. */
  firstStart?: true;
}

const startDeadlineMilliseconds = 30_000;

/**
 * Makes a database on the tests' PostgreSQL server, or on another, and returns its URL.
 * @param original name of the database that it is a copy of, which nobody may be connected to; left out: it is empty
 */
export async function makePostgresDatabase(
  server = process.env.LOTWARD_TEST_POSTGRES,
  original = 'template1',
): Promise<string> {
  if (!server) throw new Error('There is no PostgreSQL server in this run.');
  const name = `lotward_${uuidv7().replaceAll('-', '')}`;
  const client = new pg.Client({ connectionString: server });
  await client.connect();
  await client.query(`CREATE DATABASE ${name} TEMPLATE ${original}`);
  await client.end();
  const url = new URL(server);
  url.pathname = `/${name}`;
  return url.href;
}

/** Whether an answer is JSON as a whole; lines of JSON are not. */
export function isOneJson(headers: Headers): boolean {
  return /^application\/([a-z]+\+)?json\b/.test(headers.get('content-type') ?? '');
}

/** The built service, running in a process of its own on real migrations. */
export class RunningService {
  constructor(
    readonly url: string,
    readonly dataFolder: string,
    readonly databaseUrl: string | undefined,
    readonly child: ChildProcess,
    readonly log: string[],
    readonly studioId: string,
    /** An API token of the owner with every permission, which every request carries unless told otherwise. */
    readonly token: string,
  ) {}

  /** The address of the studio in the API. */
  get studio(): string {
    return `${this.url}/api/v1/studios/${this.studioId}`;
  }

  get<Body = unknown>(path: string, headers: Record<string, string> = {}): Promise<Answer<Body>> {
    return this.send<Body>('GET', path, undefined, headers);
  }

  /** Posts a body; a fresh `id` is added when it has none. */
  post<Body = unknown>(path: string, body: object = {}, headers: Record<string, string> = {}) {
    return this.send<Body>('POST', path, { id: uuidv7(), ...body }, headers);
  }

  put<Body = unknown>(path: string, body: object = {}, headers: Record<string, string> = {}) {
    return this.send<Body>('PUT', path, { id: uuidv7(), ...body }, headers);
  }

  patch<Body = unknown>(path: string, body: object = {}, headers: Record<string, string> = {}) {
    return this.send<Body>('PATCH', path, { id: uuidv7(), ...body }, headers);
  }

  /** Paths are below the studio; whole addresses are taken as they are. */
  async send<Body>(
    method: string,
    path: string,
    body?: unknown,
    headers: Record<string, string> = {},
  ): Promise<Answer<Body>> {
    const { bytes, ...answer } = await this.exchange(path.startsWith('http') ? path : this.studio + path, {
      method,
      headers: body === undefined ? headers : { 'content-type': 'application/json', ...headers },
      ...(body !== undefined && { body: typeof body === 'string' ? body : JSON.stringify(body) }),
    });
    const text = bytes.toString('utf8');
    const isJson = isOneJson(answer.headers);
    return { ...answer, body: (isJson && text !== '' ? JSON.parse(text) : text) as Body };
  }

  /** A request and its whole answer, signed in as the owner unless the headers say who asks. */
  async exchange(address: string, asked: PlainRequest = {}): Promise<PlainAnswer> {
    const headers = this.signedIn(asked.headers);
    if (address.startsWith('http:')) return plainExchange(address, { ...asked, headers });
    const response = await fetch(address, { ...asked, headers });
    return {
      status: response.status,
      headers: response.headers,
      bytes: Buffer.from(await response.arrayBuffer()),
    };
  }

  /** As the global `fetch`, signed in as the owner unless the headers say who asks. */
  fetch(address: string, init: RequestInit & { headers?: Record<string, string> } = {}): Promise<Response> {
    return fetch(address, { ...init, headers: this.signedIn(init.headers) });
  }

  private signedIn(headers: Record<string, string> = {}): Record<string, string> {
    const named = 'authorization' in headers || 'cookie' in headers;
    return named ? headers : { authorization: `Bearer ${this.token}`, ...headers };
  }

  /** As `post`, but expects success and returns the body. */
  async made<Body>(path: string, body: object = {}, headers: Record<string, string> = {}): Promise<Body> {
    const answer = await this.post<Body>(path, body, headers);
    if (answer.status >= 300) {
      throw new Error(`POST ${path} was answered ${answer.status}: ${JSON.stringify(answer.body)}`);
    }
    return answer.body;
  }

  /** As `get`, but expects success and returns the body. */
  async seen<Body>(path: string): Promise<Body> {
    const answer = await this.get<Body>(path);
    if (answer.status >= 300) {
      throw new Error(`GET ${path} was answered ${answer.status}: ${JSON.stringify(answer.body)}`);
    }
    return answer.body;
  }

  /** Ends the process and waits for it; the data stays. */
  async stop(signal: NodeJS.Signals = 'SIGTERM'): Promise<number | null> {
    if (this.child.exitCode !== null || this.child.signalCode !== null) return this.child.exitCode;
    const ended = new Promise<number | null>((resolve) => this.child.once('exit', (code) => resolve(code)));
    this.child.kill(signal);
    return ended;
  }

  /** Ends the process and removes its data folder. */
  async dispose(): Promise<void> {
    await this.stop();
    rmSync(this.dataFolder, { recursive: true, force: true });
  }
}

export interface ServiceProcess {
  url: string;
  child: ChildProcess;
  /** What it wrote to either output so far, in pieces. */
  log: string[];
}

/** Starts the built service as a process of its own and waits until it is ready. */
export async function startInFolder(
  dataFolder: string,
  environment: Record<string, string> = {},
  program = 'dist/service/main.js',
): Promise<ServiceProcess> {
  const child = spawn(process.execPath, [program], {
    env: {
      PATH: process.env.PATH,
      TZ: 'UTC',
      PORT: '0',
      DATA_DIR: dataFolder,
      LOG_LEVEL: 'log',
      // Tests and benches ask oftener than people.
      REQUESTS_PER_MINUTE: '0',
      ...environment,
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const log: string[] = [];
  const url = await new Promise<string>((resolve, reject) => {
    const timer = setTimeout(() => {
      child.kill('SIGKILL');
      reject(new Error(`The service was not ready in time:\n${log.join('')}`));
    }, startDeadlineMilliseconds);
    let isReady = false;
    const listen = (chunk: Buffer) => {
      log.push(chunk.toString('utf8'));
      if (process.env.SHOW_SERVICE_LOG) process.stderr.write(chunk);
      // A service that answers thousands of requests writes as many lines; its address stands in the first.
      const ready = isReady ? null : /Lotward is ready on (\S+)/.exec(log.join(''));
      if (ready?.[1]) {
        isReady = true;
        clearTimeout(timer);
        resolve(ready[1]);
      }
    };
    child.stdout?.on('data', listen);
    child.stderr?.on('data', listen);
    child.once('exit', (code) => {
      clearTimeout(timer);
      reject(new Error(`The service ended with ${code} before it was ready:\n${log.join('')}`));
    });
  });
  return { url, child, log };
}

/** The built service as it is right after its start: on an empty database nobody has an account yet. */
export interface StartedProcess extends ServiceProcess {
  dataFolder: string;
  databaseUrl: string | undefined;
}

/** Starts the built service and leaves it as it is. */
export async function startProcess(
  engine: TestedEngine = 'sqlite',
  options: StartOptions = {},
): Promise<StartedProcess> {
  const dataFolder = options.dataFolder ?? mkdtempSync(join(tmpdir(), 'lotward-test-'));
  const databaseUrl =
    engine === 'postgres' ? (options.databaseUrl ?? (await makePostgresDatabase())) : undefined;
  const { url, child, log } = await startInFolder(
    dataFolder,
    {
      ...(databaseUrl === undefined ? {} : { DATABASE_URL: databaseUrl }),
      ...options.environment,
    },
    options.program,
  );
  return { url, dataFolder, databaseUrl, child, log };
}

/** The variable that names the folder of a first start on an engine, which the set-up of all tests leaves behind. */
const firstStartOf = (engine: TestedEngine) => `LOTWARD_TEST_FIRST_START_${engine.toUpperCase()}`;
/** In such a folder: where its database is, when it is elsewhere. */
const databaseOfFirstStart = 'database-of-tests';

/**
 * Starts the service for the first time, lets its owner in, and ends it: what migrations, keys and passwords cost is paid
 * once for all tests, which start on copies.
 * @returns what removes it
 */
export async function leaveFirstStart(engine: TestedEngine): Promise<() => void> {
  const service = await startService(engine, { firstStart: true });
  await service.stop();
  if (service.databaseUrl !== undefined) {
    writeFileSync(join(service.dataFolder, databaseOfFirstStart), service.databaseUrl);
  }
  process.env[firstStartOf(engine)] = service.dataFolder;
  return () => rmSync(service.dataFolder, { recursive: true, force: true });
}

/** A copy of the first start, unless there is none or other data are asked for. */
async function copyOfFirstStart(
  engine: TestedEngine,
  { dataFolder, databaseUrl, program, firstStart }: StartOptions,
): Promise<StartOptions> {
  const original = process.env[firstStartOf(engine)];
  const isAskedFor = [dataFolder, databaseUrl, program, firstStart].some((each) => each !== undefined);
  if (original === undefined || isAskedFor) return {};
  const copy = mkdtempSync(join(tmpdir(), 'lotward-test-'));
  cpSync(original, copy, { recursive: true });
  if (engine === 'sqlite') return { dataFolder: copy };
  const database = new URL(readFileSync(join(copy, databaseOfFirstStart), 'utf8')).pathname.slice(1);
  rmSync(join(copy, databaseOfFirstStart));
  return { dataFolder: copy, databaseUrl: await makePostgresDatabase(undefined, database) };
}

/**
 * Starts the built service with an owner who signed in and a token of theirs, and nothing else in it, or on the data of an
 * earlier start.
 */
export async function startService(
  engine: TestedEngine = 'sqlite',
  options: StartOptions = {},
): Promise<RunningService> {
  const { url, dataFolder, databaseUrl, child, log } = await startProcess(engine, {
    ...options,
    ...(await copyOfFirstStart(engine, options)),
  });
  const token = await ownersToken(url, dataFolder, log.join(''));
  const [studio] = await answered<{ id: string }[]>(`${url}/api/v1/studios`, {
    headers: { authorization: `Bearer ${token}` },
  });
  return new RunningService(url, dataFolder, databaseUrl, child, log, studio?.id ?? '', token);
}

/** With what the owner that tests make signs in. */
export const testOwner = { signInName: 'owner@studio.example', password: 'nine green lamps drift' };

async function answered<Body>(address: string, init: RequestInit): Promise<Body> {
  const response = await fetch(address, init);
  if (!response.ok) throw new Error(`${address} was answered ${response.status}: ${await response.text()}`);
  return (await response.json()) as Body;
}

/**
 * A token of the owner: at the first start the owner comes in by the link on the console, as anybody would, and makes it;
 * at later starts on the same data it is read from a file that only tests have.
 */
async function ownersToken(url: string, dataFolder: string, log: string): Promise<string> {
  const kept = join(dataFolder, 'token-of-tests');
  const secret = /\/set-up#(\S+)/.exec(log)?.[1];
  if (secret === undefined) return readFileSync(kept, 'utf8');
  const headers = { 'content-type': 'application/json' };
  const setUp = await fetch(`${url}/api/v1/set-up`, {
    method: 'POST',
    headers,
    body: JSON.stringify({
      ...testOwner,
      secret,
      studioName: 'My studio',
      timeZone: 'UTC',
      ownerName: 'Owner',
    }),
  });
  if (setUp.status !== 204) throw new Error(`The set-up was answered ${setUp.status}: ${await setUp.text()}`);
  const cookie = setUp.headers
    .getSetCookie()
    .map((each) => each.split(';')[0])
    .join('; ');
  const [studio] = await answered<{ id: string }[]>(`${url}/api/v1/studios`, { headers: { cookie } });
  const { token } = await answered<{ token: string }>(`${url}/api/v1/studios/${studio?.id}/tokens`, {
    method: 'POST',
    headers: { ...headers, cookie },
    body: JSON.stringify({ id: uuidv7(), name: 'tests', scopes: permissionsOf('owner'), days: 30 }),
  });
  writeFileSync(kept, token);
  return token;
}
