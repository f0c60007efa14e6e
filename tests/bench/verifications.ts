import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { SeededRandom } from '../support/random.js';
import { writeAuditLog } from './audited-data.js';
import type { BenchSettings } from './bench-settings.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { median } from './median.js';
import { residentMebibytes } from './process-facts.js';
import { makeTraceData } from './trace-data.js';

export interface VerificationComparison {
  movements: number;
  /** Of all tables, audit entries included. */
  rows: number;
  commandSeconds: number;
  rawSeconds: number;
  ratios: number[];
  /** The most that the command held at once; null where the system does not tell it under /proc. */
  mebibytes: number | null;
}

const memoryLookMilliseconds = 50;

/** A long ledger verified by the command, against reading every row of the same file once and hashing it. */
export async function benchVerifications(settings: BenchSettings): Promise<VerificationComparison> {
  const dataFolder = makeFolder();
  try {
    const ledger = { ...settings, traceMovements: settings.verifiedMovements };
    const { studioId, movements } = await makeTraceData(dataFolder, ledger, new SeededRandom(settings.seed));
    await writeAuditLog(dataFolder, studioId);
    const rounds: { command: number; raw: number; mebibytes: number | null }[] = [];
    let rows = 0;
    for (let round = 0; round < settings.verifications; round += 1) {
      const startedAt = performance.now();
      rows = readAndHash(join(dataFolder, 'lotward.sqlite'));
      const readAt = performance.now();
      const mebibytes = await runVerify(dataFolder);
      rounds.push({ raw: readAt - startedAt, command: performance.now() - readAt, mebibytes });
    }
    const held = rounds.flatMap(({ mebibytes }) => mebibytes ?? []);
    return {
      movements,
      rows,
      commandSeconds: median(rounds.map(({ command }) => command)) / 1_000,
      rawSeconds: median(rounds.map(({ raw }) => raw)) / 1_000,
      ratios: rounds.map(({ command, raw }) => command / raw),
      mebibytes: held.length > 0 ? Math.max(...held) : null,
    };
  } finally {
    removeFolder(dataFolder);
  }
}

/** The least that any look at every row must do. @returns how many there are */
function readAndHash(file: string): number {
  const database = new BetterSqlite3(file, { readonly: true });
  try {
    const tables = database
      .prepare(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'",
      )
      .pluck()
      .all() as string[];
    let rows = 0;
    for (const table of tables) {
      for (const row of database.prepare(`SELECT * FROM "${table}"`).raw().iterate()) {
        createHash('sha256').update(JSON.stringify(row)).digest('hex');
        rows += 1;
      }
    }
    return rows;
  } finally {
    database.close();
  }
}

/** @returns the most memory the command held, in MiB */
async function runVerify(dataFolder: string): Promise<number | null> {
  const child = spawn(process.execPath, ['dist/service/cli.js', 'verify'], {
    env: { PATH: process.env.PATH, DATA_DIR: dataFolder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  endWithBench({ child });
  let told = '';
  let most: number | null = null;
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    told += text;
  });
  const look = setInterval(() => {
    const held = residentMebibytes(child.pid);
    if (held !== null) most = Math.max(most ?? 0, held);
  }, memoryLookMilliseconds);
  const code = await new Promise<number | null>((resolve) => child.once('close', resolve));
  clearInterval(look);
  if (code !== 0) throw new Error(`The record of the bench does not verify (${code}):\n${told}`);
  return most;
}
