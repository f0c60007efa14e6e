import { mkdirSync } from 'node:fs';
import type BetterSqlite3 from 'better-sqlite3';
import pg from 'pg';
import {
  DataSource,
  type EntityManager,
  type EntitySchema,
  type MigrationInterface,
  type QueryRunner,
} from 'typeorm';
import type { Config } from '../config.js';
import { SnakeCaseNaming } from './snake-case.naming.js';

export type Engine = 'sqlite' | 'postgres';
export type SqlValue = string | number | null;
/** Reads rows, inside a transaction or outside: `Transaction.read` and `Database.read` both fit. */
export type Read = <Row>(sql: string, parameters?: readonly SqlValue[]) => Promise<Row[]>;

export type EntityClass = new () => object;

export interface Schema {
  entities: (EntityClass | EntitySchema)[];
  migrations: (new () => MigrationInterface)[];
  /**
   * Called before the schema of a database that holds a record is changed. What it throws stops the change.
   * @param pending names of the migrations that are about to be carried out
   */
  beforeMigrating?: (config: Config, pending: readonly string[]) => Promise<void>;
  /** The schema is used as it is found, and refused when it is not the one of this version. */
  isLeftAsItIs?: boolean;
}

const busyTimeoutMilliseconds = 10_000;
const cutTimeoutMilliseconds = 200;
const postgresPoolSize = 10;

// Counts and sums are 64-bit in PostgreSQL and would come back as text; every quantity here is far below 2^53.
pg.types.setTypeParser(pg.types.builtins.INT8, Number);
pg.types.setTypeParser(pg.types.builtins.NUMERIC, Number);

/**
 * The database of the service. On SQLite `writer` is the one connection that writes, used only through `Transactions`,
 * and `reader` a second, read-only one on the same file, so that plain reads never see what is not committed.
 * On PostgreSQL both are the same pool.
 */
export class Database {
  private constructor(
    readonly engine: Engine,
    readonly writer: DataSource,
    readonly reader: DataSource,
  ) {}

  /** Opens the database, bringing its schema up to date. Refuses a schema newer than the program. */
  static async open(
    config: Config,
    { entities, migrations, beforeMigrating, isLeftAsItIs = false }: Schema,
  ): Promise<Database> {
    const naming = { entities, migrations, namingStrategy: new SnakeCaseNaming(), synchronize: false };
    const prepare = async (pending: readonly string[], holdsRecord: boolean) => {
      if (isLeftAsItIs) throw new SchemaTooOldError(pending);
      if (holdsRecord) await beforeMigrating?.(config, pending);
    };
    if (config.DATABASE_URL !== undefined) {
      const source = new DataSource({
        ...naming,
        type: 'postgres',
        url: config.DATABASE_URL,
        poolSize: postgresPoolSize,
      });
      await openMigrated(source, prepare);
      return new Database('postgres', source, source);
    }
    mkdirSync(config.dataFolder, { recursive: true, mode: 0o700 });
    const writer = new DataSource({
      ...naming,
      type: 'better-sqlite3',
      database: config.sqliteFile,
      enableWAL: true,
      timeout: busyTimeoutMilliseconds,
      statementCacheSize: 500,
      // A ledger must not lose its last entries with the power: better-sqlite3 opens WAL files at NORMAL.
      prepareDatabase: (database: BetterSqlite3.Database) => {
        database.pragma('journal_mode = WAL');
        database.pragma('synchronous = FULL');
        database.pragma('foreign_keys = ON');
        // What is deleted is overwritten: a destroyed key must not stay behind in the free part of a page.
        database.pragma('secure_delete = ON');
        // Else INSERT OR REPLACE would delete past the triggers that refuse it.
        database.pragma('recursive_triggers = ON');
      },
    });
    await openMigrated(writer, prepare);
    const reader = new DataSource({
      ...naming,
      type: 'better-sqlite3',
      database: config.sqliteFile,
      readonly: true,
      timeout: busyTimeoutMilliseconds,
      statementCacheSize: 500,
    });
    await reader.initialize();
    return new Database('sqlite', writer, reader);
  }

  /** Reads committed rows. Parameters are `$1`, `$2`, … on both engines. */
  readonly read: Read = (sql, parameters = []) => query(this.reader.manager, this.engine, sql, parameters);

