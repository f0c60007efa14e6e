import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientView } from '../../src/clients/clients.views.js';
import type { ErasureAnswerView } from '../../src/clients/erasures.views.js';
import type { StudioView } from '../../src/identity/studios.views.js';
import type { SessionView } from '../../src/sessions/session-record.views.js';
import { commandLine, runCommand, settingsOf } from '../support/commands.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, type SampleStudio } from '../support/sample-studio.js';
import {
  engines,
  type ProblemBody,
  type RunningService,
  startService,
  usualEngine,
} from '../support/service.js';
import { makeTreatedClient } from '../support/treated-client.js';

const overrides = ['no legal obligation applies'];
const listOf = (dataFolder: string) => join(dataFolder, 'backups', 'erasures.jsonl');

async function keptByOwnWill(service: RunningService): Promise<void> {
  const { version } = await service.seen<StudioView>('');
  const set = await service.patch('', { version, retentionPreset: 'own', retentionYears: 3 });
  expect(set.status).toBe(200);
}

function erase(service: RunningService, clientId: string, id = uuidv7()) {
  return service.post<ErasureAnswerView & ProblemBody>(`/clients/${clientId}/erasure`, {
    id,
    ground: 'consent withdrawn',
    overrides,
  });
}

async function erased(service: RunningService, clientId: string): Promise<void> {
  const answer = await erase(service, clientId);
  expect([answer.status, answer.body.answer]).toEqual([201, 'erased']);
}

const nameOf = async (service: RunningService, clientId: string) =>
  (await service.seen<ClientView>(`/clients/${clientId}`)).name;

const addClient = async (service: RunningService, name: string) =>
  (await service.made<{ id: string }>('/clients', { name, contact: `${name}@example.org` })).id;

/** The files below a folder that hold a text as it is. */
function filesWith(folder: string, text: string): string[] {
  const wanted = Buffer.from(text);
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => statSync(join(folder, file)).isFile())
    .filter((file) => readFileSync(join(folder, file)).includes(wanted));
}

