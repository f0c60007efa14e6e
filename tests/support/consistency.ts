import { type AuditLink, firstPreviousHash, hashOfLink } from '../../src/platform/audit/audit-log.js';
import { digestOf } from '../../src/platform/canonical-json.js';
import type { PlainRow, PlainSql } from './plain-sql.js';

/**
 * Everything in a database that does not fit together, in words; empty when all of it does. Looks at the tables alone,
 * so it holds whatever the service says of itself. Works on both engines, also while the service runs.
 */
export async function inconsistencies(sql: PlainSql): Promise<string[]> {
  const faults = await engineFaults(sql);
  const links = await sql.rows<AuditRow>('SELECT * FROM audit_entry ORDER BY studio_id, sequence');
  faults.push(...(await chainFaults(sql, links)));
  faults.push(...(await rowFaults(sql, links)));
  for (const { fault, query } of queriesThatFindNothing) {
    for (const row of await sql.rows(query)) faults.push(`${fault}: ${JSON.stringify(row)}`);
  }
  return faults;
}

interface AuditRow {
  studio_id: string;
  sequence: number;
  recorded_at: string;
  person_id: string | null;
  via: string;
  action: string;
  subject_kind: string;
  subject_id: string;
  payload: string;
  previous_hash: string;
  hash: string;
}

async function engineFaults(sql: PlainSql): Promise<string[]> {
  if (sql.engine === 'postgres') return [];
  const integrity = await sql.rows<{ integrity_check: string }>('PRAGMA integrity_check');
  const keys = await sql.rows('PRAGMA foreign_key_check');
  return [
    ...integrity.map((row) => row.integrity_check).filter((line) => line !== 'ok'),
    ...keys.map((row) => `foreign key: ${JSON.stringify(row)}`),
  ];
}

/** Each studio's chain is gapless from 1, every hash is right, and the head is its last link. */
async function chainFaults(sql: PlainSql, links: readonly AuditRow[]): Promise<string[]> {
  const faults: string[] = [];
  const heads = await sql.rows<{ studio_id: string; sequence: number; hash: string }>(
    'SELECT studio_id, sequence, hash FROM audit_head',
  );
  const last = new Map(heads.map(({ studio_id }) => [studio_id, { sequence: 0, hash: firstPreviousHash }]));
  for (const link of links) {
    const before = last.get(link.studio_id);
    const name = `audit entry ${link.sequence} of ${link.studio_id}`;
    if (!before) faults.push(`${name}: the studio has no head`);
    if (before && link.sequence !== before.sequence + 1) faults.push(`${name}: follows ${before.sequence}`);
    if (before && link.previous_hash !== before.hash) faults.push(`${name}: names another previous hash`);
    if (hashOfLink(linkOf(link)) !== link.hash) faults.push(`${name}: its hash is not that of its content`);
    last.set(link.studio_id, link);
  }
  for (const head of heads) {
    const end = last.get(head.studio_id);
    if (end?.sequence !== head.sequence || end.hash !== head.hash) {
      faults.push(`the head of ${head.studio_id} names ${head.sequence}, the last entry is ${end?.sequence}`);
    }
  }
  return faults;
}

function linkOf(row: AuditRow): AuditLink {
  return {
    studioId: row.studio_id,
    sequence: row.sequence,
    recordedAt: row.recorded_at,
    personId: row.person_id,
    via: row.via,
    action: row.action,
    subjectKind: row.subject_kind,
    subjectId: row.subject_id,
    payload: row.payload,
    previousHash: row.previous_hash,
  };
}

/** Written by other means than the rows of a write: by the chain itself, a trigger, or the register of requests. */
const notDigested = new Set(['accepted_request', 'audit_entry', 'audit_head', 'balance']);
/** Digested when it is made; that its delivery was tried is no part of the record. */
const digestedOnceMade = 'outbox';

function rowId(row: PlainRow): string {
  return String(row.id ?? row.hold_id ?? row.use_id ?? row.gtin ?? row.studio_id);
}

/** Every row stands as the audit log last saw it, and every row the log saw is there. */
async function rowFaults(sql: PlainSql, links: readonly AuditRow[]): Promise<string[]> {
  const faults: string[] = [];
  const expected = new Map<string, string>();
  // Rows of a chain are written by any of its studios.
  const inTime = [...links].sort(
    (one, other) => (one.recorded_at < other.recorded_at ? -1 : 1) || one.sequence - other.sequence,
  );
  for (const { payload } of inTime) {
    const { rows } = JSON.parse(payload) as { rows: { table: string; id: string; digest: string }[] };
    for (const { table, id, digest } of rows) expected.set(`${table} ${id}`, digest);
  }
  for (const table of await sql.tables()) {
    if (notDigested.has(table)) continue;
    for (const row of await sql.rows(`SELECT * FROM "${table}"`)) {
      // The server's numbering is made by the database.
      if (table === 'movement') delete row.sequence;
      const name = `${table} ${rowId(row)}`;
      const digest = expected.get(name);
      expected.delete(name);
      if (digest === undefined) faults.push(`${name} is in no audit entry`);
      else if (table !== digestedOnceMade && digest !== digestOf(row)) {
        faults.push(`${name} is not as the audit log last saw it`);
      }
    }
  }
  const known = [...expected.keys()].filter((name) => !notDigested.has(name.split(' ')[0] ?? ''));
  return [...faults, ...known.map((name) => `${name} is in the audit log, but no longer there`)];
}

