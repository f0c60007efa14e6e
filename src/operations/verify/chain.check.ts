import { type AuditLink, firstPreviousHash, hashOfLink } from '../../platform/audit/audit-log.js';
import { type WrittenRow, writtenAcrossStudios } from '../../platform/audit/row-digest.js';
import type { SqlValue } from '../../platform/database/database.js';
import type { Snapshot } from '../../platform/database/snapshot.js';
import type { Findings } from './findings.store.js';

export interface ChainEnd {
  sequence: number;
  hash: string;
}

const linkColumns = `sequence, recorded_at, person_id, via, action, subject_kind, subject_id, payload, previous_hash, hash`;

/**
 * Goes through one studio's chain: gapless from 1, each hash that of its content and of the entry before, the head the
 * last entry.
 * @param onEntry is given the rows that each entry names
 * @returns how many entries there are and the last of them
 */
export async function checkChain(
  snapshot: Snapshot,
  studioId: string,
  findings: Findings,
  onEntry: (entry: AuditLink, rows: WrittenRow[]) => void,
): Promise<{ entries: number; end: ChainEnd }> {
  let end: ChainEnd = { sequence: 0, hash: firstPreviousHash };
  let entries = 0;
  const walk = snapshot.batches(
    `SELECT ${linkColumns} FROM audit_entry WHERE studio_id = $1 ORDER BY sequence`,
    [studioId],
  );
  for await (const batch of walk) {
    for (const row of batch) {
      const { link, hash } = linkOf(studioId, row);
      const fault = (words: string) => findings.add(aboutEntry(link), `${entryName(link)} ${words}.`);
      entries += 1;
      if (link.sequence !== end.sequence + 1) {
        const missing = { ...link, sequence: end.sequence + 1 };
        const words = `${entryName(missing)} is missing: after entry ${end.sequence} comes entry ${link.sequence}.`;
        await findings.add(aboutEntry(missing), words);
      }
      if (link.previousHash !== end.hash) await fault(`does not follow on from the entry before it`);
      if (hashOfLink(link) !== hash)
        await fault('is not what was written: its hash is not that of its content');
      const rows = rowsNamed(link);
      if (rows) onEntry(link, rows);
      else await fault('does not say, or not as entries may, which rows it wrote');
      end = { sequence: link.sequence, hash };
    }
  }
  return { entries, end };
}

/** The head that the database keeps for a studio must be the end of its chain. */
export async function checkHead(
  snapshot: Snapshot,
  studioId: string,
  end: ChainEnd,
  findings: Findings,
): Promise<ChainEnd | null> {
  const [head] = await snapshot.read<ChainEnd>('SELECT sequence, hash FROM audit_head WHERE studio_id = $1', [
    studioId,
  ]);
  const about = { check: 'chain' as const, studioId, table: 'audit_head', id: studioId };
  if (!head) {
    await findings.add(about, `The studio ${studioId} has no head of its audit chain.`);
    return null;
  }
  if (head.sequence !== end.sequence) {
    const cut = head.sequence > end.sequence ? ' The end of the chain was cut off.' : '';
    await findings.add(
      about,
      `The head of the audit chain of studio ${studioId} names entry ${head.sequence}, but the last entry is ${end.sequence}.${cut}`,
    );
  } else if (head.hash !== end.hash) {
    await findings.add(
      about,
      `The head of the audit chain of studio ${studioId} holds another hash than its last entry, ${end.sequence}.`,
    );
  }
  return head;
}

function linkOf(studioId: string, row: SqlValue[]): { link: AuditLink; hash: string } {
  const [sequence, recordedAt, personId, via, action, subjectKind, subjectId, payload, previousHash, hash] =
    row as [number, string, string | null, string, string, string, string, string, string, string];
  const link = {
    studioId,
    sequence,
    recordedAt,
    personId,
    via,
    action,
    subjectKind,
    subjectId,
    payload,
    previousHash,
  };
  return { link, hash };
}

function aboutEntry({ studioId, sequence }: AuditLink) {
  return { check: 'chain' as const, studioId, table: 'audit_entry', id: String(sequence) };
}

function entryName({ studioId, sequence }: AuditLink): string {
  return `Audit entry ${sequence} of studio ${studioId}`;
}

/** Undefined when the payload cannot be read, or names rows of which this chain may not tell. */
function rowsNamed({ action, subjectId, payload }: AuditLink): WrittenRow[] | undefined {
  try {
    const { rows } = JSON.parse(payload) as { rows: WrittenRow[] };
    if (!Array.isArray(rows) || !rows.every(isWrittenRow)) return undefined;
    // Entries of removed levels were written without the row before removals were listed.
    if (action === 'stock.remove-level' && !rows.some(({ table }) => table === 'stock_level')) {
      rows.push({ table: 'stock_level', id: subjectId, digest: null });
    }
    return rows;
  } catch {
    return undefined;
  }
}

function isWrittenRow(row: WrittenRow): boolean {
  const isTextOr = (value: unknown, other: unknown) => typeof value === 'string' || value === other;
  return (
    typeof row === 'object' &&
    row !== null &&
    typeof row.table === 'string' &&
    typeof row.id === 'string' &&
    isTextOr(row.digest, null) &&
    isTextOr(row.before, undefined) &&
    (row.studioId === undefined ||
      (writtenAcrossStudios.has(row.table) && typeof row.studioId === 'string')) &&
    (row.number === undefined || typeof row.number === 'number')
  );
}
