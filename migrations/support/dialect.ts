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
