import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, receive, walkIn } from '../support/sample-studio.js';
import { TwoStudios } from '../support/two-studios.js';

/** What somebody with the file in hand might do, once the triggers are out of the way, and how it shows. */
const attacks: [string, string, RegExp][] = [
  [
    'an audit entry that was rewritten',
    "UPDATE audit_entry SET payload = payload || ' ' WHERE sequence = 3",
    /^Audit entry 3 of .* is not what was written/,
  ],
  [
    'an audit entry that was taken out',
    'DELETE FROM audit_entry WHERE sequence = 3',
    /^Audit entry 3 of .* is missing: after entry 2 comes entry 4/,
  ],
  [
    'a last audit entry that was taken off',
    'DELETE FROM audit_entry WHERE sequence = (SELECT max(sequence) FROM audit_entry)',
    /^The head of .* names entry \d+, but the last entry is \d+\. The end of the chain was cut off/,
  ],
  [
    'a row that was changed behind the log',
    "UPDATE person SET role = 'manager'",
    /^person .* is not as audit entry \d+ .* left it/,
  ],
  [
    'a row that was slipped in',
    `INSERT INTO lot_code (studio_id, id, lot_id, kind, code, recorded_at)
     SELECT studio_id, 'slipped in', id, 'lot', 'L9', created_at FROM lot LIMIT 1`,
    /^lot_code slipped in .* is in no audit entry/,
  ],
  ['a delivery that lost its lines', 'DELETE FROM delivery_line', /^a delivery has no line/],
  [
    'a delivery that lost its movements',
    "DELETE FROM movement WHERE kind = 'received'",
    /^a lot does not hold/,
  ],
  [
    'a container that lost its movements',
    "DELETE FROM movement WHERE kind = 'received'",
    /^a container has no mov/,
  ],
  [
    'a balance that was corrected by hand',
    'UPDATE balance SET pieces = pieces + 1',
    /^The balance of container .* its movements come to/,
  ],
  [
    'a use that vanished',
    'DELETE FROM session_use',
    /^something was taken for a session, but no use says so/,
  ],
  ['a piece that vanished with its use', 'DELETE FROM session_use', /^a piece settled as used is in no use/],
  [
    'a use of another amount',
    'UPDATE session_use SET pieces = pieces + 1',
    /^a use and its movement do not agree/,
  ],
  [
    'a tray that was not settled',
    "UPDATE tray_line SET state = 'on tray', settled_as = NULL, settled_at = NULL",
    /^a completed session has something left on its tray/,
  ],
  ['a transfer that lost its lines', 'DELETE FROM transfer_line', /^a transfer has no line/],
  [
    'what was told of a line and taken out again',
    'UPDATE transfer_line_facts SET revision = revision + 1',
    /^the facts told of a line of a transfer have a gap/,
  ],
  [
    'a line of more than was sent',
    'UPDATE transfer_line SET pieces = pieces + 1',
    /^a line of a transfer and the movement it went by do not agree/,
  ],
  [
    'goods of more than came',
    'UPDATE transfer_goods SET pieces = pieces + 1',
    /^goods of a transfer and the movement they came by do not agree/,
  ],
  [
    'goods that were never lost',
    'UPDATE transfer_outcome SET lost_pieces = 0',
    /^what was sent is not what arrived, was lost or came back/,
  ],
  [
    'an outcome that vanished with its goods',
    'DELETE FROM transfer_goods',
    /^something left or came by no transfer/,
  ],
  [
    'a step of an alert that vanished',
    'UPDATE alert_entry SET sequence = sequence + 1',
    /^the history of alerts has a gap/,
  ],
  [
    'an alert that says more than its history',
    'UPDATE alert SET acknowledged_at = opened_at, acknowledged_by = opened_at',
    /^an alert and its history do not agree/,
  ],
  [
    'a step that nobody will be told of',
    "UPDATE outbox SET created_at = '2020-01-01T00:00:00.000Z'",
    /^a step of an alert that is told has no promise of it/,
  ],
  ['an alert that nobody will be told of', 'DELETE FROM outbox', /^an alert has no promise of its delivery/],
  [
    'a request that was answered by nothing',
    "UPDATE accepted_request SET answer = NULL WHERE action = 'stock.receive'",
    /^a request that was accepted has no answer/,
  ],
  [
    'a request that was forgotten',
    "DELETE FROM accepted_request WHERE action = 'stock.receive'",
    /^an audit entry of what a client asked for has no request/,
  ],
  [
    'a row that names nothing',
    'DELETE FROM client',
    /^Row number \d+ of session names a client that is not there/,
  ],
];

describe('the look at the whole record', () => {
  let dataFolder: string;

  beforeAll(async () => {
    const studios = await TwoStudios.start('sqlite');
    const { here, there, store } = studios;
    const { service } = here;
    dataFolder = service.dataFolder;
    const studio = await makeSampleStudio(service);
    // So near an end opens an alert.
    const soon = new Date(Date.now() + 20 * 86_400_000).toISOString().slice(0, 10);
    await receive(service, studio, { productId: studio.thinnerId, code: 'T1', useBy: soon });
    const { containers } = await receive(service, studio, {
      productId: studio.linerId,
      code: 'N1',
      quantity: 5,
    });
    const session = await walkIn(service, studio);
    await service.made(`/sessions/${session}/scans`, { symbol: containers[0]?.labelCode });
    await service.made(`/sessions/${session}/completion`, {
      lines: [],
      complications: null,
      signedBy: studio.ownerId,
    });
    const sent = await here.send(there, [{ containerId: containers[0]?.id, pieces: 3 }]);
    await there.arrive(sent, [{ pieces: 2 }]);
    const back = await here.send(there, [{ containerId: containers[0]?.id }]);
    await service.made(`/transfers/${back.id}/withdrawal`, { reason: 'It never left' });
    await store.close();
    await service.stop();
  });

  afterAll(() => rmSync(dataFolder, { recursive: true, force: true }));

  async function afterAttack(attack: string | null): Promise<string[]> {
    const copy = mkdtempSync(join(tmpdir(), 'lotward-attacked-'));
    cpSync(dataFolder, copy, { recursive: true });
    const sql = await PlainSql.connect({ dataFolder: copy }, 'write');
    try {
      if (attack !== null) {
        await sql.rows('PRAGMA foreign_keys = OFF');
        await sql.rows('PRAGMA ignore_check_constraints = ON');
        for (const { name } of await sql.rows("SELECT name FROM sqlite_schema WHERE type = 'trigger'")) {
          await sql.rows(`DROP TRIGGER "${name}"`);
        }
        await sql.rows(attack);
        await sql.rows('PRAGMA ignore_check_constraints = OFF');
      }
      return await inconsistencies(sql);
    } finally {
      await sql.close();
      rmSync(copy, { recursive: true, force: true });
    }
  }

  it('finds nothing amiss in what the service wrote', async () => {
    expect(await afterAttack(null)).toEqual([]);
  });

  it.each(attacks)('sees %s', async (_, attack, expected) => {
    const faults = await afterAttack(attack);
    expect(
      faults.filter((fault) => expected.test(fault)),
      faults.join('\n'),
    ).not.toEqual([]);
  });
});