  /**
   * Writes all pages back into SQLite's file and cuts the write-ahead log to nothing, so that no older page stays on
   * disk. Only through `Transactions`, between two writes. On PostgreSQL there is nothing to do here: VACUUM is its own.
   * @returns false when somebody else reads, so that the log is still needed
   */
  async cutLog(): Promise<boolean> {
    if (this.engine === 'postgres') return true;
    try {
      // A reader in another process may take its time; every request would wait with this thread.
      await this.writer.query(`PRAGMA busy_timeout = ${cutTimeoutMilliseconds}`);
      const [result] = (await this.writer.query('PRAGMA wal_checkpoint(TRUNCATE)')) as { busy: number }[];
      return result?.busy === 0;
    } finally {
      await this.writer.query(`PRAGMA busy_timeout = ${busyTimeoutMilliseconds}`);
    }
  }

  async close(): Promise<void> {
    if (this.reader.isInitialized) await this.reader.destroy();
    if (this.writer.isInitialized) await this.writer.destroy();
  }
}

/** `$2, $3, $4` for the values of an IN list, the first at `$first`. */
export function placeholders(values: readonly unknown[], first = 2): string {
  return values.map((_, index) => `$${first + index}`).join(', ');
}

interface PositionalStatement {
  text: string;
  /** Which parameter stands at each `?`. */
  order: number[];
}

const rememberedStatements = 2_000;
const positionalStatements = new Map<string, PositionalStatement>();

/** better-sqlite3 binds `?` by position but takes `$1` for a name, so numbered parameters are put in order. */
function positional(sql: string): PositionalStatement {
  let statement = positionalStatements.get(sql);
  if (!statement) {
    const order: number[] = [];
    const text = sql.replace(/\$(\d+)/g, (_, number: string) => {
      order.push(Number(number) - 1);
      return '?';
    });
    statement = { text, order };
    if (positionalStatements.size < rememberedStatements) positionalStatements.set(sql, statement);
  }
  return statement;
}

/** Runs SQL written with `$1`, `$2`, … and returns its rows, also those of RETURNING. */
export async function query<Row>(
  manager: EntityManager,
  engine: Engine,
  sql: string,
  parameters: readonly SqlValue[],
): Promise<Row[]> {
  let text = sql;
  let values = [...parameters];
  if (engine === 'sqlite') {
    const statement = positional(sql);
    text = statement.text;
    values = statement.order.map((index) => {
      const value = parameters[index];
      if (value === undefined) throw new RangeError(`Parameter $${index + 1} of a statement is missing.`);
      return value;
    });
  }
  const runner: QueryRunner = manager.queryRunner ?? manager.dataSource.createQueryRunner();
  try {
    const result = await runner.query(text, values, true);
    return (result.records ?? []) as Row[];
  } finally {
    if (manager.queryRunner === undefined) await runner.release();
  }
}

export class SchemaTooNewError extends Error {}

export class SchemaTooOldError extends Error {
  constructor(pending: readonly string[]) {
    super(
      `The database has the schema of an older version of Lotward, or none yet (it lacks ${pending.join(', ')}). Start the service of this version first: it brings the schema up to date. Then start this again.`,
    );
  }
}

type Prepare = (pending: readonly string[], holdsRecord: boolean) => Promise<void>;

/** Opens a source and brings its schema up to date; on any failure nothing stays open. */
async function openMigrated(source: DataSource, prepare: Prepare): Promise<void> {
  await source.initialize();
  try {
    await migrate(source, prepare);
  } catch (error) {
    await source.destroy();
    throw error;
  }
}

async function migrate(source: DataSource, prepare: Prepare): Promise<void> {
  const known = source.migrations.map((migration) => migration.name ?? migration.constructor.name);
  const applied = await appliedMigrations(source);
  const unknown = applied.filter((name) => !known.includes(name));
  if (unknown.length > 0) {
    throw new SchemaTooNewError(
      `The database was written by a newer version of Lotward (it has ${unknown.join(', ')}). Start that version, or restore an older backup.`,
    );
  }
  const pending = known.filter((name) => !applied.includes(name));
  if (pending.length > 0) await prepare(pending, await holdsRecord(source));
  await source.runMigrations({ transaction: 'each' });
}

async function appliedMigrations(source: DataSource): Promise<string[]> {
  const runner = source.createQueryRunner();
  try {
    if (!(await runner.hasTable('migrations'))) return [];
    const applied = (await runner.query('SELECT name FROM migrations')) as { name: string }[];
    return applied.map(({ name }) => name);
  } finally {
    await runner.release();
  }
}

/** Whether anything was ever recorded; a database whose first start was interrupted has tables and no entry. */
async function holdsRecord(source: DataSource): Promise<boolean> {
  const runner = source.createQueryRunner();
  try {
    if (!(await runner.hasTable('audit_entry'))) return false;
    return ((await runner.query('SELECT 1 FROM audit_entry LIMIT 1')) as unknown[]).length > 0;
  } finally {
    await runner.release();
  }
}
