import type { Snapshot } from '../../platform/database/snapshot.js';
import type { Findings } from './findings.store.js';

const mostShown = 100;

/** The database's own checks: on SQLite the file with its indexes and constraints, on both engines the foreign keys. */
export async function checkDatabase(snapshot: Snapshot, findings: Findings): Promise<void> {
  if (snapshot.engine === 'sqlite') {
    await checkFile(snapshot, findings);
    await checkSqliteKeys(snapshot, findings);
  } else {
    await checkPostgresKeys(snapshot, findings);
  }
}

async function checkFile(snapshot: Snapshot, findings: Findings): Promise<void> {
  const lines = await snapshot.read<{ integrity_check: string }>(`PRAGMA integrity_check(${mostShown})`);
  for (const { integrity_check: line } of lines) {
    if (line === 'ok') continue;
    await findings.add(about(null, null), `The database file is damaged: ${line}.`);
  }
}

async function checkSqliteKeys(snapshot: Snapshot, findings: Findings): Promise<void> {
  const broken = snapshot.batches('SELECT "table", rowid, parent FROM pragma_foreign_key_check');
  for await (const batch of broken) {
    for (const [table, rowid, parent] of batch) {
      await findings.add(
        about(String(table), String(rowid)),
        `Row number ${rowid} of ${table} names a ${parent} that is not there.`,
      );
    }
  }
}

interface ForeignKey {
  name: string;
  child: string;
  parent: string;
  columns: string[];
  parent_columns: string[];
}

const columnsOf = (relation: string, numbers: string) => `(
    SELECT json_agg(attribute.attname ORDER BY place.ordinality)
    FROM unnest(${numbers}) WITH ORDINALITY AS place (number, ordinality)
    JOIN pg_attribute AS attribute ON attribute.attrelid = ${relation} AND attribute.attnum = place.number)`;

const foreignKeys = `SELECT keys.conname AS name, child.relname AS child, parent.relname AS parent,
    ${columnsOf('keys.conrelid', 'keys.conkey')} AS columns,
    ${columnsOf('keys.confrelid', 'keys.confkey')} AS parent_columns
  FROM pg_constraint AS keys
  JOIN pg_class AS child ON child.oid = keys.conrelid
  JOIN pg_class AS parent ON parent.oid = keys.confrelid
  WHERE keys.contype = 'f' AND keys.connamespace = current_schema()::regnamespace
  ORDER BY child.relname, keys.conname`;

/** PostgreSQL guards its keys by triggers, which whoever owns the database can switch off for a while. */
async function checkPostgresKeys(snapshot: Snapshot, findings: Findings): Promise<void> {
  for (const { child, parent, columns, parent_columns } of await snapshot.read<ForeignKey>(foreignKeys)) {
    const isGiven = columns.map((column) => `child."${column}" IS NOT NULL`).join(' AND ');
    const isSame = columns
      .map((column, index) => `parent."${parent_columns[index]}" = child."${column}"`)
      .join(' AND ');
    const broken = await snapshot.read<{ values: string }>(
      `SELECT concat_ws(' ', ${columns.map((column) => `child."${column}"`).join(', ')}) AS values FROM "${child}" AS child
       WHERE ${isGiven} AND NOT EXISTS (SELECT 1 FROM "${parent}" AS parent WHERE ${isSame}) LIMIT ${mostShown}`,
    );
    for (const { values } of broken) {
      await findings.add(
        about(child, values),
        `A row of ${child} names a ${parent} that is not there: ${columns.join(', ')} are ${values}.`,
      );
    }
  }
}

function about(table: string | null, id: string | null) {
  return { check: 'database' as const, studioId: null, table, id };
}
