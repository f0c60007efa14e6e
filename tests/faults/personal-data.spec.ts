import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { StudioView } from '../../src/identity/studios.views.js';
import { ApiDocument } from '../support/api-document.js';
import { runCommand, settingsOf } from '../support/commands.js';
import { PlainSql } from '../support/plain-sql.js';
import { startPostgres } from '../support/postgres.js';
import type { SampleStudio } from '../support/sample-studio.js';
import { sealedTexts } from '../support/sealed-texts.js';
import {
  engines,
  makePostgresDatabase,
  type RunningService,
  startService,
  testOwner,
} from '../support/service.js';
import { formsOf, TextSearch } from '../support/text-search.js';
import { makeTreatedClient, texts } from '../support/treated-client.js';
import { walkStudio } from '../support/walk.js';

/** Sealed, but words of the program and of every second sentence as well. */
const tooCommon = ['Owner', 'none'];
/** Told to the service and refused by it: not even so may they be kept. */
const refused = { name: 'Quirin Falkenhayn', contact: 'quirin@example.org' };
/** Brought by a list of bookings. */
const listed = { name: 'Benedikta Sonnleitner', contact: 'benedikta@example.org' };
const signInName = testOwner.signInName;

/** How many things of each kind are gone into: what is read, and logged, of one is that of all. */
const mostOfKind = process.env.SOAK ? 40 : 8;

/** The demo as a process of its own, on a folder that stays. */
function demo(folder: string, databaseUrl: string | undefined): Promise<number | null> {
  const child = spawn(process.execPath, ['dist/tests/demo/walk.js', '--once', '--keep', folder], {
    env: {
      PATH: process.env.PATH,
      TZ: 'UTC',
      ...(databaseUrl !== undefined && { DATABASE_URL: databaseUrl }),
    },
    stdio: 'ignore',
  });
  return new Promise((resolve) => child.once('exit', resolve));
}

/** What the demo left, under the names that support files know. */
async function studioOfDemo(service: RunningService): Promise<SampleStudio> {
  const people = await service.seen<{ id: string; role: string }[]>('/people');
  const [place] = await service.seen<{ id: string }[]>('/places');
  const { items: products } = await service.seen<{ items: { id: string; shade: string | null }[] }>(
    '/products',
  );
  const procedures = await service.seen<{ id: string; bodyPlace: string }[]>('/procedures');
  return {
    ownerId: people.find(({ role }) => role === 'owner')?.id ?? '',
    placeId: place?.id ?? '',
    makerId: '',
    umberId: products.find(({ shade }) => shade === 'Warm umber')?.id ?? '',
    thinnerId: '',
    linerId: '',
    gelId: '',
    procedureId: procedures.find(({ bodyPlace }) => bodyPlace === 'brows')?.id ?? '',
    clientId: '',
    linerGtin: '',
  };
}

describe('the search for texts', () => {
  it('finds each form of a text, in any case, between other bytes', () => {
    const text = 'Jördis Öberg';
    const search = new TextSearch([text]);
    for (const [form, bytes] of formsOf(text)) {
      const hidden = Buffer.concat([Buffer.from([0, 255, 7]), bytes, Buffer.from([0, 1])]);
      expect(search.inBytes('here', hidden), form).not.toEqual([]);
    }
    expect(search.inBytes('here', Buffer.from('xx JöRDIS ÖBeRG xx'))).not.toEqual([]);
    for (const before of ['', 'a', 'ab', 'abc']) {
      const encoded = Buffer.from(`${before}${text} and more`).toString('base64');
      expect(search.inBytes('here', Buffer.from(encoded)), before).not.toEqual([]);
    }
    expect(search.inBytes('here', Buffer.from('Jordis Oberg, Jördis, Öberg'))).toEqual([]);
  });
});

