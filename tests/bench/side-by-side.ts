import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import BetterSqlite3 from 'better-sqlite3';
import { startService } from '../support/service.js';
import type { BareHandlerInput } from './bare-handler.js';
import type { BenchSettings } from './bench-settings.js';
import { type LoadRequest, runLoad, type Target } from './keep-alive-load.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { median } from './median.js';
import { processorMilliseconds } from './process-facts.js';
import { makeTemplate, type RecordedStatement, type RequestTemplate } from './statement-template.js';

export const databaseName = 'lotward.sqlite';

/** Trays are emptied between rounds, so that no more lies on them than in a busy studio. */
export const emptyTrays = "UPDATE tray_line SET state = 'taken off' WHERE state = 'on tray'";
const here = (file: string) => fileURLToPath(new URL(file, import.meta.url));

/** The same load on the service and on the bare handler. */
export interface Comparison {
  servicePerSecond: number;
  barePerSecond: number;
  /** Of each round. */
  ratios: number[];
  /** Processor time for one request, over all counted rounds; null where the system does not tell it. */
  serviceMilliseconds: number | null;
  bareMilliseconds: number | null;
  statements: Record<string, number>;
}

/**
 * Records what the service does for one request of each kind, then lets the service and the bare handler answer the same
 * load on equal copies of the database, in turn, round by round.
 * @param dataFolder of a stopped service
 * @param samples one request of each kind, as a chain
 * @param rounds the chains of each round, warm-up rounds first
 * @param between SQL that puts both databases back to where a round starts
 * @throws Error when the two have not written the same rows
 */
export async function compareSideBySide(
  dataFolder: string,
  samples: readonly LoadRequest[],
  rounds: readonly (readonly (readonly LoadRequest[])[])[],
  settings: BenchSettings,
  between: string | null,
): Promise<Comparison> {
  const templates = await recordTemplates(dataFolder, samples);
  const folder = makeFolder();
  const ofService = join(folder, 'service');
  const ofBare = join(folder, 'bare');
  for (const copy of [ofService, ofBare]) cpSync(dataFolder, copy, { recursive: true });
  const service = endWithBench(await startService('sqlite', { dataFolder: ofService }));
  const bare = await startBareHandler({ database: join(ofBare, databaseName), templates }, folder);
  try {
    const sides = { service: new Side(service, service.child.pid), bare: new Side(bare, bare.pid) };
    for (const [index, chains] of rounds.entries()) {
      const { service: one, bare: other } = sides;
      for (const side of index % 2 === 0 ? [one, other] : [other, one]) await side.run(chains, settings);
      if (between !== null) for (const copy of [ofService, ofBare]) runSql(join(copy, databaseName), between);
    }
    checkSameRows(join(ofService, databaseName), join(ofBare, databaseName));
    const ofServiceRounds = sides.service.counted(settings);
    const ofBareRounds = sides.bare.counted(settings);
    return {
      servicePerSecond: median(ofServiceRounds.map((round) => round.perSecond)),
      barePerSecond: median(ofBareRounds.map((round) => round.perSecond)),
      ratios: ofServiceRounds.map((round, index) => round.perSecond / (ofBareRounds[index]?.perSecond ?? 0)),
      serviceMilliseconds: millisecondsEach(ofServiceRounds),
      bareMilliseconds: millisecondsEach(ofBareRounds),
      statements: Object.fromEntries(
        Object.entries(templates).map(([kind, { statements }]) => [kind, statements.length]),
      ),
    };
  } finally {
    await service.stop();
    await bare.stop();
    removeFolder(folder);
  }
}

interface Round {
  perSecond: number;
  requests: number;
  processorMilliseconds: number | null;
}

class Side {
  private readonly rounds: Round[] = [];

  constructor(
    private readonly target: Target,
    private readonly pid: number | undefined,
  ) {}

  async run(chains: readonly (readonly LoadRequest[])[], { connections }: BenchSettings): Promise<void> {
    const before = processorMilliseconds(this.pid);
    const { answers, perSecond } = await runLoad(this.target, chains, connections);
    const after = processorMilliseconds(this.pid);
    this.rounds.push({
      perSecond,
      requests: answers.flat().length,
      processorMilliseconds: before === null || after === null ? null : after - before,
    });
  }

