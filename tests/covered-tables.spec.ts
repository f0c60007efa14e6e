import 'reflect-metadata';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addedColumns } from '../migrations/added-columns.js';
import { migrations } from '../migrations/list.js';
import { schema } from '../src/app.module.js';
import { keysOfRecord, uncoveredTables } from '../src/operations/verify/record-tables.js';
import { tableShapes } from '../src/operations/verify/table-shapes.query.js';
import { numberedByDatabase, rowDigest } from '../src/platform/audit/row-digest.js';
import { digestOf } from '../src/platform/canonical-json.js';
import { readConfig } from '../src/platform/config.js';
import { Database } from '../src/platform/database/database.js';
import { rowShape } from '../src/platform/database/rows.js';
import { openSnapshot, type Snapshot } from '../src/platform/database/snapshot.js';
import { type DataPlace, databasePlace, PlainSql } from './support/plain-sql.js';
import { engines, makePostgresDatabase } from './support/service.js';

describe.each(engines)('what the audit log covers, on %s', (engine) => {
  let place: DataPlace;
  let database: Database;
  let snapshot: Snapshot;
  let sql: PlainSql;

  beforeAll(async () => {
    place = {
      dataFolder: mkdtempSync(join(tmpdir(), 'lotward-covered-')),
      databaseUrl: engine === 'postgres' ? await makePostgresDatabase() : undefined,
    };
    const config = readConfig({ DATA_DIR: place.dataFolder, DATABASE_URL: place.databaseUrl });
    database = await Database.open(config, schema);
    snapshot = await openSnapshot(databasePlace(place));
    sql = await PlainSql.connect(place, 'read');
  });
  afterAll(async () => {
    await snapshot.close();
    await sql.close();
    await database.close();
    rmSync(place.dataFolder, { recursive: true, force: true });
  });

  it('is every table but for those that are listed with a reason', async () => {
    const covered = (await tableShapes(snapshot)).map(({ name }) => name);
    const all = await sql.tables();
    const ownOfMigrations = ['migrations'];
    expect([...covered, ...Object.keys(uncoveredTables)].sort()).toEqual([...all, ...ownOfMigrations].sort());
    for (const [table, reason] of Object.entries(uncoveredTables))
      expect(reason.length, table).toBeGreaterThan(20);
  });

  it('is every column of them but for the database’s own numbering', async () => {
    for (const { name, columns } of await tableShapes(snapshot)) {
      expect(columns, name).toEqual((await sql.columns(name)).map((column) => column.name));
    }
  });

  it('is named by entries and looked up by the verification with the same keys', async () => {
    const shapes = new Map((await tableShapes(snapshot)).map((shape) => [shape.name, shape]));
    const everybodys = [...shapes.values()]
      .filter(({ belongsTo }) => belongsTo === 'service')
      .map(({ name }) => name);
    for (const { target, tableName, primaryColumns } of database.writer.entityMetadatas) {
      const shape = shapes.get(tableName);
      if (!shape) continue;
      const written = rowShape(database.writer, target as new () => object);
      const [first] = primaryColumns;
      expect(shape, tableName).toMatchObject({
        key: written.key,
        owner: shape.belongsTo === 'service' ? null : first?.databaseName,
        numbered: written.numbered,
      });
      shapes.delete(tableName);
    }
    expect(everybodys).toEqual(['service_key']);
    // Whatever is covered must be written through entities.
    expect([...shapes.keys()]).toEqual([]);
  });
});

describe('columns that were added later', () => {
  it('are listed as the migrations add them', async () => {
    const added: Record<string, string[]> = {};
    const source = new DataSource({ type: 'better-sqlite3', database: ':memory:' });
    await source.initialize();
    const runner = source.createQueryRunner();
    let known = new Map<string, string[]>();
    for (const migration of migrations) {
      await new migration().up(runner);
      const found = new Map<string, string[]>();
      const rows: { name: string; column: string }[] = await runner.query(
        `SELECT tables.name, columns.name AS "column" FROM sqlite_schema AS tables
         JOIN pragma_table_info(tables.name) AS columns WHERE tables.type = 'table' ORDER BY tables.name, columns.name`,
      );
      for (const { name, column } of rows) found.set(name, [...(found.get(name) ?? []), column]);
      for (const [table, columns] of found) {
        const before = known.get(table);
        const fresh = before ? columns.filter((column) => !before.includes(column)) : [];
        if (fresh.length > 0) added[table] = [...(added[table] ?? []), ...fresh].sort();
      }
      known = found;
    }
    await source.destroy();
    const listed = Object.entries(addedColumns).map(([table, columns]) => [table, [...columns].sort()]);
    expect(added).toEqual(Object.fromEntries(listed));
  });

  it('are left out of the digest of a row while they are null, and only then', () => {
    const older = { studio_id: 's', id: 'p', role: 'owner' };
    const since = { ...older, account_id: null, until: null };
    expect(rowDigest('person', since)).toBe(digestOf(older));
    expect(rowDigest('person', { ...since, until: '2026-12-31' })).toBe(
      digestOf({ ...older, until: '2026-12-31' }),
    );
    expect(rowDigest('lot', since)).toBe(digestOf(since));
  });
});

describe('the digest of a row', () => {
  it('is another for every other value of every other column', () => {
    const value = fc.oneof(fc.string({ unit: 'grapheme' }), fc.integer(), fc.constant(null));
    fc.assert(
      fc.property(
        fc.dictionary(fc.string({ minLength: 1 }), value, { minKeys: 1 }),
        fc.nat(),
        value,
        (row, which, other) => {
          const columns = Object.keys(row);
          const column = columns[which % columns.length] ?? '';
          fc.pre(row[column] !== other);
          expect(rowDigest('lot', { ...row, [column]: other })).not.toBe(rowDigest('lot', row));
        },
      ),
    );
  });

  it('does not depend on the database’s numbering, which the entry tells beside it', () => {
    expect(Object.keys(keysOfRecord)).toEqual(Object.keys(numberedByDatabase));
    const movement = { studio_id: 's', id: 'm', pieces: -1 };
    expect(rowDigest('movement', { ...movement, sequence: 7 })).toBe(rowDigest('movement', movement));
  });
});
