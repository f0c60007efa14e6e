import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientAccessPageView, ClientAccessView } from '../../src/clients/client-accesses.views.js';
import type { ClientPageView, ClientView } from '../../src/clients/clients.views.js';
import type { ClientRecordView, SessionView } from '../../src/sessions/session-record.views.js';
import type { SessionPageView } from '../../src/sessions/sessions.views.js';
import type { TouchUpView } from '../../src/sessions/touch-up.views.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import { personOfRole, type SignedInPerson } from '../support/signing-in.js';
import { makeTreatedClient, type TreatedClient, texts } from '../support/treated-client.js';

describe.each(usualEngine)('access to clients on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let treated: TreatedClient;
  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
    treated = await makeTreatedClient(service, studio);
    await service.made(`/clients/${treated.clientId}/legal-claims`, { reason: 'claims a burn' });
  });
  afterAll(() => service.dispose());

  const accesses = async (clientId = treated.clientId): Promise<ClientAccessView[]> =>
    (await service.seen<ClientAccessPageView>(`/clients/${clientId}/accesses?limit=200`)).items;
  const newAccesses = async (look: () => Promise<unknown>): Promise<ClientAccessView[]> => {
    const before = new Set((await accesses()).map(({ id }) => id));
    await look();
    return (await accesses()).filter(({ id }) => !before.has(id));
  };

  describe('is on record', () => {
    it.each([
      ['client', () => service.seen(`/clients/${treated.clientId}`)],
      ['client list', () => service.seen('/clients?limit=200')],
      ['client search', () => service.send('POST', '/clients/search', { text: texts.name })],
      ['session list', () => service.seen(`/sessions?clientId=${treated.clientId}`)],
      ['session', () => service.seen(`/sessions/${treated.sessionId}`)],
      ['session record', () => service.seen(`/sessions/${treated.sessionId}/record`)],
      ['client trace', () => service.seen(`/clients/${treated.clientId}/trace`)],
      ['session trace', () => service.seen(`/sessions/${treated.sessionId}/trace`)],
      ['touch-up', () => service.seen(`/clients/${treated.clientId}/touch-ups`)],
      ['legal claims', () => service.seen(`/clients/${treated.clientId}/legal-claims`)],
      ['export', () => service.seen(`/clients/${treated.clientId}/export`)],
    ])('when somebody is shown a %s: who, whom, when and what', async (what, look) => {
      const began = new Date().toISOString();
      const found = await newAccesses(look);
      expect(found).toEqual([
        {
          id: expect.any(String),
          what,
          personId: studio.ownerId,
          personName: 'Owner',
          accessedAt: expect.any(String),
        },
      ]);
      const at = found[0]?.accessedAt ?? '';
      expect(at >= began && at <= new Date().toISOString()).toBe(true);
    });

    it('once, when the same person looks at the same again within a minute', async () => {
      const { id } = await service.made<{ id: string }>('/clients', { name: 'Looked At' });
      for (let look = 0; look < 5; look += 1) await service.seen(`/clients/${id}`);
      expect((await accesses(id)).map(({ what }) => what)).toEqual(['client']);
      const other = await personOfRole(service, 'artist');
      await service.get(`/clients/${id}`, { cookie: other.cookie });
      expect((await accesses(id)).map(({ personId }) => personId)).toEqual([other.personId, studio.ownerId]);
    });

    it('not for a list of lots and references, which shows nobody', async () => {
      expect(await newAccesses(() => service.seen(`/lots/${treated.lotId}/trace`))).toEqual([]);
      expect(await newAccesses(() => service.get(`/lots/${treated.lotId}/trace.csv`))).toEqual([]);
      expect(await newAccesses(() => service.get(`/clients/${treated.sessionId}`))).toEqual([]);
    });

    it('page by page, the latest first', async () => {
      const all = await accesses();
      expect(all.length).toBeGreaterThan(4);
      const seen: ClientAccessView[] = [];
      for (let after: string | null = ''; after !== null; ) {
        const page: ClientAccessPageView = await service.seen(
          `/clients/${treated.clientId}/accesses?limit=2${after && `&after=${after}`}`,
        );
        seen.push(...page.items);
        after = page.next;
      }
      expect(seen).toEqual(all);
      const times = all.map(({ accessedAt }) => accessedAt);
      expect(times).toEqual([...times].sort().reverse());
      const unknown = await service.get<ProblemBody>(
        `/clients/${treated.clientId}/accesses?after=${treated.clientId}`,
      );
      expect([unknown.status, unknown.body.code]).toEqual([400, 'invalid-fields']);
    });

    it('in one audit entry for a list, however many it names, with a digest of every row', async () => {
      for (let index = 0; index < 30; index += 1) await service.made('/clients', { name: `Listed ${index}` });
      const sql = await PlainSql.connect(service, 'read');
      const entries = () =>
        sql.rows<{ payload: string }>(
          "SELECT payload FROM audit_entry WHERE action = 'clients.access' ORDER BY sequence",
        );
      const before = (await entries()).length;
      const reader = await personOfRole(service, 'manager');
      const list = await service.get<ClientPageView>('/clients?limit=200', {
        cookie: reader.cookie,
      });
      const fresh = (await entries()).slice(before);
      expect(fresh.length).toBe(1);
      const { rows } = JSON.parse(fresh[0]?.payload ?? '{}') as { rows: { table: string }[] };
      expect(rows.length).toBe(list.body.items.length);
      expect(new Set(rows.map(({ table }) => table))).toEqual(new Set(['client_access']));
      expect(await inconsistencies(sql)).toEqual([]);
      await sql.close();
    });

    it('before anything is shown, also when many look at once', async () => {
      const readers = await Promise.all(Array.from({ length: 6 }, () => personOfRole(service, 'artist')));
      const ids = (await service.seen<ClientPageView>('/clients?limit=20')).items.map(({ id }) => id);
      const looks = readers.flatMap((reader) => ids.map((id) => ({ reader, id })));
      await Promise.all(
        looks.map(({ reader, id }) => service.get(`/clients/${id}`, { cookie: reader.cookie })),
      );
      const sql = await PlainSql.connect(service, 'read');
      const rows = await sql.rows<{ person_id: string; client_id: string }>(
        "SELECT person_id, client_id FROM client_access WHERE what = 'client'",
      );
      const noted = new Set(rows.map((row) => `${row.person_id} ${row.client_id}`));
      expect(looks.filter(({ reader, id }) => !noted.has(`${reader.personId} ${id}`))).toEqual([]);
      await sql.close();
    });
  });

  describe('by somebody who is not shown clients', () => {
    let auditor: SignedInPerson;
    beforeAll(async () => {
      auditor = await personOfRole(service, 'auditor');
    });
    const seen = async <Body>(path: string, who = auditor): Promise<Body> => {
      const answer = await service.get<Body>(path, { cookie: who.cookie });
      expect(answer.status, path).toBe(200);
      const text = JSON.stringify(answer.body);
      for (const personal of Object.values(texts)) expect(text, path).not.toContain(personal);
      return answer.body;
    };

    it('tells the reference and what touched them, and nothing else of a session', async () => {
      const session = await seen<SessionView>(`/sessions/${treated.sessionId}`);
      expect(session).toMatchObject({
        client: { id: treated.clientId, reference: treated.reference, name: null },
        bodyPlace: 'brows',
        bodyPlaceDetail: null,
        complications: null,
        healedResult: null,
        uses: [
          { productName: 'Umber', reason: null, reversal: null },
          { productName: 'Umber', reason: null, reversal: { reason: null } },
        ],
      });
      const record = await seen<ClientRecordView>(`/sessions/${treated.sessionId}/record`);
      expect(record).toMatchObject({
        client: { name: null },
        complications: null,
        artist: { name: 'Owner' },
      });
    });

    it('names nobody in lists, touch-ups and traces', async () => {
      const list = await seen<SessionPageView>('/sessions?limit=200');
      expect(list.items.length).toBeGreaterThan(0);
      expect(new Set(list.items.map(({ clientName }) => clientName))).toEqual(new Set([null]));
      expect(list.items.map(({ clientReference }) => clientReference)).toContain(treated.reference);
      const [touchUp] = await seen<TouchUpView[]>(`/clients/${treated.clientId}/touch-ups`);
      expect(touchUp).toMatchObject({ clientId: treated.clientId, healedResult: null });
      await seen(`/sessions/${treated.sessionId}/touch-up`);
      await seen(`/clients/${treated.clientId}/trace`);
      await seen(`/lots/${treated.lotId}/trace`);
    });

    it('is on record all the same where it is one client’s', async () => {
      const found = (await accesses()).filter(({ personId }) => personId === auditor.personId);
      expect(new Set(found.map(({ what }) => what))).toEqual(
        new Set(['session', 'session record', 'touch-up', 'client trace']),
      );
    });

    it('is refused where there is nothing but who they are', async () => {
      const headers = { cookie: auditor.cookie };
      for (const path of [
        '/clients',
        `/clients/${treated.clientId}`,
        `/clients/${treated.clientId}/export`,
        `/clients/${treated.clientId}/export.html`,
        `/clients/${treated.clientId}/legal-claims`,
        `/clients/${treated.clientId}/erasure`,
        '/retention',
      ]) {
        const answer = await service.get<ProblemBody>(path, headers);
        expect([answer.status, answer.body.code], path).toEqual([403, 'not-allowed']);
      }
    });

    it('shows everything to whoever works with the client', async () => {
      const artist = await personOfRole(service, 'artist');
      const session = await service.get<SessionView>(`/sessions/${treated.sessionId}`, {
        cookie: artist.cookie,
      });
      expect(session.body).toMatchObject({
        client: { name: texts.name },
        bodyPlaceDetail: texts.bodyPlaceDetail,
        complications: expect.stringContaining(texts.complications),
        healedResult: { note: texts.healedNote },
        uses: [{ reason: texts.reason }, { reason: 'the second drop', reversal: { reason: texts.reversed } }],
      });
      const client = await service.get<ClientView>(`/clients/${treated.clientId}`, {
        cookie: artist.cookie,
      });
      expect(client.body).toMatchObject({ name: texts.name, contact: texts.contact, note: texts.note });
    });
  });

  it('belongs to a client of this studio', async () => {
    const unknown = await service.get<ProblemBody>(`/clients/${studio.placeId}/accesses`);
    expect([unknown.status, unknown.body.code]).toEqual([404, 'not-found']);
  });
});
