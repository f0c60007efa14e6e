import { createHash } from 'node:crypto';
import type { PlainRow, PlainSql } from './plain-sql.js';
import { wait } from './waiting.js';

/**
 * When somebody was last seen, what they are signed in with or are just about to sign, how often it went wrong: no record,
 * and no write of a studio.
 */
const stateOfSigningIn = ['credential_use', 'failed_sign_in', 'passkey_challenge', 'sign_in'];
/** Names the last entry of each audit log, which is compared itself. */
const heads = 'audit_head';

/** The service looks by itself twice a minute for what is due in alerts, and notes that it did; nobody asked for it. */
function isOwnWork(table: string, row: PlainRow): boolean {
  if (table === 'schedule_state') return true;
  return table === 'audit_entry' && row.via === 'system' && String(row.action).startsWith('alerts.');
}

/** That somebody was shown a client is noted, which is what reading leaves behind. */
function isNoteOfReading(table: string, row: PlainRow): boolean {
  return table === 'client_access' || (table === 'audit_entry' && row.action === 'clients.access');
}

/** All that some tables hold, by table; equal contents are equal maps. */
export type TableContents = ReadonlyMap<string, { rows: number; digest: string }>;

/**
 * What a database holds, of all studios or of one, but for the state of signing in and what the service does by itself.
 * @param of which rows: those of a studio, with what belongs to its chain when `chainId` is given; with `written` only
 * what is there because somebody wrote, not because somebody read
 */
export async function tableContents(
  sql: PlainSql,
  of: { studioId?: string; chainId?: string; written?: true } = {},
): Promise<TableContents> {
  const contents = new Map<string, { rows: number; digest: string }>();
  for (const table of await sql.tables()) {
    if (stateOfSigningIn.includes(table) || table === heads) continue;
    const rows = (await sql.rows(`SELECT * FROM "${table}"`)).filter(
      (row) =>
        !isOwnWork(table, row) &&
        !(of.written && isNoteOfReading(table, row)) &&
        (of.studioId === undefined || belongs(table, row, of)),
    );
    const hash = createHash('sha256');
    // The columns of a table come in one order.
    for (const line of rows.map((row) => JSON.stringify(row)).sort()) hash.update(`${line}\n`);
    contents.set(table, { rows: rows.length, digest: hash.digest('hex') });
  }
  return contents;
}

function belongs(table: string, row: PlainRow, of: { studioId?: string; chainId?: string }): boolean {
  if (row.studio_id === of.studioId) return true;
  if (table === 'studio' || table === 'chain') return row.id === of.studioId || row.id === of.chainId;
  return of.chainId !== undefined && row.chain_id === of.chainId;
}

/** What differs, in words. */
export function differences(before: TableContents, after: TableContents): string[] {
  return [...before].flatMap(([table, was]) => {
    const is = after.get(table);
    if (is?.digest === was.digest) return [];
    return [`${table}: ${was.rows} rows before, ${is?.rows ?? 'none'} after, and other content`];
  });
}

/** Waits until what the service does by itself is done: nothing announced is still under way. */
export async function settled(sql: PlainSql): Promise<void> {
  for (let attempt = 0; attempt < 200; attempt += 1) {
    const pending = await sql.rows("SELECT id FROM outbox WHERE state = 'pending' LIMIT 1");
    if (pending.length === 0) return;
    await wait(50);
  }
  throw new Error('Announcements are still under way after ten seconds.');
}
