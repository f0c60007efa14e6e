import type { WrittenRow } from '../../platform/audit/row-digest.js';
import type { Snapshot } from '../../platform/database/snapshot.js';
import { checkBalances } from './balances.check.js';
import { checkChain, checkHead } from './chain.check.js';
import { checkDatabase } from './database.check.js';
import { Findings } from './findings.store.js';
import { checkRememberedHeads } from './heads.check.js';
import { checkLevels } from './levels.check.js';
import { uncoveredTables } from './record-tables.js';
import type { Concern, Remembered, RememberedHead, VerifyReport } from './report-words.js';
import { checkRows } from './rows.check.js';
import { type TableShape, tableShapes } from './table-shapes.query.js';
import { WrittenRows } from './written-rows.store.js';

interface StudioRow {
  id: string;
  name: string | null;
  chain_id: string | null;
}

// Also what only the audit log still knows of.
const allStudios = `SELECT named.id, studio.name, studio.chain_id
  FROM (SELECT id FROM studio UNION SELECT studio_id FROM audit_head UNION SELECT DISTINCT studio_id FROM audit_entry) AS named
  LEFT JOIN studio ON studio.id = named.id ORDER BY named.id`;

/**
 * Looks at a whole record: each studio's audit chain, the heads that are remembered outside, every covered row against
 * the chains, balances and levels against the ledger, and the database itself. Reads only, and only what was committed
 * at one moment. Needs memory for neither the entries nor the rows.
 * @param concern whose findings are told; left out: everybody's
 */
export async function checkRecord(
  snapshot: Snapshot,
  remembered: Remembered,
  concern?: Concern,
): Promise<VerifyReport> {
  const findings = new Findings(concern);
  const written = new WrittenRows();
  const looked: LookedAt = { studios: [], registers: [] };
  try {
    await reportingDamage(findings, () => checkContents(snapshot, remembered, written, findings, looked));
    await reportingDamage(findings, () => checkDatabase(snapshot, findings));
  } finally {
    written.close();
  }
  return { engine: snapshot.engine, ...looked, wrong: findings.count, findings: findings.first };
}

type LookedAt = Pick<VerifyReport, 'studios' | 'registers'>;

async function checkContents(
  snapshot: Snapshot,
  remembered: Remembered,
  written: WrittenRows,
  findings: Findings,
  { studios, registers }: LookedAt,
): Promise<void> {
  const shapes = await tableShapes(snapshot);
  const ends = new Map<string, number>();
  for (const studio of await snapshot.read<StudioRow>(allStudios)) {
    const { entries, end } = await takeInChain(snapshot, studio, shapes, written, findings);
    ends.set(studio.id, end.sequence);
    studios.push({
      id: studio.id,
      name: studio.name ?? 'that is not there',
      entries,
      head: await checkHead(snapshot, studio.id, end, findings),
      rows: 0,
      balances: 0,
      levels: 0,
      ...rememberedOf(studio.id, remembered),
    });
  }
  await checkRememberedHeads(snapshot, remembered, ends, findings);
  const rows = await checkRows(snapshot, shapes, written, findings);
  const balances = await checkBalances(snapshot, findings);
  for (const studio of studios) {
    studio.rows = rows.get(studio.id) ?? 0;
    studio.balances = balances.get(studio.id) ?? 0;
    studio.levels = await checkLevels(snapshot, studio.id, findings);
  }
  const chains = await snapshot.read<{ id: string; name: string }>('SELECT id, name FROM chain ORDER BY id');
  for (const { id, name } of chains) registers.push({ chainId: id, name, rows: rows.get(id) ?? 0 });
}

/** Where SQLite meets bytes that make no database, the look is over, and that is what was found. */
async function reportingDamage(findings: Findings, look: () => Promise<void>): Promise<void> {
  try {
    await look();
  } catch (error) {
    const isDamage = error instanceof Error && 'code' in error && /^SQLITE_CORRUPT/.test(String(error.code));
    if (!isDamage) throw error;
    const about = { check: 'database' as const, studioId: null, table: null, id: null };
    await findings.add(about, `The database cannot be read to its end: ${error.message}.`);
  }
}

/** Checks a studio's chain and takes in what it says of rows. */
function takeInChain(
  snapshot: Snapshot,
  { id: studioId, chain_id: chainId }: StudioRow,
  shapes: readonly TableShape[],
  written: WrittenRows,
  findings: Findings,
) {
  const owners = new Map(shapes.map(({ name, belongsTo }) => [name, belongsTo]));
  const scopeOf = ({ table, studioId: other }: WrittenRow) => {
    // A table that is gone was some studio's.
    const belongsTo = owners.get(table) ?? 'studio';
    return belongsTo === 'service' ? '' : belongsTo === 'chain' ? (chainId ?? '') : (other ?? studioId);
  };
  return checkChain(snapshot, studioId, findings, (entry, rows) => {
    for (const row of rows) {
      if (row.table in uncoveredTables) continue;
      written.add({ table: row.table, scope: scopeOf(row), id: row.id }, entry, row);
    }
  });
}

function rememberedOf(studioId: string, remembered: Remembered) {
  const heads = remembered.heads.filter((head) => head.studioId === studioId);
  const furthest = heads.reduce<RememberedHead | null>(
    (far, head) => (far === null || head.sequence > far.sequence ? head : far),
    null,
  );
  return { heads: heads.length, furthestHead: furthest };
}
