import { numberedByDatabase } from '../../platform/audit/row-digest.js';
import type { Snapshot } from '../../platform/database/snapshot.js';
import { keysOfRecord, rowsThemselves, uncoveredTables } from './record-tables.js';

/** A table that the audit log covers, as it stands in the database. */
export interface TableShape {
  name: string;
  columns: string[];
  /** Whose rows these are, and so whose audit logs may tell of them: one studio's, or those of a chain's studios. */
  belongsTo: 'studio' | 'chain' | 'service';
  /** The column that names the studio or chain; null for what is the service's. */
  owner: string | null;
  /** The column by which an entry names a row. */
  key: string;
  /** The column that the database numbers. */
  numbered: string | undefined;
}

/** The tables that the audit log covers, in the order in which they are looked at. */
export async function tableShapes(snapshot: Snapshot): Promise<TableShape[]> {
  const found = await snapshot.read<{ table_name: string; column_name: string; key_place: number }>(
    snapshot.engine === 'sqlite' ? sqliteColumns : postgresColumns,
  );
  const tables = new Map<string, { columns: string[]; key: string[] }>();
  for (const { table_name, column_name, key_place } of found) {
    if (table_name in uncoveredTables) continue;
    const table = tables.get(table_name) ?? { columns: [], key: [] };
    tables.set(table_name, table);
    table.columns.push(column_name);
    if (key_place > 0) table.key[key_place - 1] = column_name;
  }
  return [...tables].map(([name, { columns, key }]) => shapeOf(name, columns, keysOfRecord[name] ?? key));
}

function shapeOf(name: string, columns: string[], key: readonly string[]): TableShape {
  const [first = 'id'] = key;
  const itself = rowsThemselves[name];
  const belongsTo = itself ?? (first === 'chain_id' ? 'chain' : first === 'studio_id' ? 'studio' : 'service');
  return {
    name,
    columns,
    belongsTo,
    owner: belongsTo === 'service' ? null : first,
    key: key.at(-1) ?? 'id',
    numbered: numberedByDatabase[name],
  };
}

// The studios first, then the chains: what is wrong with them makes others look wrong.
const inOrder = (table: string, column: string) =>
  `ORDER BY CASE ${table} WHEN 'studio' THEN 1 WHEN 'chain' THEN 2 ELSE 3 END, ${table}, ${column}`;

const sqliteColumns = `SELECT tables.name AS table_name, columns.name AS column_name, columns.pk AS key_place
  FROM sqlite_schema AS tables JOIN pragma_table_info(tables.name) AS columns
  WHERE tables.type = 'table' AND tables.name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ${inOrder('tables.name', 'columns.name')}`;

// From the catalogue itself: the standard views of it take seconds.
const postgresColumns = `SELECT tables.relname AS table_name, columns.attname AS column_name,
    coalesce(array_position(keys.conkey, columns.attnum), 0) AS key_place
  FROM pg_class AS tables
  JOIN pg_attribute AS columns ON columns.attrelid = tables.oid AND columns.attnum > 0 AND NOT columns.attisdropped
  LEFT JOIN pg_constraint AS keys ON keys.conrelid = tables.oid AND keys.contype = 'p'
  WHERE tables.relkind = 'r' AND tables.relnamespace = current_schema()::regnamespace
  ${inOrder('tables.relname', 'columns.attname')}`;