describe.each(engines)('erasure on %s', { timeout: 240_000 }, (engine) => {
  // Each place of the erasure among the others comes up twice.
  const clients = process.env.SOAK ? 200 : 14;
  let dataFolder: string;
  let databaseUrl: string | undefined;
  let service: RunningService;
  let studio: SampleStudio;
  beforeAll(async () => {
    service = await startService(engine);
    ({ dataFolder, databaseUrl } = service);
    studio = await makeSampleStudio(service);
    await keptByOwnWill(service);
  });
  afterAll(() => service.dispose());

  it(`beside others who write seals nothing under a key that is gone, and leaves no visit open: ${clients} clients`, async () => {
    let times = 0;
    for (let index = 0; index < clients; index += 1) {
      const { clientId, sessionId } = await makeTreatedClient(service, studio, { name: `Raced ${index}` });
      const { version } = await service.seen<SessionView>(`/sessions/${sessionId}`);
      const visit = {
        clientId,
        artistId: studio.ownerId,
        procedureId: studio.procedureId,
        visitKind: 'refresh',
      };
      const attempts = [
        () => service.post(`/sessions/${sessionId}/complications`, { version, complications: 'itching' }),
        () =>
          service.post(`/sessions/${sessionId}/healed-result`, {
            version,
            retainedColourPercent: 60,
            note: 'fine',
          }),
        () =>
          service.post(`/sessions/${sessionId}/uses`, {
            uses: [
              {
                productId: studio.gelId,
                code: `G${index}`,
                knownBy: 'typed',
                pieces: 1,
                reason: 'she remembered',
              },
            ],
          }),
        () => service.patch(`/clients/${clientId}`, { version: 1, note: 'called again' }),
        () => service.post(`/clients/${clientId}/legal-claims`, { reason: 'sues' }),
        () => service.post('/sessions/walk-in', { ...visit, bodyPlaceDetail: 'left' }),
      ];
      // The erasure comes at another place among the others each time.
      attempts.splice(index % (attempts.length + 1), 0, () => erase(service, clientId));
      const answers = await Promise.all(attempts.map((attempt) => attempt()));
      expect(answers.filter(({ status }) => status >= 500)).toEqual([]);
      const { erasedAt } = await service.seen<ClientView>(`/clients/${clientId}`);
      if (erasedAt !== null) times += 1;
    }
    process.stdout.write(`erasure under load on ${engine}: ${times} of ${clients} came through\n`);
    expect(times).toBeGreaterThan(0);
    const sql = await PlainSql.connect(service, 'read');
    const gone = `client.erased_at IS NOT NULL`;
    expect(
      await sql.rows(
        `SELECT session.id, session.state FROM session JOIN client ON client.id = session.client_id
         WHERE ${gone} AND (session.state IN ('planned', 'in setup')
           OR coalesce(body_place_detail_sealed, complications_sealed, healed_result_sealed) IS NOT NULL)`,
      ),
    ).toEqual([]);
    // By the order of the audit log: after the erasure nothing about the client that had to be sealed.
    const late = await sql.rows(
      `SELECT later.sequence, later.action FROM audit_entry AS erasure
         JOIN client ON client.id = erasure.subject_id AND ${gone} AND client.erased_at = erasure.recorded_at
         JOIN audit_entry AS later ON later.sequence > erasure.sequence AND (later.subject_id = client.id
           OR later.subject_id IN (SELECT id FROM session WHERE session.client_id = client.id))
       WHERE erasure.action = 'clients.answer-erasure'`,
    );
    expect(late).toEqual([]);
    expect(await inconsistencies(sql)).toEqual([]);
    await sql.close();
  });

  describe.runIf(engine === 'sqlite')('leaves in the files', () => {
    /** What is stored of a client and must be gone afterwards: the wrapped key, ciphertexts and hashes. */
    async function stored(clientId: string): Promise<string[]> {
      const sql = await PlainSql.connect(service, 'read');
      const [row] = await sql.rows<Record<string, string>>(
        `SELECT data_key.wrapped_key, client.name_sealed, client.contact_sealed, client.note_sealed, client.name_hash,
           client.contact_hash
         FROM client JOIN data_key ON data_key.id = client.data_key_id WHERE client.id = $1`,
        [clientId],
      );
      const sessions = await sql.rows<Record<string, string>>(
        `SELECT body_place_detail_sealed, complications_sealed, healed_result_sealed FROM session WHERE client_id = $1`,
        [clientId],
      );
      await sql.close();
      return [row, ...sessions].flatMap((each) => Object.values(each ?? {})).filter((text) => text !== null);
    }
    const left = (all: readonly string[]) =>
      all.flatMap((text) =>
        filesWith(service.dataFolder, text).map((file) => `${file}: ${text.slice(0, 20)}…`),
      );

    it('neither the wrapped key nor anything sealed under it that could be cleared, in any page or log', async () => {
      // Nobody else has it, so nobody else leaves its hash.
      const known = { contact: 'wiped@example.org' };
      const early = await makeTreatedClient(service, studio, known);
      for (let index = 0; index < 120; index += 1)
        await addClient(service, `Filler ${index} ${'x'.repeat(index % 90)}`);
      const middle = await makeTreatedClient(service, studio, known);
      // Rows that grow move their neighbours to other pages.
      const { items } = await service.seen<{ items: ClientView[] }>('/clients?limit=100');
      for (const { id, version } of items) {
        await service.patch(`/clients/${id}`, { version, note: 'a longer note. '.repeat(20) });
      }
      const before = [...(await stored(early.clientId)), ...(await stored(middle.clientId))];
      await commandLine(service, 'rotate-master-key');
      const all = [...before, ...(await stored(early.clientId)), ...(await stored(middle.clientId))];
      expect(all.length).toBeGreaterThan(30);
      // What is searched for is there, so the search finds.
      for (const text of await stored(early.clientId))
        expect(filesWith(service.dataFolder, text)).not.toEqual([]);
      for (const { clientId } of [early, middle]) await erased(service, clientId);
      expect(left(all)).toEqual([]);
    });

    it('nothing as soon as a long read is over, and does not hold up the answer', async () => {
      const clientId = await addClient(service, 'Read Meanwhile');
      const reader = new BetterSqlite3(join(service.dataFolder, 'lotward.sqlite'), { readonly: true });
      reader.exec('BEGIN');
      reader.prepare('SELECT count(*) FROM client').get();
      const all = await stored(clientId);
      const began = Date.now();
      await erased(service, clientId);
      expect(Date.now() - began).toBeLessThan(5_000);
      expect(left(all)).not.toEqual([]);
      expect(await nameOf(service, clientId)).toBeNull();
      reader.exec('COMMIT');
      reader.close();
      await expect.poll(() => left(all), { timeout: 20_000, interval: 500 }).toEqual([]);
    });
  });

  describe('is listed, and the list', () => {
    const restart = async () => {
      await service.stop();
      service = await startService(engine, { dataFolder, ...(databaseUrl !== undefined && { databaseUrl }) });
    };
    /** For what is of the list alone, which is a file beside whichever database. */
    const inFiles = it.runIf(usualEngine.includes(engine));
    const listed = () =>
      existsSync(listOf(dataFolder))
        ? readFileSync(listOf(dataFolder), 'utf8')
            .split('\n')
            .filter((line) => line.startsWith('{') && line.endsWith('}'))
            .map((line) => (JSON.parse(line) as { clientId: string }).clientId)
        : [];

    it('gets at the start what a crash kept from it', async () => {
      const clientId = await addClient(service, 'Lost From The List');
      await erased(service, clientId);
      const all = listed().sort();
      expect(all).toContain(clientId);
      rmSync(listOf(dataFolder));
      await restart();
      expect(listed().sort()).toEqual(all);
    });

    inFiles(
      'survives a line that was cut off, gets no line twice, and says which line it cannot read',
      async () => {
        const [one, other] = [
          await addClient(service, 'Before The Cut'),
          await addClient(service, 'After The Cut'),
        ];
        await erased(service, one);
        writeFileSync(
          listOf(dataFolder),
          `${readFileSync(listOf(dataFolder), 'utf8')}not a line\n{"studioId":"01`,
        );
        await erased(service, other);
        expect(listed()).toContain(one);
        await restart();
        expect(readFileSync(listOf(dataFolder), 'utf8')).toContain(other);
        expect(new Set(listed()).size).toBe(listed().length);
        expect(service.log.join('')).toMatch(/erasures\.jsonl.*lines that are no erasure/);
      },
    );

    it('erases again whom an older copy of the database brings back', async () => {
      const clientId = await addClient(service, 'Back From The Copy');
      const copy = mkdtempSync(join(tmpdir(), 'lotward-copy-'));
      const file = join(dataFolder, 'lotward.sqlite');
      const sql =
        engine === 'postgres' ? await PlainSql.connect({ dataFolder, databaseUrl }, 'write') : undefined;
      // PostgreSQL: the rows as they were are put back by hand, as an older dump would.
      const rows = sql && {
        client: await sql.rows('SELECT * FROM client WHERE id = $1', [clientId]),
        key: await sql.rows(
          'SELECT * FROM data_key WHERE id = (SELECT data_key_id FROM client WHERE id = $1)',
          [clientId],
        ),
      };
      if (engine === 'sqlite') {
        const reader = new BetterSqlite3(file, { readonly: true });
        await reader.backup(join(copy, 'lotward.sqlite'));
        reader.close();
      }
      await erased(service, clientId);
      await service.stop();
      if (sql && rows) {
        const [client] = rows.client;
        const [key] = rows.key;
        await sql.rows('UPDATE data_key SET wrapped_key = $1, destroyed_at = NULL WHERE id = $2', [
          key?.wrapped_key ?? null,
          key?.id ?? null,
        ]);
        await sql.rows('UPDATE client SET name_sealed = $1, erased_at = NULL WHERE id = $2', [
          client?.name_sealed ?? null,
          clientId,
        ]);
        await sql.close();
      } else {
        for (const end of ['', '-wal', '-shm']) rmSync(file + end, { force: true });
        cpSync(join(copy, 'lotward.sqlite'), file);
      }
      rmSync(copy, { recursive: true });
      service = await startService(engine, { dataFolder, ...(databaseUrl !== undefined && { databaseUrl }) });
      expect(service.log.join('')).toContain('erased again');
      expect(await nameOf(service, clientId)).toBeNull();
      const look = await PlainSql.connect(service, 'read');
      expect(
        await look.rows(
          "SELECT via, person_id FROM audit_entry WHERE action = 'clients.erase-again' AND subject_id = $1",
          [clientId],
        ),
      ).toEqual([{ via: 'system', person_id: null }]);
      if (engine === 'sqlite') expect(await inconsistencies(look)).toEqual([]);
      await look.close();
      await restart();
      expect(service.log.join('')).not.toContain('erased again');
    });

    inFiles('is asked first whether it can be written to: if not, nothing is erased', async () => {
      const clientId = await addClient(service, 'On A Broken List');
      const kept = readFileSync(listOf(dataFolder), 'utf8');
      rmSync(listOf(dataFolder));
      mkdirSync(listOf(dataFolder));
      const id = uuidv7();
      const failed = await erase(service, clientId, id);
      expect([failed.status, failed.body.code]).toEqual([503, 'erasure-not-listed']);
      expect(failed.body.detail).toContain('Nothing was erased');
      expect(await nameOf(service, clientId)).toBe('On A Broken List');
      rmSync(listOf(dataFolder), { recursive: true });
      writeFileSync(listOf(dataFolder), kept);
      const again = await erase(service, clientId, id);
      expect([again.status, again.body.answer]).toEqual([201, 'erased']);
      expect(listed()).toContain(clientId);
    });

    inFiles('tells when the disk is full, and is made good at the next start', async () => {
      const studio = await service.seen<{ id: string }[]>('/people');
      const procedure = await service.seen<{ id: string }[]>('/procedures');
      const { clientId, clientReference } = await service.made<{ clientId: string; clientReference: string }>(
        '/sessions/late',
        {
          source: 'paper',
          occurredAt: new Date(Date.now() - 9 * 365 * 86_400_000).toISOString(),
          client: { name: 'On A Full Disk' },
          artistId: studio[0]?.id,
          procedureId: procedure[0]?.id,
          visitKind: 'patch test',
          uses: [],
          signedBy: studio[0]?.id,
        },
      );
      const kibibytes = 16_384;
      const kept = readFileSync(listOf(dataFolder), 'utf8');
      const filler = `${JSON.stringify({ studioId: uuidv7(), clientId: uuidv7(), dataKeyId: uuidv7(), erasedAt: new Date().toISOString() })}\n`;
      const room = kibibytes * 1_024 - kept.length - 10;
      writeFileSync(listOf(dataFolder), kept + filler.repeat(Math.floor(room / filler.length)));
      const { code, err } = await runCommand(['retention', '--carry-out', '--only', clientReference], {
        environment: settingsOf(service),
        largestFileKibibytes: kibibytes,
      });
      expect([code, err]).toEqual([1, expect.stringContaining('could not be written to')]);
      expect(await nameOf(service, clientId)).toBeNull();
      expect(listed().includes(clientId)).toBe(false);
      writeFileSync(listOf(dataFolder), kept);
      await restart();
      expect(listed()).toContain(clientId);
    });
  });
});
