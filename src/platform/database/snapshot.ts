import { existsSync } from 'node:fs';
import BetterSqlite3 from 'better-sqlite3';
import pg from 'pg';
import type { Config } from '../config.js';
import { OperatorError } from '../operator-error.js';
// Also lets pg read 64-bit numbers as numbers.
import './database.js';
import type { Engine, Read, SqlValue } from './database.js';

/** Where a database lies: the file of SQLite, or the URL of PostgreSQL. */
export type DatabasePlace = { file: string } | { url: string };

export function placeOf({ DATABASE_URL: url, sqliteFile: file }: Config): DatabasePlace {
  return url === undefined ? { file } : { url };
}

/**
 * A whole database as it stood at one moment, for long reads beside a service that goes on writing. It has a read-only
 * connection and one transaction of its own, and neither migrates nor locks anything.
 */
export interface Snapshot {
  readonly engine: Engine;
  /** Rows by column name, all at once. Parameters are `$1`, `$2`, …. */
  readonly read: Read;
  /** Rows as arrays in the order of the columns asked for, a batch at a time; one such walk at a time. */
  batches(sql: string, parameters?: readonly SqlValue[]): AsyncGenerator<SqlValue[][]>;
  close(): Promise<void>;
}

const rowsPerBatch = 500;
const busyTimeoutMilliseconds = 10_000;
const noDatabase: ReadonlySet<string> = new Set(['SQLITE_CORRUPT', 'SQLITE_NOTADB']);

/** @throws OperatorError when there is no such file, or it is no database */
export async function openSnapshot(place: DatabasePlace): Promise<Snapshot> {
  return 'file' in place ? SqliteSnapshot.open(place.file) : PostgresSnapshot.open(place.url);
}

class SqliteSnapshot implements Snapshot {
  readonly engine = 'sqlite';

  private constructor(private readonly database: BetterSqlite3.Database) {}

  static open(file: string): SqliteSnapshot {
    if (!existsSync(file)) throw new OperatorError(`There is no database at ${file}. Look at DATA_DIR.`);
    const database = new BetterSqlite3(file, { readonly: true, timeout: busyTimeoutMilliseconds });
    try {
      database.exec('BEGIN');
      // The moment of a transaction is that of its first read.
      database.prepare('SELECT count(*) FROM sqlite_schema').get();
      return new SqliteSnapshot(database);
    } catch (error) {
      database.close();
      if (!(error instanceof BetterSqlite3.SqliteError) || !noDatabase.has(error.code)) throw error;
      throw new OperatorError(
        `${file} cannot be read as a database (${error.message}). Put it aside and restore a backup.`,
      );
    }
  }

  readonly read: Read = async <Row>(sql: string, parameters: readonly SqlValue[] = []) =>
    this.database.prepare(sql).all(...bound(parameters)) as Row[];

  async *batches(sql: string, parameters: readonly SqlValue[] = []): AsyncGenerator<SqlValue[][]> {
    let batch: SqlValue[][] = [];
    const rows = this.database.prepare(sql).raw();
    for (const row of rows.iterate(...bound(parameters))) {
      batch.push(row as SqlValue[]);
      if (batch.length < rowsPerBatch) continue;
      yield batch;
      batch = [];
    }
    if (batch.length > 0) yield batch;
  }

  async close(): Promise<void> {
    this.database.close();
  }
}

/** better-sqlite3 takes `$1` for a parameter of the name `1`. */
function bound(parameters: readonly SqlValue[]): Record<string, SqlValue>[] {
  if (parameters.length === 0) return [];
  return [Object.fromEntries(parameters.map((value, index) => [String(index + 1), value]))];
}

class PostgresSnapshot implements Snapshot {
  readonly engine = 'postgres';
  private walks = 0;

  private constructor(private readonly client: pg.Client) {}

  static async open(url: string): Promise<PostgresSnapshot> {
    const client = new pg.Client({ connectionString: url });
    // A connection that breaks fails the query that is under way, which is where it is told.
    client.on('error', () => undefined);
    try {
      await client.connect();
      await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
      await client.query('SELECT 1');
    } catch (error) {
      await client.end();
      throw error;
    }
    return new PostgresSnapshot(client);
  }

  readonly read: Read = async <Row>(sql: string, parameters: readonly SqlValue[] = []) =>
    (await this.client.query(sql, [...parameters])).rows as Row[];

  async *batches(sql: string, parameters: readonly SqlValue[] = []): AsyncGenerator<SqlValue[][]> {
    this.walks += 1;
    const cursor = `walk_${this.walks}`;
    await this.client.query(`DECLARE ${cursor} NO SCROLL CURSOR FOR ${sql}`, [...parameters]);
    for (;;) {
      const { rows } = await this.client.query({
        text: `FETCH ${rowsPerBatch} FROM ${cursor}`,
        rowMode: 'array',
      });
      if (rows.length > 0) yield rows as SqlValue[][];
      if (rows.length < rowsPerBatch) break;
    }
    await this.client.query(`CLOSE ${cursor}`);
  }

  async close(): Promise<void> {
    await this.client.end();
  }
}
