import BetterSqlite3 from 'better-sqlite3';
import {
  chainEndFaults,
  damagedRecord,
  type RecordFacts,
  type Rows,
  readRecordFacts,
} from './record-facts.service.js';

const busyTimeoutMilliseconds = 10_000;
/** 1 MB at SQLite's usual page of 4 KiB: between two steps the copying can be broken off. */
const pagesPerStep = 256;

/**
 * Copies an SQLite database while others write to it, and checks the copy. It shows the record as it stood at one
 * instant after the call, and is one file that needs no other beside it. Takes its thread for itself, for seconds when
 * the database is large.
 * @throws Error with a `code` of SQLite or `DAMAGED_RECORD` when the copy cannot be made or is not whole
 */
export async function copySqlite(
  source: string,
  target: string,
  signal: AbortSignal | undefined,
): Promise<RecordFacts> {
  await copy(source, target, signal);
  return checkSqlite(target);
}

/**
 * SQLite's backup begins anew whenever somebody wrote between two of its steps, so under a steady load it would never
 * end. Inside a read transaction the source stands still for this connection alone, and writers go on.
 */
async function copy(source: string, target: string, signal: AbortSignal | undefined): Promise<void> {
  const database = new BetterSqlite3(source, { readonly: true, timeout: busyTimeoutMilliseconds });
  try {
    database.exec('BEGIN');
    database.prepare('SELECT count(*) FROM sqlite_schema').get();
    await database.backup(target, {
      progress: () => {
        signal?.throwIfAborted();
        return pagesPerStep;
      },
    });
  } finally {
    database.close();
  }
}

/**
 * Looks whether a copy of the record is whole, and what it holds. Opens it for writing, so that it needs no other file
 * beside it afterwards, but changes no row.
 */
export async function checkSqlite(file: string): Promise<RecordFacts> {
  const database = new BetterSqlite3(file, { timeout: busyTimeoutMilliseconds, fileMustExist: true });
  try {
    database.pragma('journal_mode = DELETE');
    const rows: Rows = async <Row>(sql: string) => database.prepare(sql).all() as Row[];
    const integrity = database.pragma('integrity_check') as { integrity_check: string }[];
    const keys = database.pragma('foreign_key_check') as { table: string; rowid: number }[];
    const faults = [
      ...integrity.map((row) => row.integrity_check).filter((line) => line !== 'ok'),
      ...keys.map(({ table, rowid }) => `row ${rowid} of ${table} refers to what is not there`),
      ...(await chainEndFaults(rows)),
    ];
    if (faults.length > 0) throw damagedRecord(faults);
    return await readRecordFacts('sqlite', rows);
  } finally {
    database.close();
  }
}
