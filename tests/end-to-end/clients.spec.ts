import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { engines, type ProblemBody, type RunningService, startService } from '../support/service.js';
import { Store } from '../support/store.js';

interface Written {
  id: string;
  reference: string;
  version: number;
}

interface Client extends Written {
  name: string | null;
  contact: string | null;
  note: string | null;
}

describe.each(engines)('clients on %s', (engine) => {
  let service: RunningService;
  let store: Store;
  beforeAll(async () => {
    service = await startService(engine);
    store = await Store.open(service.dataFolder, service.databaseUrl);
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  const search = (text: string) => service.send<Client[]>('POST', '/clients/search', { text });

  it('adds a client and answers with nothing but a reference', async () => {
    const added = await service.made<Written>('/clients', {
      name: 'Ida Falk',
      contact: '+43 660 1234567',
      note: 'Sensitive to\nlatex',
    });
    expect(Object.keys(added).sort()).toEqual(['id', 'reference', 'version']);
    expect(added.reference).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{2}$/);
    expect(await service.seen<Client>(`/clients/${added.id}`)).toMatchObject({
      name: 'Ida Falk',
      contact: '+43 660 1234567',
      note: 'Sensitive to\nlatex',
      erasedAt: null,
    });
  });

  it('finds a client by the whole name, contact or reference, and by no part of them', async () => {
    const { id, reference } = await service.made<Written>('/clients', {
      name: 'Jördis  Öberg',
      contact: '0660 765-43-21',
    });
    for (const text of ['jördis öberg', ' JÖRDIS ÖBERG ', '0660/7654321', reference.toLowerCase()]) {
      const found = await search(text);
      expect([found.status, found.body.map((client) => client.id)]).toEqual([200, [id]]);
    }
    expect((await search('Öberg')).body).toEqual([]);
    expect((await search('0660')).body).toEqual([]);
  });

  it('changes what is given and leaves the rest, and is found by the new name only', async () => {
    const { id } = await service.made<Written>('/clients', { name: 'Before', contact: 'b@example.org' });
    const changed = await service.patch<Written>(`/clients/${id}`, {
      version: 1,
      name: 'After',
      contact: null,
    });
    expect([changed.status, changed.body.version]).toEqual([200, 2]);
    expect(await service.seen<Client>(`/clients/${id}`)).toMatchObject({ name: 'After', contact: null });
    expect((await search('Before')).body).toEqual([]);
    expect((await search('b@example.org')).body).toEqual([]);
    expect((await search('after')).body.map((client) => client.id)).toEqual([id]);
  });

  it('refuses a change made from a stale version', async () => {
    const { id } = await service.made<Written>('/clients', { name: 'Stale' });
    await service.patch(`/clients/${id}`, { version: 1, note: 'one' });
    const stale = await service.patch<ProblemBody>(`/clients/${id}`, { version: 1, note: 'two' });
    expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
    expect((await service.seen<Client>(`/clients/${id}`)).note).toBe('one');
  });

  it('adds one client when the request is repeated, and none when its id is used for another', async () => {
    const id = uuidv7();
    const first = await service.post<Written>('/clients', { id, name: 'Once' });
    const again = await service.post<Written>('/clients', { id, name: 'Once' });
    const other = await service.post<ProblemBody>('/clients', { id, name: 'Twice' });
    expect(again.body).toEqual(first.body);
    expect([other.status, other.body.code]).toEqual([409, 'request-id-reused']);
  });

  it('lists every client once, page by page', async () => {
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const page: { items: Client[]; next: string | null } = await service.seen(
        `/clients?limit=2${after === null ? '' : `&after=${after}`}`,
      );
      seen.push(...page.items.map((client) => client.id));
      after = page.next;
    } while (after !== null);
    expect(new Set(seen).size).toBe(seen.length);
    expect(seen.length).toBe((await service.seen<{ items: Client[] }>('/clients?limit=200')).items.length);
    const nowhere = await service.get<ProblemBody>(`/clients?after=${uuidv7()}`);
    expect([nowhere.status, nowhere.body.code]).toEqual([400, 'invalid-fields']);
  });

  it.each([
    ['no name', {}, ['name']],
    ['a blank name', { name: '   ' }, ['name']],
    ['a name of the wrong kind', { name: 7 }, ['name']],
    ['an overlong name', { name: 'x'.repeat(201) }, ['name']],
    ['control characters', { name: 'A\u0000B' }, ['name']],
    ['an unknown field', { name: 'A', reference: 'MINE-01' }, ['reference']],
    ['an id that is none', { id: '7', name: 'A' }, ['id']],
  ])('refuses %s and says which field', async (_, body, fields) => {
    const answer = await service.post<ProblemBody>('/clients', body);
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
    expect(answer.body.faults?.map((fault) => fault.field)).toEqual(fields);
  });

  it('does not find what does not exist or belongs to another studio', async () => {
    const unknown = await service.get<ProblemBody>(`/clients/${uuidv7()}`);
    expect([unknown.status, unknown.body.code]).toEqual([404, 'not-found']);
    const wrong = await service.get<ProblemBody>('/clients/seven');
    expect([wrong.status, wrong.body.code]).toEqual([400, 'malformed-request']);

    const { id } = await service.made<Written>('/clients', { name: 'Ours alone' });
    const other = await store.makeStudio();
    const elsewhere = await store.seenBy(service, other);
    expect((await elsewhere.get(`/clients/${id}`)).status).toBe(404);
    expect((await elsewhere.patch(`/clients/${id}`, { version: 1, name: 'Theirs' })).status).toBe(404);
    expect((await elsewhere.send('POST', '/clients/search', { text: 'Ours alone' })).body).toEqual([]);
    expect((await elsewhere.get<{ items: unknown[] }>('/clients')).body.items).toEqual([]);
  });

  it('shows a client whose key was destroyed without anything personal, and writes nothing to them', async () => {
    const { id, reference } = await service.made<Written>('/clients', {
      name: 'Gone',
      contact: 'g@example.org',
    });
    const actor = await store.makeStudio();
    await store.transactions.write(
      { ...actor, studioId: service.studioId, personId: null, via: 'system' },
      { id: null, action: 'test.destroy-key', subject: { kind: 'client', id }, content: null },
      async (transaction) => {
        await transaction.query(
          `UPDATE data_key SET wrapped_key = NULL, destroyed_at = $3
           WHERE studio_id = $1 AND id = (SELECT data_key_id FROM client WHERE studio_id = $1 AND id = $2)`,
          [service.studioId, id, transaction.recordedAt],
        );
      },
    );
    expect(await service.seen<Client>(`/clients/${id}`)).toMatchObject({
      reference,
      name: null,
      contact: null,
      note: null,
    });
    expect((await service.get('/clients?limit=200')).status).toBe(200);
    const refused = await service.patch<ProblemBody>(`/clients/${id}`, { version: 1, name: 'Back' });
    expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
  });

  it('leaves no name, contact or note in the clear on disk or in the log', async () => {
    const secret = 'Zephyrine-Quastenflosser';
    const { id } = await service.made<Written>('/clients', {
      name: secret,
      contact: `${secret}@example.org`,
    });
    await service.patch(`/clients/${id}`, { version: 1, note: `${secret} said so` });
    await search(secret);
    await service.post('/clients', { name: secret, colour: secret });
    expect(service.log.join('')).not.toContain(secret);
    if (engine === 'sqlite') {
      for (const file of readdirSync(service.dataFolder)) {
        expect(readFileSync(join(service.dataFolder, file)).includes(secret), file).toBe(false);
      }
      return;
    }
    for (const table of ['client', 'audit_entry', 'accepted_request']) {
      const rows = await store.database.read(`SELECT * FROM ${table}`);
      expect(JSON.stringify(rows), table).not.toContain(secret);
    }
  });
});
