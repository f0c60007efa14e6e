import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { rawRequest } from '../support/raw-http.js';
import { type RunningService, startService, testOwner } from '../support/service.js';

interface Line {
  level: string;
  time: string;
  msg: string;
  requestId?: string;
  method?: string;
  route?: string | null;
  status?: number;
  code?: string;
  milliseconds?: number;
  studioId?: string;
  personId?: string;
  address?: string;
}

const patience = { timeout: 10_000, interval: 50 };

// OWASP ASVS 5.0, 16.2.1 to 16.2.5, 16.3.2, 16.3.3, 16.4.1 and 14.2.1 [P].
describe('the log of the service', () => {
  let service: RunningService;
  const person = 'Zwetlana Quittenbaum';
  const typed = 'typed-into-the-address';

  beforeAll(async () => {
    service = await startService('sqlite', { firstStart: true, environment: { LOG_LEVEL: 'debug' } });
  });
  afterAll(() => service.dispose());

  const written = () => service.log.join('');
  const lines = (): Line[] =>
    written()
      .split('\n')
      .filter((line) => line.startsWith('{'))
      .map((line) => JSON.parse(line));
  /** The lines of the answer to a request, which come through a pipe a moment later. */
  const answered = (requestId: string | null) =>
    vi.waitFor(() => {
      const found = lines().filter((line) => line.requestId === requestId && line.msg === 'answered');
      expect(found).not.toEqual([]);
      return found;
    }, patience);

  it('is JSON, one object a line, beside what is said to people', () => {
    const others = written()
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('{'));
    expect(others.join('\n')).toMatch(/Lotward is ready on/);
    expect(lines().length).toBeGreaterThan(0);
    for (const { level, time, msg } of lines()) {
      expect(['debug', 'info', 'warn', 'error', 'fatal']).toContain(level);
      expect(new Date(time).toISOString()).toBe(time);
      expect(msg).toEqual(expect.any(String));
    }
  });

  it('tells of each answer when, who, what and how it went', async () => {
    const answer = await service.get('/people');
    const requestId = answer.headers.get('x-request-id');
    expect(await answered(requestId)).toEqual([
      {
        level: 'info',
        time: expect.any(String),
        requestId,
        method: 'GET',
        route: '/api/v1/studios/:studioId/people',
        status: 200,
        milliseconds: expect.any(Number),
        studioId: service.studioId,
        personId: expect.stringMatching(/^[0-9a-f-]{36}$/),
        msg: 'answered',
      },
    ]);
  });

  it('warns of refusals, with the code and from where it was asked', async () => {
    const answer = await fetch(`${service.studio}/people`);
    expect(answer.status).toBe(401);
    expect(await answered(answer.headers.get('x-request-id'))).toMatchObject([
      { level: 'warn', status: 401, code: 'sign-in-needed', address: '127.0.0.1' },
    ]);
  });

  it('takes the id of a request from whoever asks when it is a UUID, and nothing else', async () => {
    const own = '01936F3A-5b7c-7d2e-8f10-2a3b4c5d6e7f';
    const taken = await service.get('/people', { 'x-request-id': own });
    expect(taken.headers.get('x-request-id')).toBe(own.toLowerCase());
    expect(await answered(own.toLowerCase())).toHaveLength(1);
    for (const given of ['1', 'x"},{"level":"fatal', 'a'.repeat(300), `${own}x`]) {
      const answer = await service.get('/people', { 'x-request-id': given });
      expect(answer.headers.get('x-request-id')).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-/);
    }
    expect(written()).not.toContain('x"},{"level":"fatal');
  });

  it('holds no name, no secret and nothing typed into an address', async () => {
    const host = new URL(service.url).host;
    await service.post('/clients', { name: person, contact: 'quittenbaum@mail.example', note: person });
    await service.post('/clients', { name: person, unknown: person });
    await service.post('/clients', { name: { first: person } });
    await service.send('POST', '/clients', `{"name":"${person}"`);
    await service.get(`/clients?name=${typed}`);
    await service.get(`/${typed}/${typed}`);
    await service.get(`${service.url}/api/v1/${typed}%zz`);
    await rawRequest(service.url, {
      path: `/${typed}`,
      method: 'PATCH',
      headers: { host: `${typed}.example` },
    });
    await rawRequest(service.url, { path: `/${typed}`, headers: { host, cookie: `session=${typed}` } });
    const wrong = await service.send('POST', `${service.url}/api/v1/sign-in`, {
      signInName: testOwner.signInName,
      password: `wrong ${typed}`,
    });
    expect(wrong.status).toBeGreaterThanOrEqual(400);
    await answered(wrong.headers.get('x-request-id'));
    const log = written();
    for (const secret of [
      person,
      'quittenbaum',
      typed,
      testOwner.password,
      readFileSync(join(service.dataFolder, 'token-of-tests'), 'utf8'),
    ]) {
      expect(log).not.toContain(secret);
    }
  });
});
