import type { Engine } from '../../platform/database/database.js';
import type { ChainHead, Manifest } from './manifest.js';

/** What a copy of the record says of itself. */
export type RecordFacts = Pick<Manifest, 'migrations' | 'heads' | 'masterKeyIds'>;

/** Every table that holds keys wrapped by a master key, whichever room made it. */
const tablesOfWrappedKeys: Record<Engine, string> = {
  sqlite: `SELECT tables.name AS name FROM sqlite_schema AS tables, pragma_table_info(tables.name) AS columns
    WHERE tables.type = 'table' AND columns.name = 'wrapped_key' ORDER BY tables.name`,
  postgres: `SELECT table_name AS name FROM information_schema.columns
    WHERE table_schema = current_schema() AND column_name = 'wrapped_key' ORDER BY table_name`,
};

/** A query without parameters, by whatever connection. */
export type Rows = <Row>(sql: string) => Promise<Row[]>;

export async function tablesWithWrappedKeys(engine: Engine, rows: Rows): Promise<string[]> {
  return (await rows<{ name: string }>(tablesOfWrappedKeys[engine])).map(({ name }) => name);
}

/** Reads the facts in one connection, whose transaction decides of what instant they are. */
export async function readRecordFacts(engine: Engine, rows: Rows): Promise<RecordFacts> {
  const migrations = await rows<{ name: string }>('SELECT name FROM migrations ORDER BY id');
  const heads = await rows<ChainHead>(
    'SELECT studio_id AS "studioId", sequence, hash FROM audit_head ORDER BY studio_id',
  );
  const masterKeyIds = new Set<string>();
  for (const table of await tablesWithWrappedKeys(engine, rows)) {
    const used = await rows<{ id: string }>(
      `SELECT DISTINCT master_key_id AS id FROM "${table}" WHERE wrapped_key IS NOT NULL`,
    );
    for (const { id } of used) masterKeyIds.add(id);
  }
  return { migrations: migrations.map(({ name }) => name), heads, masterKeyIds: [...masterKeyIds].sort() };
}

/** Whether each studio's chain ends where its head says, as it does in every whole copy. */
export async function chainEndFaults(rows: Rows): Promise<string[]> {
  const broken = await rows<{ studioId: string; sequence: number }>(
    `SELECT head.studio_id AS "studioId", head.sequence AS sequence FROM audit_head AS head
     LEFT JOIN audit_entry AS entry ON entry.studio_id = head.studio_id AND entry.sequence = head.sequence
     WHERE head.sequence <> (SELECT coalesce(max(sequence), 0) FROM audit_entry WHERE studio_id = head.studio_id)
        OR (head.sequence > 0 AND (entry.hash IS NULL OR entry.hash <> head.hash))
     ORDER BY head.studio_id`,
  );
  return broken.map(
    ({ studioId, sequence }) =>
      `the audit chain of studio ${studioId} does not end with entry ${sequence}, as its head says`,
  );
}

const faultsTold = 3;

/** The error of a record that does not fit together: what is in it, shortened when there is much. */
export function damagedRecord(faults: readonly string[]): Error {
  const rest = faults.length - faultsTold;
  const told = faults.slice(0, faultsTold).join('; ') + (rest > 0 ? `; and ${rest} more` : '');
  return Object.assign(new Error(told), { code: 'DAMAGED_RECORD' });
}