  counted({ warmUpRounds }: BenchSettings): Round[] {
    return this.rounds.slice(warmUpRounds);
  }
}

function millisecondsEach(rounds: readonly Round[]): number | null {
  let milliseconds = 0;
  let requests = 0;
  for (const round of rounds) {
    if (round.processorMilliseconds === null) return null;
    milliseconds += round.processorMilliseconds;
    requests += round.requests;
  }
  return milliseconds / requests;
}

export function runSql(file: string, sql: string): void {
  const database = new BetterSqlite3(file, { timeout: 10_000 });
  database.exec(sql);
  database.close();
}

/** On a copy of the data, so that recording leaves no trace. */
async function recordTemplates(
  dataFolder: string,
  samples: readonly LoadRequest[],
): Promise<Record<string, RequestTemplate>> {
  const folder = makeFolder();
  const copy = join(folder, 'data');
  const log = join(folder, 'statements');
  cpSync(dataFolder, copy, { recursive: true });
  writeFileSync(log, '');
  const service = endWithBench(
    await startService('sqlite', {
      dataFolder: copy,
      environment: {
        NODE_OPTIONS: `--import ${new URL('record-statements.js', import.meta.url).href}`,
        BENCH_RECORD: log,
      },
    }),
  );
  try {
    const templates: Record<string, RequestTemplate> = {};
    for (const sample of samples) {
      const before = statSync(log).size;
      const { answers } = await runLoad(service, [[sample]], 1);
      const recorded = readFileSync(log)
        .subarray(before)
        .toString('utf8')
        .split('\n')
        .filter((line) => line !== '')
        .map((line) => JSON.parse(line) as RecordedStatement);
      templates[sample.kind] = {
        statements: makeTemplate(recorded, { params: paramsOf(sample.path), body: sample.body ?? {} }),
        answer: answers[0]?.[0]?.text ?? '',
      };
    }
    return templates;
  } finally {
    await service.stop();
    removeFolder(folder);
  }
}

function paramsOf(path: string): Record<string, string> {
  const [, studioId = '', sessionId = ''] = /studios\/([^/]+)\/sessions\/([^/]+)/.exec(path) ?? [];
  return { studioId, sessionId };
}

async function startBareHandler(input: BareHandlerInput, folder: string) {
  const file = join(folder, 'bare-handler.json');
  writeFileSync(file, JSON.stringify(input));
  const child = spawn(process.execPath, [here('bare-handler.js'), file], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  endWithBench({ child });
  return { url: await readyUrl(child), pid: child.pid, stop: () => stopChild(child) };
}

function readyUrl(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let told = '';
    child.stdout?.on('data', (chunk: Buffer) => {
      told += chunk.toString('utf8');
      const url = /ready on (\S+)/.exec(told)?.[1];
      if (url !== undefined) resolve(url);
    });
    child.once('exit', (code) =>
      reject(new Error(`The bare handler ended with ${code} before it was ready.`)),
    );
  });
}

async function stopChild(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  await ended;
}

const comparedTables = [
  'accepted_request',
  'scan',
  'tray_line',
  'unmet_demand',
  'movement',
  'session_use',
  'alert',
  'outbox',
];

/**
 * Both must have written the same number of rows, and brought the balances equally far.
 * @throws Error saying how they differ
 */
export function checkSameRows(first: string, second: string): void {
  const [ours, bare] = [first, second].map((file) => {
    const database = new BetterSqlite3(file, { readonly: true });
    const one = (sql: string) => database.prepare(sql).pluck().get();
    const counts = [
      ...comparedTables.map((table) => `${table}: ${one(`SELECT count(*) FROM ${table}`)}`),
      // The service also sweeps the alerts by itself, which is no part of the load.
      `entries: ${one("SELECT count(*) FROM audit_entry WHERE action LIKE 'sessions.%'")}`,
      `pieces: ${one('SELECT sum(pieces) FROM balance')}`,
      `microlitres: ${one('SELECT sum(microlitres) FROM balance')}`,
      `completed: ${one("SELECT count(*) FROM session WHERE state = 'completed'")}`,
    ].join(', ');
    database.close();
    return counts;
  });
  if (ours !== bare) throw new Error(`The two have not done the same.\nservice: ${ours}\nbare:    ${bare}`);
}
