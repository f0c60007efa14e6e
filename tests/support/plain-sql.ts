import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import pg from 'pg';
import type { DatabasePlace } from '../../src/platform/database/snapshot.js';
import type { TestedEngine } from './service.js';

export type PlainValue = string | number | null;
export type PlainRow = Record<string, PlainValue>;

/** Where a service keeps its data. */
export interface DataPlace {
  dataFolder: string;
  databaseUrl?: string | undefined;
}

export function databasePlace({ dataFolder, databaseUrl }: DataPlace): DatabasePlace {
  return databaseUrl === undefined ? { file: join(dataFolder, 'lotward.sqlite') } : { url: databaseUrl };
}

/** The database of a service, seen past the service: by SQL alone, as any other program could reach it. */
export class PlainSql {
  private constructor(
    readonly engine: TestedEngine,
    readonly place: DataPlace,
    private readonly sqlite: BetterSqlite3.Database | undefined,
    private readonly postgres: pg.Client | undefined,
  ) {}

  /** @param access `read` cannot change anything, also on SQLite while the service runs */
  static async connect(place: DataPlace, access: 'read' | 'write'): Promise<PlainSql> {
    if (place.databaseUrl === undefined) {
      const file = join(place.dataFolder, 'lotward.sqlite');
      const sqlite = new BetterSqlite3(file, { readonly: access === 'read', timeout: 10_000 });
      return new PlainSql('sqlite', place, sqlite, undefined);
    }
    pg.types.setTypeParser(pg.types.builtins.INT8, Number);
    pg.types.setTypeParser(pg.types.builtins.NUMERIC, Number);
    const postgres = new pg.Client({ connectionString: place.databaseUrl });
    await postgres.connect();
    if (access === 'read') await postgres.query('SET default_transaction_read_only = on');
    return new PlainSql('postgres', place, undefined, postgres);
  }

  /** Runs one statement, with parameters `$1`, `$2`, … in this order, and returns its rows. */
  async rows<Row = PlainRow>(sql: string, parameters: readonly PlainValue[] = []): Promise<Row[]> {
    if (this.postgres) return (await this.postgres.query(sql, [...parameters])).rows as Row[];
    const statement = this.sqlite?.prepare(sql.replace(/\$\d+/g, '?'));
    if (!statement) throw new Error('The connection is closed.');
    if (statement.reader) return statement.all(...parameters) as Row[];
    statement.run(...parameters);
    return [];
  }

  /** The tables of the schema, without those that the engine or the migrations keep for themselves. */
  async tables(): Promise<string[]> {
    const found = await this.rows<{ name: string }>(
      this.engine === 'sqlite'
        ? "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
        : "SELECT table_name AS name FROM information_schema.tables WHERE table_schema = 'public'",
    );
    return found
      .map(({ name }) => name)
      .filter((name) => name !== 'migrations' && name !== 'typeorm_metadata')
      .sort();
  }

  /** The columns of a table; what is part of a primary key counts as never null. */
  async columns(table: string): Promise<{ name: string; nullable: boolean; type: 'text' | 'integer' }[]> {
    const found =
      this.engine === 'sqlite'
        ? (
            await this.rows<{ name: string; type: string; notnull: number; pk: number }>(
              `PRAGMA table_info("${table}")`,
            )
          ).map(({ name, type, notnull, pk }) => ({ name, type, nullable: notnull === 0 && pk === 0 }))
        : (
            await this.rows<{ column_name: string; data_type: string; is_nullable: string }>(
              `SELECT column_name, data_type, is_nullable FROM information_schema.columns
               WHERE table_schema = 'public' AND table_name = $1`,
              [table],
            )
          ).map((row) => ({
            name: row.column_name,
            type: row.data_type,
            nullable: row.is_nullable === 'YES',
          }));
    return found
      .map((column) => ({
        ...column,
        type: /int/i.test(column.type) ? ('integer' as const) : ('text' as const),
      }))
      .sort((one, other) => (one.name < other.name ? -1 : 1));
  }

  async close(): Promise<void> {
    this.sqlite?.close();
    await this.postgres?.end();
  }
}