const queriesThatFindNothing = [
  {
    fault: 'a request that was accepted has no answer',
    query: 'SELECT id, action FROM accepted_request WHERE answer IS NULL',
  },
  {
    fault: 'requests and audit entries do not go in pairs',
    query: `SELECT studio_id, action, at, sum(requests) AS requests, sum(entries) AS entries FROM (
        SELECT studio_id, action, accepted_at AS at, 1 AS requests, 0 AS entries FROM accepted_request
        UNION ALL
        SELECT studio_id, action, recorded_at AS at, 0 AS requests, 1 AS entries FROM audit_entry WHERE via <> 'system'
      ) AS both_sides GROUP BY studio_id, action, at HAVING sum(requests) <> sum(entries)`,
  },
  {
    fault: 'a balance is not the sum of its movements',
    query: `SELECT container.id, balance.pieces, balance.microlitres, sums.pieces AS moved_pieces, sums.microlitres AS moved_microlitres
      FROM container
      LEFT JOIN balance ON balance.studio_id = container.studio_id AND balance.container_id = container.id
      LEFT JOIN (SELECT studio_id, container_id, sum(pieces) AS pieces, sum(microlitres) AS microlitres
                 FROM movement GROUP BY studio_id, container_id) AS sums
        ON sums.studio_id = container.studio_id AND sums.container_id = container.id
      WHERE balance.container_id IS NULL
         OR balance.pieces <> coalesce(sums.pieces, 0) OR balance.microlitres <> coalesce(sums.microlitres, 0)`,
  },
  {
    fault: 'a container has no movement',
    query: `SELECT id, lot_id FROM container WHERE NOT EXISTS (
        SELECT 1 FROM movement WHERE movement.studio_id = container.studio_id AND movement.container_id = container.id)`,
  },
  {
    fault: 'a delivery has no line',
    query: `SELECT id FROM delivery WHERE NOT EXISTS (
        SELECT 1 FROM delivery_line AS line WHERE line.studio_id = delivery.studio_id AND line.delivery_id = delivery.id)`,
  },
  {
    fault: 'a lot does not hold what its deliveries brought',
    query: `SELECT lot_id, sum(lined) AS lined, sum(received) AS received FROM (
        SELECT lot_id, quantity_pieces AS lined, 0 AS received FROM delivery_line
        UNION ALL
        SELECT lot_id, 0 AS lined, pieces AS received FROM movement WHERE kind = 'received' AND reverses_id IS NULL
      ) AS both_sides GROUP BY lot_id HAVING sum(lined) <> sum(received)`,
  },
  {
    fault: 'a completed session has something left on its tray',
    query: `SELECT session.id, line.id AS line_id FROM session
      JOIN tray_line AS line ON line.studio_id = session.studio_id AND line.session_id = session.id
      WHERE session.state = 'completed' AND line.state = 'on tray'`,
  },
  {
    fault: 'a piece settled as used is in no use',
    query: `SELECT session_id, sum(settled) AS settled, sum(used) AS used FROM (
        SELECT session_id, pieces AS settled, 0 AS used FROM tray_line WHERE settled_as = 'used'
        UNION ALL
        SELECT session_id, 0 AS settled, pieces AS used FROM session_use
      ) AS both_sides GROUP BY session_id HAVING sum(settled) > sum(used)`,
  },
  {
    fault: 'a use and its movement do not agree',
    query: `SELECT used.id, used.session_id FROM session_use AS used
      LEFT JOIN movement ON movement.studio_id = used.studio_id AND movement.id = used.movement_id
      WHERE (used.movement_id IS NULL AND (used.pieces <> 0 OR used.microlitres <> 0))
         OR (used.movement_id IS NOT NULL AND (movement.id IS NULL OR movement.kind <> 'used'
             OR movement.session_id <> used.session_id OR movement.container_id <> used.container_id
             OR movement.pieces <> -used.pieces OR movement.microlitres <> -used.microlitres))`,
  },
  {
    fault: 'something was taken for a session, but no use says so',
    query: `SELECT id, session_id FROM movement WHERE kind = 'used' AND reverses_id IS NULL AND session_id IS NOT NULL
      AND NOT EXISTS (SELECT 1 FROM session_use AS used
        WHERE used.studio_id = movement.studio_id AND used.movement_id = movement.id)`,
  },
  {
    fault: 'an alert has no promise of its delivery',
    query: `SELECT alert.id, alert.kind, event.name FROM alert
      JOIN (SELECT 'opened' AS name UNION ALL SELECT 'closed' AS name) AS event
        ON event.name = 'opened' OR alert.closed_at IS NOT NULL
      WHERE NOT EXISTS (SELECT 1 FROM outbox
        WHERE outbox.studio_id = alert.studio_id AND outbox.alert_id = alert.id AND outbox.event = event.name)`,
  },
];
