import { firstPreviousHash } from '../../platform/audit/audit-log.js';
import type { Snapshot } from '../../platform/database/snapshot.js';
import { restoreAction, restoredBackup } from '../restore/restore-entry.js';
import type { Findings } from './findings.store.js';
import type { Remembered, RememberedHead } from './report-words.js';

/**
 * Each head that something outside the database remembers must be an entry of today's chain with that very hash: a cut
 * tail and a chain computed anew are found by nothing else. A backup that was restored leaves the same trace, since the
 * record was written on from there: that the chain says so itself is told, and proves nothing.
 */
export async function checkRememberedHeads(
  snapshot: Snapshot,
  { heads, unreadable }: Remembered,
  lastEntries: ReadonlyMap<string, number>,
  findings: Findings,
): Promise<void> {
  for (const words of unreadable) {
    await findings.add({ check: 'head', studioId: null, table: null, id: null }, words);
  }
  for (const head of heads) {
    const { from, studioId, sequence, hash } = head;
    const last = lastEntries.get(studioId);
    const about = { check: 'head' as const, studioId, table: 'audit_entry', id: String(sequence) };
    if (last === undefined) {
      await findings.add(
        about,
        `${capital(from)} knows a studio ${studioId}, which is not in this database.`,
      );
    } else if (sequence > last) {
      const words = `The audit chain of studio ${studioId} ends with entry ${last}, but ${from} knows entry ${sequence}: its end was cut off, or an older backup was restored.`;
      await findings.add(about, async () => words + (await restoreWords(snapshot, head)));
    } else if ((await hashOf(snapshot, studioId, sequence)) !== hash) {
      const words = `Audit entry ${sequence} of studio ${studioId} is another one than ${from} knows: the chain was computed anew from there or from before, or an older backup was restored.`;
      await findings.add(about, async () => words + (await restoreWords(snapshot, head)));
    }
  }
}

async function hashOf(snapshot: Snapshot, studioId: string, sequence: number): Promise<string | undefined> {
  if (sequence === 0) return firstPreviousHash;
  const [entry] = await snapshot.read<{ hash: string }>(
    'SELECT hash FROM audit_entry WHERE studio_id = $1 AND sequence = $2',
    [studioId, sequence],
  );
  return entry?.hash;
}

/** What the chain says of the last restore that lies before a head's place in it; nothing when it tells of none. */
async function restoreWords(snapshot: Snapshot, { studioId, sequence }: RememberedHead): Promise<string> {
  const [entry] = await snapshot.read<{ sequence: number; recorded_at: string; payload: string }>(
    `SELECT sequence, recorded_at, payload FROM audit_entry
     WHERE studio_id = $1 AND action = '${restoreAction}' AND sequence <= $2 ORDER BY sequence DESC LIMIT 1`,
    [studioId, sequence],
  );
  if (!entry) return '';
  return ` Entry ${entry.sequence} (${restoreAction}, ${entry.recorded_at}) says that ${restoredBackup(entry.payload)} was restored: after that, what newer backups and exported logs remember fits no longer.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
