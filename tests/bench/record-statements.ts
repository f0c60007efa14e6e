/**
 * Loaded into the service before it starts (`--import`), writes each statement that runs on SQLite, with its values and
 * the rows it gave, as one line of JSON to the file BENCH_RECORD. The service itself is not changed.
 */
import { appendFileSync } from 'node:fs';
import BetterSqlite3 from 'better-sqlite3';
import type { RecordedStatement } from './statement-template.js';

type Values = RecordedStatement['parameters'];

const file = process.env.BENCH_RECORD;
if (file === undefined) throw new Error('BENCH_RECORD names no file.');

const prepare = BetterSqlite3.prototype.prepare;

function prepareAndRecord(this: BetterSqlite3.Database, sql: string) {
  const statement = prepare.call(this, sql) as BetterSqlite3.Statement<unknown[], Record<string, unknown>>;
  const { readonly } = this;
  const record = (parameters: Values, rows: RecordedStatement['rows']) => {
    const line: RecordedStatement = { onReader: readonly, sql, parameters, rows };
    appendFileSync(file as string, `${JSON.stringify(line)}\n`);
  };
  const { all, run } = statement;
  statement.all = (...parameters: unknown[]) => {
    const rows = all.apply(statement, parameters);
    record(parameters as Values, rows);
    return rows;
  };
  statement.run = (...parameters: unknown[]) => {
    const result = run.apply(statement, parameters);
    record(parameters as Values, []);
    return result;
  };
  return statement;
}

BetterSqlite3.prototype.prepare = prepareAndRecord as typeof prepare;
