import { canonicalJson, digestOf } from '../canonical-json.js';
import type { Transaction } from '../database/transaction.js';

/** The hash before the first entry of a chain. */
export const firstPreviousHash = '0'.repeat(64);

export interface AuditLink {
  studioId: string;
  sequence: number;
  recordedAt: string;
  personId: string | null;
  via: string;
  action: string;
  subjectKind: string;
  subjectId: string;
  payload: string;
  previousHash: string;
}

/** SHA-256 over the canonical JSON (RFC 8785) of a link, the previous hash included. */
export function hashOfLink(link: AuditLink): string {
  return digestOf({
    action: link.action,
    payload: link.payload,
    personId: link.personId,
    previousHash: link.previousHash,
    recordedAt: link.recordedAt,
    sequence: link.sequence,
    studioId: link.studioId,
    subjectId: link.subjectId,
    subjectKind: link.subjectKind,
    via: link.via,
  });
}

/** Appends the entry of a transaction to the studio's chain. Call last: it locks the head of the chain. */
export async function appendAuditEntry(
  transaction: Transaction,
  about: { action: string; subject: { kind: string; id: string } },
): Promise<void> {
  const { studioId, personId, via } = transaction.actor;
  const lock = transaction.engine === 'postgres' ? ' FOR UPDATE' : '';
  const [head] = await transaction.query<{ sequence: number; hash: string }>(
    `SELECT sequence, hash FROM audit_head WHERE studio_id = $1${lock}`,
    [studioId],
  );
  if (!head) throw new Error(`The studio ${studioId} has no audit chain.`);
  const link: AuditLink = {
    studioId,
    sequence: head.sequence + 1,
    recordedAt: transaction.recordedAt,
    personId,
    via,
    action: about.action,
    subjectKind: about.subject.kind,
    subjectId: about.subject.id,
    payload: canonicalJson({ ...transaction.notes, rows: transaction.writtenRows }),
    previousHash: head.hash,
  };
  const hash = hashOfLink(link);
  await transaction.query(
    `INSERT INTO audit_entry (studio_id, sequence, recorded_at, person_id, via, action, subject_kind, subject_id, payload, previous_hash, hash)
     VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)`,
    [
      studioId,
      link.sequence,
      link.recordedAt,
      personId,
      via,
      link.action,
      link.subjectKind,
      link.subjectId,
      link.payload,
      link.previousHash,
      hash,
    ],
  );
  await transaction.query('UPDATE audit_head SET sequence = $2, hash = $3 WHERE studio_id = $1', [
    studioId,
    link.sequence,
    hash,
  ]);
}