describe.each(engines)('after the demo and all else, on %s,', { timeout: 240_000 }, (engine) => {
  const folder = mkdtempSync(join(tmpdir(), 'lotward-personal-'));
  const writeAheadLog = join(folder, 'lotward.sqlite-wal');
  let service: RunningService;
  /** A server that holds nothing else, since all its databases share one write-ahead log. */
  let server: Awaited<ReturnType<typeof startPostgres>> | undefined;
  let databaseUrl: string | undefined;
  let personal: string[];
  let search: TextSearch;

  /** All that can be said of people: recorded, searched for, refused, exported, erased; by HTTP and from the shell. */
  async function everythingElse(): Promise<void> {
    const studio = await studioOfDemo(service);
    const { version } = await service.seen<StudioView>('');
    await service.patch('', { version, retentionPreset: 'own', retentionYears: 3 });
    const kept = await makeTreatedClient(service, studio);
    const claim = await service.made<{ id: string }>(`/clients/${kept.clientId}/legal-claims`, {
      reason: 'claims a burn on the temple',
    });
    await service.made(`/clients/${kept.clientId}/legal-claims/${claim.id}/end`, {
      reason: 'settled amicably',
    });
    for (const text of [texts.name, texts.contact, refused.name]) {
      await service.send('POST', '/clients/search', { text });
    }
    const gone = await makeTreatedClient(service, studio, {
      name: 'Wilma Vergangen',
      note: 'moved to the coast',
    });
    await service.made(`/clients/${gone.clientId}/erasure`, {
      ground: 'objection',
      overrides: ['no legal obligation applies'],
    });
    const recall = await service.made<{ id: string }>('/recalls', {
      title: 'what touched them',
      scope: { items: [{ gtins: [], productIds: [studio.umberId], lots: [], openEnded: false }] },
    });
    const contact = { audience: 'client', clientId: kept.clientId, channel: 'telephone' };
    await service.made(`/recalls/${recall.id}/contacts`, {
      ...{ ...contact, outcome: 'message left', note: 'her cousin Wenzel took the call' },
    });
    await service.seen(`/recalls/${recall.id}/messages?audience=client&clientId=${kept.clientId}`);
    const { id: supplierId } = await service.made<{ id: string }>('/suppliers', { name: 'Pellworm Supply' });
    await service.made('/claims', {
      ...{ supplierId, reason: 'other', pieces: 1, note: 'their driver Wenzel saw it leak' },
    });
    const booking = 'client name,contact,visit,planned start\n';
    const soon = new Date(Date.now() + 86_400_000).toISOString();
    const list = `${booking}${listed.name},${listed.contact},first session,${soon}\n`;
    const ids = { artistId: studio.ownerId, procedureId: studio.procedureId };
    await service.made('/bookings/preview', { text: list, ...ids, id: undefined });
    await service.made('/bookings', { text: list, ...ids });
    const faulty = `${booking}${refused.name},${refused.contact},${refused.name},03/04/2027\n${refused.name}`;
    await service.post('/bookings/preview', { text: faulty, ...ids, id: undefined });
    await service.post('/bookings', { text: faulty, ...ids });
    await service.post('/opening-stock', { text: `maker\n${refused.name}` });
    // What is refused, cannot be read, or leads nowhere is logged more than anything else.
    for (const body of [
      { ...refused, colour: refused.name },
      { ...refused, id: 'no id' },
      { name: `${refused.name}\u0000` },
      { ...refused, note: refused.name.repeat(500) },
    ]) {
      await service.post('/clients', body);
    }
    await service.send('POST', '/clients', `{"name":"${refused.name}",`);
    await service.post(`/clients/${encodeURIComponent(refused.name)}/erasure`, { ground: refused.name });
    await service.post('/sessions/late', { client: refused, source: refused.name });
    await service.send('PATCH', `/clients/${kept.clientId}`, {
      id: uuidv7(),
      version: 99,
      name: refused.name,
    });
    const { visited } = await visitEverything();
    expect(visited).toBeGreaterThan(50);
  }

  async function visitEverything(): Promise<{ visited: number }> {
    const { answers } = await walkStudio(service, await ApiDocument.of(service), { mostOfKind });
    expect(answers.some(({ text }) => text.includes(texts.name))).toBe(true);
    return { visited: answers.length };
  }

  beforeAll(async () => {
    if (engine === 'postgres') {
      server = await startPostgres();
      databaseUrl = await makePostgresDatabase(server.url);
    }
    expect(await demo(folder, databaseUrl)).toBe(0);
    service = await startService(engine, {
      dataFolder: folder,
      ...(databaseUrl !== undefined && { databaseUrl }),
      environment: { LOG_LEVEL: 'debug' },
    });
    await everythingElse();
    const shell: string[] = [];
    // A dump of PostgreSQL holds what its tables hold, which are searched themselves.
    const commands = ['rotate-master-key', 'retention', 'verify', ...(engine === 'sqlite' ? ['backup'] : [])];
    for (const command of commands) {
      const { code, out, err } = await runCommand([command], {
        environment: settingsOf({ dataFolder: folder, databaseUrl }),
      });
      expect([command, code, err]).toEqual([command, 0, '']);
      shell.push(out);
    }
    // It goes on running: SQLite removes its write-ahead log as soon as nobody has the database open.
    writeFileSync(join(folder, 'further.log'), [...service.log, ...shell].join(''));
    const sql = await PlainSql.connect({ dataFolder: folder, databaseUrl }, 'read');
    const sealed = await sealedTexts(sql);
    await sql.close();
    personal = [
      ...sealed,
      ...Object.values(texts),
      'Wilma Vergangen',
      'moved to the coast',
      ...Object.values(listed),
      ...Object.values(refused),
      signInName,
    ].filter((text) => !tooCommon.includes(text));
    search = new TextSearch([...new Set(personal)]);
  }, 300_000);

  afterAll(async () => {
    await service?.stop();
    await server?.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  /** Every file of the data folder, and of PostgreSQL those of the database and of the write-ahead log. */
  async function inFiles(search: TextSearch): Promise<string[]> {
    const found = search.inFolder(folder);
    if (engine === 'sqlite') return found;
    const sql = await PlainSql.connect({ dataFolder: folder, databaseUrl }, 'write');
    await sql.rows('CHECKPOINT');
    const [place] = await sql.rows<{ data: string; base: string }>(
      `SELECT current_setting('data_directory') AS data, pg_relation_filepath('place') AS base`,
    );
    await sql.close();
    const data = place?.data ?? '';
    const base = dirname(place?.base ?? '');
    return [
      ...found,
      ...search.inFolder(join(data, base)).map((each) => `database ${each}`),
      ...search.inFolder(join(data, 'pg_wal')).map((each) => `write-ahead log ${each}`),
    ];
  }

  /** Every text of every table, as SQL shows it. */
  async function inDatabase(): Promise<string[]> {
    const sql = await PlainSql.connect({ dataFolder: folder, databaseUrl }, 'read');
    const found: string[] = [];
    for (const table of await sql.tables()) {
      found.push(
        ...search.inBytes(table, Buffer.from(JSON.stringify(await sql.rows(`SELECT * FROM "${table}"`)))),
      );
    }
    await sql.close();
    return found;
  }

  it('knows the names of the demo, and every text that was sealed', () => {
    for (const text of [
      'Ida Sommer',
      '+43 1 5550100',
      'Nora Vale',
      'Mira Anders',
      'slight redness, gone within the hour',
    ]) {
      expect(personal).toContain(text);
    }
    for (const text of [...Object.values(texts), 'claims a burn on the temple', 'settled amicably']) {
      expect(personal).toContain(text);
    }
  });

  const files = {
    sqlite: 'database, write-ahead log, backups, list of erasures, logs',
    postgres: 'those of the server, its write-ahead log, list of erasures, logs',
  };
  it(`finds them in no file: ${files[engine]}`, async () => {
    const log = readFileSync(join(folder, 'further.log'), 'utf8');
    expect(log.length).toBeGreaterThan(10_000);
    expect(readFileSync(join(folder, 'service.log'), 'utf8').length).toBeGreaterThan(1_000);
    expect(readFileSync(join(folder, 'backups', 'erasures.jsonl'), 'utf8')).toContain('dataKeyId');
    if (engine === 'sqlite') expect(statSync(writeAheadLog).size).toBeGreaterThan(0);
    expect(await inFiles(search)).toEqual([]);
  });

  it('finds them in no table', async () => {
    expect(await inDatabase()).toEqual([]);
  });

  it('would find one that stood anywhere', async () => {
    const sql = await PlainSql.connect({ dataFolder: folder, databaseUrl }, 'write');
    // Several times: in a write-ahead log one may lie across two pages, with a head of a page in its midst.
    for (const name of ['case IDA SOMMER 1', 'room Ida Sommer, 2', 'shelf of ida sommer']) {
      await sql.rows('UPDATE place SET name = $1 WHERE id = (SELECT min(id) FROM place)', [name]);
    }
    await sql.close();
    const inTables = await inDatabase();
    expect(inTables[0]).toContain('place holds "Ida Sommer" as UTF-8');
    expect(new Set(inTables.map((each) => each.split(' ')[0]))).toEqual(new Set(['place']));
    writeFileSync(join(folder, 'planted.bin'), Buffer.from(`x${texts.contact}x`, 'utf16le'));
    writeFileSync(join(folder, 'planted.txt'), Buffer.from(`of ${texts.note}`).toString('base64'));
    const found = await inFiles(new TextSearch(['Ida Sommer', texts.contact, texts.note]));
    expect(found).toEqual(
      expect.arrayContaining([
        expect.stringContaining(`planted.bin holds "${texts.contact}" as UTF-16LE`),
        expect.stringContaining(`planted.txt holds "${texts.note}" as base64`),
      ]),
    );
    const places =
      engine === 'sqlite'
        ? ['lotward.sqlite-wal holds "Ida Sommer"']
        : [/^database \S+ holds "Ida Sommer"/, /^write-ahead log \S+ holds "Ida Sommer"/];
    for (const place of places) expect(found).toContainEqual(expect.stringMatching(place));
  });
});
