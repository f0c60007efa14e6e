import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import pg from 'pg';
import type { Config } from '../../platform/config.js';
import { OperatorError } from '../../platform/operator-error.js';
import { copyForGood } from '../backup/file-copies.service.js';
import { databaseFiles, type Manifest } from '../backup/manifest.js';
import { serverVersion } from '../backup/postgres-copy.service.js';
import { PostgresTools, requireVersion } from '../backup/postgres-tool.service.js';
import {
  chainEndFaults,
  type RecordFacts,
  type Rows,
  readRecordFacts,
} from '../backup/record-facts.service.js';
import { checkSqlite } from '../backup/sqlite-copy.service.js';

/**
 * Puts the database of a backup where the settings say, and checks that it is the one its manifest speaks of.
 * @param folder of the backup
 */
export async function restoreDatabase(config: Config, folder: string, manifest: Manifest): Promise<void> {
  const file = join(folder, databaseFiles[manifest.engine]);
  if (config.DATABASE_URL === undefined) {
    await copyForGood(file, config.sqliteFile);
    requireFacts(await checkSqlite(config.sqliteFile), manifest);
    return;
  }
  const tools = new PostgresTools(config.POSTGRES_CLIENT_DIR, config.DATABASE_URL);
  await tools.run(
    'pg_restore',
    ['--exit-on-error', '--single-transaction', '--no-owner', '--no-privileges', tools.database, file],
    { output: 'drop' },
  );
  await withRows(config.DATABASE_URL, async (rows) => {
    const faults = await chainEndFaults(rows);
    if (faults.length > 0) throw new OperatorError(`The restored record is damaged: ${faults.join('; ')}.`);
    requireFacts(await readRecordFacts('postgres', rows), manifest);
  });
}

/** @throws OperatorError when the PostgreSQL database holds tables, or the client is too old for its server */
export async function requireEmptyDatabase(config: Config): Promise<void> {
  const url = config.DATABASE_URL;
  if (url === undefined) return;
  const table = await firstTable(url);
  if (table !== undefined) {
    throw new OperatorError(
      `The database in DATABASE_URL is not empty: there is a table ${table}. A record is restored only into an empty database; make one with createdb.`,
    );
  }
  const tools = new PostgresTools(config.POSTGRES_CLIENT_DIR, url);
  await requireVersion(tools, 'pg_restore', await withRows(url, serverVersion));
}

/** A table of the PostgreSQL database, undefined when it has none. */
export function firstTable(url: string): Promise<string | undefined> {
  return withRows(url, async (rows) => {
    const [table] = await rows<{ name: string }>(
      `SELECT table_schema || '.' || table_name AS name FROM information_schema.tables
       WHERE table_schema NOT IN ('pg_catalog', 'information_schema') ORDER BY 1 LIMIT 1`,
    );
    return table?.name;
  });
}

async function withRows<Result>(url: string, work: (rows: Rows) => Promise<Result>): Promise<Result> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return await work(async <Row>(sql: string) => (await client.query(sql)).rows as Row[]);
  } finally {
    await client.end();
  }
}

function requireFacts(found: RecordFacts, { migrations, heads, masterKeyIds }: Manifest): void {
  if (isDeepStrictEqual(found, { migrations, heads, masterKeyIds })) return;
  throw new OperatorError(
    'The restored record is not the one of which the manifest speaks. Use another backup.',
  );
}
