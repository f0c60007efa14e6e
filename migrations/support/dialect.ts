import type { QueryRunner } from 'typeorm';

/**
 * Both engines share one set of statements: text, integers and keys only. Instants are ISO 8601 text in UTC with
 * milliseconds and plain dates ISO text, which sort as time does; JSON is canonical text.
 */
export function isPostgres(runner: QueryRunner): boolean {
  return runner.dataSource.options.type === 'postgres';
}

/**
 * Runs statements written with TEXT and INTEGER. On PostgreSQL text compares by code point, as it does on SQLite, so
 * that codes and instants sort alike on both.
 */
export async function run(runner: QueryRunner, statements: string[]): Promise<void> {
  for (const statement of statements) {
    const text = isPostgres(runner) ? statement.replace(/\bTEXT\b/g, 'TEXT COLLATE "C"') : statement;
    await runner.query(text);
  }
}

/** Lets the database itself refuse to change or delete what was recorded. */
export async function appendOnly(runner: QueryRunner, tables: string[]): Promise<void> {
  if (isPostgres(runner)) {
    await runner.query(`CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
      BEGIN RAISE EXCEPTION '% is append-only: nothing recorded is altered', TG_TABLE_NAME; END $$`);
  }
  for (const table of tables) {
    for (const change of ['UPDATE', 'DELETE']) {
      const name = `${table}_refuses_${change.toLowerCase()}`;
      await runner.query(
        isPostgres(runner)
          ? `CREATE TRIGGER ${name} BEFORE ${change} ON ${table} FOR EACH ROW EXECUTE FUNCTION refuse_change()`
          : `CREATE TRIGGER ${name} BEFORE ${change} ON ${table}
             BEGIN SELECT RAISE(ABORT, '${table} is append-only: nothing recorded is altered'); END`,
      );
    }
    await refuseTruncate(runner, table, 'refuse_change');
  }
}

/** Lets the database refuse the deletion of rows whose state may change but which are part of the record. */
export async function neverDeleted(runner: QueryRunner, tables: string[]): Promise<void> {
  if (isPostgres(runner)) {
    await runner.query(`CREATE OR REPLACE FUNCTION refuse_delete() RETURNS trigger LANGUAGE plpgsql AS $$
      BEGIN RAISE EXCEPTION '% is part of the record: nothing is deleted', TG_TABLE_NAME; END $$`);
  }
  for (const table of tables) {
    const name = `${table}_refuses_delete`;
    await runner.query(
      isPostgres(runner)
        ? `CREATE TRIGGER ${name} BEFORE DELETE ON ${table} FOR EACH ROW EXECUTE FUNCTION refuse_delete()`
        : `CREATE TRIGGER ${name} BEFORE DELETE ON ${table}
           BEGIN SELECT RAISE(ABORT, '${table} is part of the record: nothing is deleted'); END`,
    );
    await refuseTruncate(runner, table, 'refuse_delete');
  }
}

/** TRUNCATE fires no trigger of a row. SQLite has none; what REPLACE deletes there fires triggers by a setting of the connection. */
async function refuseTruncate(runner: QueryRunner, table: string, refusal: string): Promise<void> {
  if (!isPostgres(runner)) return;
  await runner.query(
    `CREATE TRIGGER ${table}_refuses_truncate BEFORE TRUNCATE ON ${table} FOR EACH STATEMENT EXECUTE FUNCTION ${refusal}()`,
  );
}

/** A CHECK that a column holds one of some words. */
export function oneOf(column: string, words: readonly string[]): string {
  return `CHECK (${column} IN (${words.map((word) => `'${word.replace(/'/g, "''")}'`).join(', ')}))`;
}

/** A CHECK of the form of a plain date; whether it exists is decided by the rules. */
export function isDate(column: string): string {
  return `CHECK (${column} IS NULL OR (length(${column}) = 10 AND ${column} LIKE '____-__-__'))`;
}

/** A CHECK of the form of an instant, `2026-03-01T09:30:00.000Z`. */
export function isInstant(column: string): string {
  return `CHECK (${column} IS NULL OR (length(${column}) = 24 AND ${column} LIKE '____-__-__T__:__:__.___Z'))`;
}

interface SchemaObject {
  type: string;
  name: string;
  sql: string;
}

/**
 * Replaces one CHECK of a column by another, in a transaction of its own. On SQLite the table is made anew, copied and
 * renamed with foreign keys off, as its documentation of ALTER TABLE prescribes; its indexes and triggers are made again.
 * Run again after a kill it finds the new CHECK and does nothing.
 */
export async function replaceCheck(
  runner: QueryRunner,
  table: string,
  before: string,
  after: string,
): Promise<void> {
  if (isPostgres(runner)) {
    const column = /^CHECK \((\w+) /.exec(after)?.[1];
    await runner.query(`ALTER TABLE ${table} DROP CONSTRAINT IF EXISTS ${table}_${column}_check`);
    await runner.query(`ALTER TABLE ${table} ADD CONSTRAINT ${table}_${column}_check ${after}`);
    return;
  }
  const objects = (await runner.query(
    `SELECT type, name, sql FROM sqlite_schema WHERE tbl_name = '${table}' AND sql IS NOT NULL`,
  )) as SchemaObject[];
  const definition = objects.find(({ type }) => type === 'table')?.sql ?? '';
  if (definition.includes(after)) return;
  if (!definition.includes(before)) throw new Error(`The table ${table} has no ${before}.`);
  await runner.query('PRAGMA foreign_keys = OFF');
  try {
    await runner.startTransaction();
    await runner.query(
      definition.replace(before, after).replace(`CREATE TABLE ${table}`, `CREATE TABLE ${table}_anew`),
    );
    await runner.query(`INSERT INTO ${table}_anew SELECT * FROM ${table}`);
    await runner.query(`DROP TABLE ${table}`);
    await runner.query(`ALTER TABLE ${table}_anew RENAME TO ${table}`);
    for (const { type, sql } of objects) if (type !== 'table') await runner.query(sql);
    const broken = (await runner.query('PRAGMA foreign_key_check')) as unknown[];
    if (broken.length > 0) throw new Error(`Rows refer to ${table} in vain.`);
    await runner.commitTransaction();
  } catch (error) {
    if (runner.isTransactionActive) await runner.rollbackTransaction();
    throw error;
  } finally {
    await runner.query('PRAGMA foreign_keys = ON');
  }
}
