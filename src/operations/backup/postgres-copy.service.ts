import pg from 'pg';
import type { ChainHead } from './manifest.js';
import { type PostgresTools, requireVersion } from './postgres-tool.service.js';
import {
  chainEndFaults,
  damagedRecord,
  type RecordFacts,
  type Rows,
  readRecordFacts,
} from './record-facts.service.js';

/**
 * Copies a PostgreSQL database by pg_dump while others write to it, and checks that the dump can be read to its end and
 * holds the heads of the chains. Facts and dump come from one snapshot.
 * @param target the file to write, in pg_dump's custom format
 */
export async function copyPostgres(
  databaseUrl: string,
  tools: PostgresTools,
  target: string,
  signal: AbortSignal | undefined,
): Promise<RecordFacts> {
  const client = new pg.Client({ connectionString: databaseUrl });
  // A connection lost while pg_dump works is told by the next statement.
  client.on('error', () => undefined);
  await client.connect();
  try {
    const rows: Rows = async <Row>(sql: string) => (await client.query(sql)).rows as Row[];
    await requireVersion(tools, 'pg_dump', await serverVersion(rows));
    await client.query('BEGIN TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY');
    // The snapshot lives as long as this transaction, which does nothing while pg_dump works.
    await client.query('SET LOCAL idle_in_transaction_session_timeout = 0');
    const [exported] = await rows<{ id: string }>('SELECT pg_export_snapshot() AS id');
    const facts = await readRecordFacts('postgres', rows);
    const faults = await chainEndFaults(rows);
    if (faults.length > 0) throw damagedRecord(faults);
    await tools.run(
      'pg_dump',
      [
        '--format=custom',
        '--no-owner',
        '--no-privileges',
        `--snapshot=${exported?.id}`,
        `--file=${target}`,
        tools.database,
      ],
      { signal },
    );
    await client.query('COMMIT');
    await check(tools, target, facts.heads, signal);
    return facts;
  } finally {
    await client.end();
  }
}

/** The major version of the server, such as 15. */
export async function serverVersion(rows: Rows): Promise<number> {
  const [row] = await rows<{ version: string }>("SELECT current_setting('server_version_num') AS version");
  return Math.floor(Number(row?.version) / 10_000);
}

async function check(
  tools: PostgresTools,
  file: string,
  heads: readonly ChainHead[],
  signal: AbortSignal | undefined,
): Promise<void> {
  // Unpacks every row, as a restore would, and throws them away.
  await tools.run('pg_restore', ['--file=-', file], { signal, output: 'drop' });
  const dumped = await dumpedHeads(tools, file);
  const missing = heads.find(
    ({ studioId, sequence, hash }) => !dumped.has(`${studioId} ${sequence} ${hash}`),
  );
  if (missing !== undefined || dumped.size !== heads.length) {
    throw new Error(
      `the dump does not hold the heads of the audit chains as they stood (${missing?.studioId})`,
    );
  }
}

/** The heads as the dump itself holds them, each as `studio sequence hash`. */
async function dumpedHeads(tools: PostgresTools, file: string): Promise<Set<string>> {
  const script = await tools.run('pg_restore', ['--data-only', '--table=audit_head', '--file=-', file]);
  const heads = new Set<string>();
  let columns: string[] | undefined;
  for (const line of script.split('\n')) {
    const copy = /^COPY \S*audit_head \(([^)]+)\) FROM stdin;$/.exec(line);
    if (copy?.[1]) columns = copy[1].split(', ');
    else if (line === '\\.') columns = undefined;
    else if (columns) {
      const values = line.split('\t');
      const value = (name: string) => values[columns?.indexOf(name) ?? -1];
      heads.add(`${value('studio_id')} ${value('sequence')} ${value('hash')}`);
    }
  }
  return heads;
}
