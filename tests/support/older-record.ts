import { schema } from '../../src/app.module.js';
import { readConfig } from '../../src/platform/config.js';
import { Database } from '../../src/platform/database/database.js';
import { type DataPlace, PlainSql } from './plain-sql.js';

/** What the first version that anybody could have used had applied. */
const olderCount = 5;

/** Names of the migrations, in order. */
export const allMigrations = schema.migrations.map(({ name }) => name);
export const olderMigrations = allMigrations.slice(0, olderCount);

/** Makes the record of a version that had fewer migrations: one studio, one entry. */
export async function makeOlderRecord(place: DataPlace): Promise<void> {
  const { dataFolder, databaseUrl } = place;
  const older = await Database.open(readConfig({ DATA_DIR: dataFolder, DATABASE_URL: databaseUrl }), {
    ...schema,
    migrations: schema.migrations.slice(0, olderCount),
  });
  await older.close();
  const sql = await PlainSql.connect(place, 'write');
  const at = '2026-01-01T08:00:00.000Z';
  const hash = 'ab'.repeat(32);
  await sql.rows(`INSERT INTO chain (id, name, created_at) VALUES ('chain', 'Old', '${at}')`);
  await sql.rows(
    `INSERT INTO studio VALUES ('studio', 'chain', 'Old', 'UTC', 'EUR', '07:00', 60, 14, NULL, 'off', 1, '${at}')`,
  );
  await sql.rows(`INSERT INTO audit_head VALUES ('studio', 1, '${hash}')`);
  await sql.rows(
    `INSERT INTO audit_entry VALUES ('studio', 1, '${at}', NULL, 'system', 'made', 'studio', 'studio', '{}', '${'0'.repeat(64)}', '${hash}')`,
  );
  await sql.close();
}

export async function migrationsApplied(place: DataPlace): Promise<string[]> {
  const sql = await PlainSql.connect(place, 'read');
  const rows = await sql.rows<{ name: string }>('SELECT name FROM migrations ORDER BY id');
  await sql.close();
  return rows.map(({ name }) => name);
}
