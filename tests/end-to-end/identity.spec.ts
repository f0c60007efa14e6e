import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

describe.each(usualEngine)('studios and people on %s', (engine) => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startStudio(engine);
  });
  afterAll(() => service.dispose());

  it('starts with one studio and its owner', async () => {
    const people = await service.seen<{ name: string; role: string }[]>('/people');
    expect(people).toEqual([expect.objectContaining({ name: 'Owner', role: 'owner', state: 'active' })]);
  });

  it('gives the first answer to a repeated request and refuses the same id with other content', async () => {
    const id = '01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e7f';
    const first = await service.post('/people', { id, name: 'Mira Anders', role: 'artist' });
    const again = await service.post('/people', { id, name: 'Mira Anders', role: 'artist' });
    const other = await service.post<ProblemBody>('/people', { id, name: 'Someone else', role: 'artist' });
    expect(first.status).toBe(201);
    expect(again.body).toEqual(first.body);
    expect([other.status, other.body.code]).toEqual([409, 'request-id-reused']);
    const people = await service.seen<{ name: string }[]>('/people');
    expect(people.map((person) => person.name)).toEqual(['Owner', 'Mira Anders']);
  });

  it('refuses one id for the same change of two people', async () => {
    const ids = [];
    for (const name of ['Ana Brandt', 'Jon Veld']) {
      ids.push((await service.made<{ id: string }>('/people', { name, role: 'artist' })).id);
    }
    const id = '01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e80';
    const body = { id, version: 1, role: 'manager' };
    expect((await service.patch(`/people/${ids[0]}`, body)).status).toBe(200);
    const second = await service.patch<ProblemBody>(`/people/${ids[1]}`, body);
    expect([second.status, second.body.code]).toEqual([409, 'request-id-reused']);
  });

  it('refuses null where a field may only be left out', async () => {
    const [owner] = await service.seen<{ id: string; version: number }[]>('/people');
    const answer = await service.patch<ProblemBody>(`/people/${owner?.id}`, { version: 1, name: null });
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
  });

  it('refuses an assumed opened life that nobody would believe', async () => {
    const { version } = await service.seen<{ version: number }>('');
    const answer = await service.patch<ProblemBody>('', { version, assumedOpenedLife: 'P999M' });
    expect([answer.status, answer.body.faults?.[0]?.field]).toEqual([400, 'assumedOpenedLife']);
  });

  it('keeps at least one active owner', async () => {
    const [owner] = await service.seen<{ id: string; version: number }[]>('/people');
    const refused = await service.patch<ProblemBody>(`/people/${owner?.id}`, {
      version: owner?.version,
      state: 'left',
    });
    expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
  });

  it('refuses a change made from a stale version', async () => {
    const studio = await service.seen<{ version: number }>('');
    const changed = await service.patch('', { version: studio.version, name: 'Lumen Studio' });
    const stale = await service.patch<ProblemBody>('', { version: studio.version, name: 'Other' });
    expect(changed.status).toBe(200);
    expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
  });

  it('answers a studio that does not exist, and an id of the wrong kind, with 404', async () => {
    const other = await service.get<ProblemBody>(
      `${service.url}/api/v1/studios/01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e70/people`,
    );
    const wrong = await service.get<ProblemBody>(`${service.url}/api/v1/studios/my-studio/people`);
    expect([other.status, other.body.code]).toEqual([404, 'not-found']);
    expect([wrong.status, wrong.body.code]).toEqual([404, 'not-found']);
  });

  it('does not answer to the name of another site', async () => {
    const { port } = new URL(service.url);
    const status = await new Promise((resolve, reject) => {
      request(
        { host: '127.0.0.1', port, path: '/api/v1/studios', headers: { host: 'attacker.example' } },
        (answer) => {
          answer.resume();
          resolve(answer.statusCode);
        },
      )
        .once('error', reject)
        .end();
    });
    expect(status).toBe(403);
  });

  it('names every field that cannot be accepted, unknown ones too', async () => {
    const answer = await service.post<ProblemBody>('/people', { name: '', role: 'king', colour: 'red' });
    expect(answer.status).toBe(400);
    expect(answer.headers.get('content-type')).toContain('application/problem+json');
    expect(answer.body.faults?.map((fault) => fault.field).sort()).toEqual(['colour', 'name', 'role']);
  });

  it('answers malformed JSON and an oversize body with a problem', async () => {
    const malformed = await service.send<ProblemBody>('POST', '/people', '{"id":');
    const oversize = await service.post<ProblemBody>('/people', { name: 'x'.repeat(1_100_000) });
    expect([malformed.status, malformed.body.code]).toEqual([400, 'malformed-request']);
    expect([oversize.status, oversize.body.code]).toEqual([413, 'body-too-large']);
  });
});
