import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { Attacker } from '../support/attacker.js';
import { type CommandResult, CommandsInTurn, runCommand, settingsOf } from '../support/commands.js';
import { exportLog } from '../support/exported-log.js';
import { type DataPlace, PlainSql } from '../support/plain-sql.js';
import { copyOfRecord } from '../support/record-copy.js';
import { makeSampleStudio, receive } from '../support/sample-studio.js';
import { startService, usualEngine } from '../support/service.js';

const inTurn = new CommandsInTurn();
afterAll(() => inTurn.end());

function verify(data: DataPlace, ...given: string[]): Promise<CommandResult> {
  return inTurn.run(['verify', ...given], settingsOf(data));
}

/** In a process of its own, as from the shell. */
function verifyAlone(data: DataPlace): Promise<CommandResult> {
  return runCommand(['verify'], { environment: settingsOf(data) });
}

describe.each(usualEngine)('npm run cli -- verify, on %s', (engine) => {
  let original: DataPlace;
  let exported: string;
  let studioId: string;
  const copies: DataPlace[] = [];

  beforeAll(async () => {
    const service = await startService(engine);
    const studio = await makeSampleStudio(service);
    await receive(service, studio, { productId: studio.umberId });
    studioId = service.studioId;
    const running = await verifyAlone(service);
    expect(running, 'while the service runs').toMatchObject({ code: 0, err: '' });
    await service.stop();
    // The handing out of the log leaves an entry without rows at the end of the chain.
    const again = await startService(engine, service);
    exported = join(service.dataFolder, 'log.ndjson');
    writeFileSync(exported, await exportLog(again));
    await again.stop();
    original = { dataFolder: service.dataFolder, databaseUrl: service.databaseUrl };
  });

  afterEach(() => {
    for (const { dataFolder } of copies.splice(0)) rmSync(dataFolder, { recursive: true, force: true });
  });
  afterAll(() => rmSync(original.dataFolder, { recursive: true, force: true }));

  /** A copy of the record on which somebody ran SQL past the service. */
  async function tampered(...statements: string[]): Promise<DataPlace> {
    const copy = await copyOfRecord(original);
    copies.push(copy);
    const attacker = await Attacker.at(copy);
    for (const statement of statements) await attacker.run(statement);
    await attacker.close();
    return copy;
  }

  const cutTheEnd = [
    'DELETE FROM audit_entry WHERE sequence = (SELECT max(sequence) FROM audit_entry)',
    `UPDATE audit_head SET sequence = sequence - 1,
       hash = (SELECT hash FROM audit_entry WHERE sequence = audit_head.sequence - 1)`,
  ];

  it('says in sentences what it looked at, and ends with 0 when everything fits', async () => {
    const { code, out, err } = await verifyAlone(original);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(new RegExp(`^Studio My studio \\(${studioId}\\)$`, 'm'));
    expect(out).toMatch(/^ {2}Audit log: \d+ entries; its head is entry \d+, [0-9a-f]{64}\.$/m);
    expect(out).toMatch(/^ {2}Held against it: [\d,]+ rows\.$/m);
    expect(out).toMatch(
      /^ {2}Held against the ledger: \d+ balances?, and what is on hand of \d+ products?\.$/m,
    );
    expect(out).toContain('No backup and no exported log remembers a head of this chain');
    expect(out).toMatch(/Everything fits together\.\n$/);
  });

  it('ends with 2 and names the first row that is wrong, and how many things are', async () => {
    const { code, out } = await verifyAlone(
      await tampered(
        "UPDATE person SET role = 'manager' WHERE role = 'owner'",
        'UPDATE balance SET pieces = pieces + 1',
      ),
    );
    expect(code).toBe(2);
    expect(out).toMatch(
      /(\d+) things are wrong\. The first:\n {2}person [0-9a-f-]{36} of .* is not as audit entry \d+ /,
    );
    expect(out).not.toContain('Everything fits');
  });

  it('finds an end that was cut off by an exported log, named itself or with its folder', async () => {
    const cut = await tampered(...cutTheEnd);
    expect((await verify(cut)).code).toBe(0);
    for (const against of [exported, original.dataFolder]) {
      const { code, out } = await verify(cut, '--against', against);
      expect(code).toBe(2);
      expect(out).toContain('but the log log.ndjson, exported at');
      expect(out).toContain('its end was cut off');
    }
    const whole = await verify(original, '--against', exported);
    expect(whole.code).toBe(0);
    expect(whole.out).toMatch(
      /Compared with 1 head in backups and exported logs; the furthest is entry \d+, in the log/,
    );
  });

  it('ends with 1 when what it should compare with is not there, or there is nothing to look at', async () => {
    const missing = await verify(original, '--against', '/nowhere/log.ndjson');
    expect(missing).toMatchObject({
      code: 1,
      err: expect.stringContaining('There is no /nowhere/log.ndjson'),
    });
    const empty = await verify(original, '--against', join(process.cwd(), 'docker'));
    expect(empty).toMatchObject({
      code: 1,
      err: expect.stringContaining('neither a backup nor an exported log'),
    });
    if (engine === 'postgres') return;
    const none = await verify({ dataFolder: '/nowhere' });
    expect(none).toMatchObject({ code: 1, err: expect.stringContaining('There is no database at /nowhere') });
  });

  it.runIf(engine === 'sqlite')('compares with the backups by itself', async () => {
    const place = await tampered();
    const made = await runCommand(['backup'], { environment: { DATA_DIR: place.dataFolder } });
    expect(made.code).toBe(0);
    expect((await verify(place)).out).toMatch(
      /Compared with 1 head .* the furthest is entry \d+, in the backup \d{8}T/,
    );
    const attacker = await Attacker.at(place);
    for (const statement of cutTheEnd) await attacker.run(statement);
    await attacker.close();
    const cut = await verify(place);
    expect(cut.code).toBe(2);
    expect(cut.out).toMatch(/but the backup \d{8}T\d{6}Z-by-command knows entry \d+: its end was cut off/);
  });

  it.runIf(engine === 'sqlite')('does not pass over a backup whose manifest was changed', async () => {
    const place = await tampered();
    await runCommand(['backup'], { environment: { DATA_DIR: place.dataFolder } });
    const [name = ''] = readdirSync(join(place.dataFolder, 'backups'));
    const manifest = join(place.dataFolder, 'backups', name, 'manifest.json');
    writeFileSync(manifest, readFileSync(manifest, 'utf8').replace(/"sequence": (\d)/, '"sequence": 9$1'));
    const { code, out } = await verify(place);
    expect(code).toBe(2);
    expect(out).toMatch(
      /The manifest\.json of the backup .* cannot be used: its digest is not that of its content/,
    );
  });

  it.runIf(engine === 'sqlite')('tells of a damaged page, and of a file that is no database', async () => {
    const place = await tampered('PRAGMA wal_checkpoint(TRUNCATE)');
    const sql = await PlainSql.connect(place, 'read');
    const [page] = await sql.rows(
      "SELECT pageno, pgsize FROM dbstat WHERE name = 'audit_entry' AND pagetype = 'leaf' ORDER BY pageno DESC LIMIT 1",
    );
    await sql.close();
    const file = join(place.dataFolder, 'lotward.sqlite');
    const bytes = readFileSync(file);
    const size = Number(page?.pgsize);
    const start = (Number(page?.pageno) - 1) * size;
    writeFileSync(file, bytes.fill(0xa5, start, start + size));
    const damaged = await verify(place);
    expect(damaged.code, damaged.err).toBe(2);
    expect(damaged.out).toMatch(/The database cannot be read to its end: database disk image is malformed/);
    writeFileSync(file, bytes.fill(0xa5, 0, 1_000));
    expect(await verify(place)).toMatchObject({
      code: 1,
      err: expect.stringMatching(/lotward\.sqlite cannot be read as a database .* restore a backup\.$/m),
    });
  });
});
