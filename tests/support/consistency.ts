import { checkRecord } from '../../src/operations/verify/record.check.js';
import { openSnapshot } from '../../src/platform/database/snapshot.js';
import { databasePlace, type PlainSql } from './plain-sql.js';

/**
 * Everything in a database that does not fit together, in words; empty when all of it does. Looks at the tables alone,
 * so it holds whatever the service says of itself: first by the verification of the record, then at what must hold
 * between tables beyond it. Works on both engines, also while the service runs.
 */
export async function inconsistencies(sql: PlainSql): Promise<string[]> {
  const faults = await recordFaults(sql);
  for (const { fault, query } of queriesThatFindNothing) {
    for (const row of await sql.rows(query)) faults.push(`${fault}: ${JSON.stringify(row)}`);
  }
  return faults;
}

async function recordFaults(sql: PlainSql): Promise<string[]> {
  const snapshot = await openSnapshot(databasePlace(sql.place));
  try {
    const { findings } = await checkRecord(snapshot, { heads: [], unreadable: [] });
    return findings.map(({ message }) => message);
  } finally {
    await snapshot.close();
  }
}

const queriesThatFindNothing = [
  {
    fault: 'a request that was accepted has no answer',
    query: 'SELECT id, action FROM accepted_request WHERE answer IS NULL',
  },
  {
    fault: 'a request that was accepted has no audit entry',
    query: `SELECT studio_id, action, at, sum(requests) AS requests, sum(entries) AS entries FROM (
        SELECT studio_id, action, accepted_at AS at, 1 AS requests, 0 AS entries FROM accepted_request
        UNION ALL
        SELECT studio_id, action, recorded_at AS at, 0 AS requests, 1 AS entries FROM audit_entry
      ) AS both_sides GROUP BY studio_id, action, at HAVING sum(requests) > sum(entries)`,
  },
  {
    // Signing in, the sweep and commands carry no id made by a client.
    fault: 'an audit entry of what a client asked for has no request',
    query: `SELECT studio_id, action, recorded_at FROM audit_entry AS entry
      WHERE via IN ('api', 'paper') AND (action LIKE 'stock.%' OR action LIKE 'sessions.%' OR action LIKE 'catalogue.%')
      AND NOT EXISTS (SELECT 1 FROM accepted_request AS request WHERE request.studio_id = entry.studio_id
        AND request.action = entry.action AND request.accepted_at = entry.recorded_at)`,
  },
  {
    // One that is known only by a use of which nobody knows the amount has none.
    fault: 'a container has no movement',
    query: `SELECT id, lot_id FROM container WHERE NOT EXISTS (
        SELECT 1 FROM movement WHERE movement.studio_id = container.studio_id AND movement.container_id = container.id)
      AND NOT EXISTS (
        SELECT 1 FROM session_use AS used WHERE used.studio_id = container.studio_id AND used.container_id = container.id
          AND used.movement_id IS NULL)`,
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
    fault: 'a transfer has no line',
    query: `SELECT id FROM transfer WHERE NOT EXISTS (
        SELECT 1 FROM transfer_line AS line WHERE line.studio_id = transfer.studio_id AND line.transfer_id = transfer.id)`,
  },
  {
    fault: 'the facts told of a line of a transfer have a gap',
    query: `SELECT line.id, count(facts.id) AS told, max(facts.revision) AS latest FROM transfer_line AS line
      LEFT JOIN transfer_line_facts AS facts ON facts.studio_id = line.studio_id AND facts.line_id = line.id
      GROUP BY line.studio_id, line.id HAVING count(facts.id) = 0 OR count(facts.id) <> max(facts.revision)`,
  },
  {
    fault: 'a line of a transfer and the movement it went by do not agree',
    query: `SELECT line.id, line.movement_id FROM transfer_line AS line
      LEFT JOIN movement ON movement.studio_id = line.studio_id AND movement.id = line.movement_id
      WHERE movement.id IS NULL OR movement.kind <> 'transferred out' OR movement.reverses_id IS NOT NULL
         OR movement.container_id <> line.container_id
         OR movement.pieces <> -line.pieces OR movement.microlitres <> -line.microlitres`,
  },
  {
    fault: 'goods of a transfer and the movement they came by do not agree',
    query: `SELECT goods.id, goods.movement_id, outcome.kind FROM transfer_goods AS goods
      JOIN transfer_outcome AS outcome ON outcome.studio_id = goods.studio_id AND outcome.id = goods.outcome_id
      JOIN transfer_line AS line ON line.studio_id = outcome.sender_id AND line.id = outcome.line_id
      LEFT JOIN movement ON movement.studio_id = goods.studio_id AND movement.id = goods.movement_id
      WHERE (goods.movement_id IS NOT NULL AND movement.id IS NULL)
         OR movement.container_id <> goods.container_id
         OR movement.pieces <> goods.pieces OR movement.microlitres <> goods.microlitres
         OR movement.kind <> CASE outcome.kind WHEN 'withdrawn' THEN 'transferred out' ELSE 'transferred in' END
         OR coalesce(movement.reverses_id, '') <> CASE outcome.kind WHEN 'withdrawn' THEN line.movement_id ELSE '' END`,
  },
  {
    fault: 'what was sent is not what arrived, was lost or came back',
    query: `SELECT line.studio_id, line.id, line.pieces, line.microlitres, sum(said.pieces) AS said_pieces,
        sum(said.microlitres) AS said_microlitres
      FROM transfer_line AS line
      JOIN (SELECT sender_id, line_id, lost_pieces AS pieces, lost_microlitres AS microlitres, lost_pieces
              FROM transfer_outcome
            UNION ALL
            SELECT outcome.sender_id, outcome.line_id, goods.pieces, goods.microlitres, 0 AS lost_pieces
              FROM transfer_goods AS goods JOIN transfer_outcome AS outcome
                ON outcome.studio_id = goods.studio_id AND outcome.id = goods.outcome_id) AS said
        ON said.sender_id = line.studio_id AND said.line_id = line.id
      GROUP BY line.studio_id, line.id, line.pieces, line.microlitres
      HAVING line.pieces <> sum(said.pieces) OR line.microlitres <> sum(said.microlitres)
          OR sum(said.lost_pieces) < 0`,
  },
  {
    fault: 'something left or came by no transfer, and not from one box into another',
    query: `SELECT studio_id, lot_id, occurred_at, sum(pieces) AS pieces, sum(microlitres) AS microlitres FROM movement
      WHERE kind IN ('transferred in', 'transferred out')
        AND NOT EXISTS (SELECT 1 FROM transfer_line AS line WHERE line.studio_id = movement.studio_id
          AND line.movement_id IN (movement.id, movement.reverses_id))
        AND NOT EXISTS (SELECT 1 FROM transfer_goods AS goods
          WHERE goods.studio_id = movement.studio_id AND goods.movement_id = movement.id)
      GROUP BY studio_id, lot_id, occurred_at HAVING sum(pieces) <> 0 OR sum(microlitres) <> 0`,
  },
  {
    fault: 'the history of alerts has a gap',
    query: `SELECT studio_id, count(*) AS entries, max(sequence) AS latest FROM alert_entry
      GROUP BY studio_id HAVING count(*) <> max(sequence) OR min(sequence) <> 1`,
  },
  {
    // One from before histories were kept has none of its opening.
    fault: 'an alert and its history do not agree',
    query: `SELECT alert.id, alert.kind, step.event FROM alert
      JOIN (SELECT 'acknowledged' AS event UNION ALL SELECT 'closed' UNION ALL SELECT 'given'
            UNION ALL SELECT 'put off') AS step
        ON (step.event = 'acknowledged' AND alert.acknowledged_at IS NOT NULL)
        OR (step.event = 'closed' AND alert.closed_at IS NOT NULL)
        OR (step.event = 'given' AND alert.given_to IS NOT NULL)
        OR (step.event = 'put off' AND alert.put_off_until IS NOT NULL)
      WHERE EXISTS (SELECT 1 FROM alert_entry AS opened WHERE opened.studio_id = alert.studio_id
          AND opened.alert_id = alert.id AND opened.event = 'opened')
        AND NOT EXISTS (SELECT 1 FROM alert_entry AS entry WHERE entry.studio_id = alert.studio_id
          AND entry.alert_id = alert.id AND entry.event = step.event)`,
  },
  {
    fault: 'a step of an alert that is told has no promise of it',
    query: `SELECT entry.alert_id, entry.event FROM alert_entry AS entry
      WHERE entry.event IN ('opened', 'worse', 'due again', 'given', 'handed on', 'closed')
        AND NOT EXISTS (SELECT 1 FROM outbox WHERE outbox.studio_id = entry.studio_id AND outbox.alert_id = entry.alert_id
          AND outbox.event = entry.event AND outbox.created_at = entry.recorded_at)`,
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
