import { firstPreviousHash } from '../../platform/audit/audit-log.js';
import type { Snapshot } from '../../platform/database/snapshot.js';
import type { Findings } from './findings.store.js';
import type { Remembered } from './report-words.js';

/**
 * Each head that something outside the database remembers must be an entry of today's chain with that very hash: a cut
 * tail and a chain computed anew are found by nothing else.
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
      await findings.add(
        about,
        `The audit chain of studio ${studioId} ends with entry ${last}, but ${from} knows entry ${sequence}: its end was cut off, or an older backup was restored.`,
      );
    } else if ((await hashOf(snapshot, studioId, sequence)) !== hash) {
      await findings.add(
        about,
        `Audit entry ${sequence} of studio ${studioId} is another one than ${from} knows: the chain was computed anew from there or from before.`,
      );
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

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
