import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rawExchange, rawRequest } from '../support/raw-http.js';
import { type ProblemBody, type RunningService, startService } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

describe('the limits of a request', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startStudio('sqlite');
  });
  afterAll(() => service.dispose());

  it('are those of a page: at most 200 rows, at least one', async () => {
    for (const limit of ['0', '201', '-1', '1.5', '1e3', 'all', '50&limit=50']) {
      expect((await service.get(`/sessions?limit=${limit}`)).status, limit).toBe(400);
    }
    expect((await service.get('/sessions?limit=200')).status).toBe(200);
  });

  it.each([
    ['headers', `x: ${'x'.repeat(20_000)}`, '/health/live'],
    ['an address', 'x: y', `/health/live?${'x'.repeat(20_000)}`],
  ])('refuse %s beyond 16 KiB with a problem', async (_, header, path) => {
    const { answer } = await rawExchange(
      service.url,
      `GET ${path} HTTP/1.1\r\nHost: localhost\r\n${header}\r\n\r\n`,
    );
    expect(answer).toMatch(/^HTTP\/1\.1 431 /);
    expect(answer).toContain('application/problem+json');
    expect(JSON.parse(answer.split('\r\n\r\n')[1] ?? '')).toMatchObject({
      status: 431,
      code: 'malformed-request',
    });
  });

  // OWASP ASVS 5.0, 4.2.1 [P]: where a message ends is never open to two readings. RFC 9112, 6.3 [M].
  it.each([
    ['is no HTTP', 'HELLO\r\n\r\n'],
    ['names no host', 'GET /health/live HTTP/1.1\r\n\r\n'],
    [
      'has two lengths',
      'POST / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab',
    ],
    [
      'has a length and chunks',
      'POST / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\nGET /health/live HTTP/1.1\r\nHost: localhost\r\n\r\n',
    ],
    ['breaks a header', 'GET /health/live HTTP/1.1\r\nHost: localhost\r\nx : y\r\n\r\n'],
  ])('refuse what %s, and close the connection', async (_, text) => {
    const { answer } = await rawExchange(service.url, text);
    expect(answer).toMatch(/^HTTP\/1\.1 400 /);
    expect(answer.match(/HTTP\/1\.1 /g)).toHaveLength(1);
  });

  it('cut off senders that send their headers drop by drop, while others are answered', async () => {
    const slow = Array.from({ length: 50 }, () =>
      rawExchange(service.url, 'POST /api/v1/sign-in HTTP/1.1\r\nHost: localhost\r\n'),
    );
    expect((await service.get('/people')).status).toBe(200);
    for (const { answer, milliseconds } of await Promise.all(slow)) {
      expect(answer).toMatch(/^HTTP\/1\.1 408 /);
      expect(milliseconds).toBeLessThan(30_000);
    }
  });
});

describe('the limit of requests a minute', () => {
  let service: RunningService;
  const perMinute = 30;
  beforeAll(async () => {
    service = await startService('sqlite', {
      environment: { REQUESTS_PER_MINUTE: String(perMinute), TRUST_PROXY: '127.0.0.1' },
    });
  });
  afterAll(() => service.dispose());

  const ask = (address: string, path = '/health/live') =>
    rawRequest(service.url, { path, headers: { host: 'localhost', 'x-forwarded-for': address } });

  it('refuses one address what is beyond, also what leads nowhere, and no other address', async () => {
    const answers = [];
    for (let index = 0; index < perMinute + 5; index += 1) {
      answers.push(await ask('192.0.2.7', index % 2 === 0 ? '/health/live' : '/api/v1/nothing'));
    }
    const refused = answers.filter(({ status }) => status === 429);
    expect(refused).toHaveLength(5);
    const [first] = refused;
    expect(JSON.parse(first?.body ?? '')).toMatchObject({ status: 429, code: 'too-many-requests' });
    expect(Number(first?.headers['retry-after'])).toBeGreaterThan(0);
    expect(Number(first?.headers['retry-after'])).toBeLessThanOrEqual(60);
    expect((await ask('192.0.2.8')).status).toBe(200);
  });

  it('takes one network of IPv6 for one address', async () => {
    const statuses: number[] = [];
    for (let index = 0; index < perMinute + 5; index += 1) {
      statuses.push((await ask(`2001:db8:0:1::${index.toString(16)}`)).status);
    }
    expect(statuses.filter((status) => status === 429)).toHaveLength(5);
    expect((await ask('2001:db8:0:2::1')).status).toBe(200);
  });
});

// OWASP ASVS 5.0, 4.1.3 [P]: what a proxy says of whom it asks for cannot be said by anybody else.
describe('whom a request comes from', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startService('sqlite', { environment: { REQUESTS_PER_MINUTE: '20' } });
  });
  afterAll(() => service.dispose());

  it('is not what somebody writes who is no trusted proxy', async () => {
    const statuses: number[] = [];
    for (let index = 0; index < 25; index += 1) {
      const { status } = await rawRequest(service.url, {
        path: '/health/live',
        headers: {
          host: 'localhost',
          'x-forwarded-for': `192.0.2.${index}`,
          'x-forwarded-host': 'attacker.example',
        },
      });
      statuses.push(status);
    }
    expect(statuses).toContain(200);
    expect(statuses).toContain(429);
  });
});

// OWASP ASVS 5.0, 16.5.1 [P].
describe('what an error tells', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startStudio('sqlite');
  });
  afterAll(() => service.dispose());

  it('is never where in the program it arose, what was asked of the database, or which', async () => {
    const answers = [
      await service.get<ProblemBody>(`${service.url}/api/v1/%zz`),
      await service.get<ProblemBody>("/sessions?limit=1'--"),
      await service.get<ProblemBody>(`${service.url}/api/v1/studios/${"x'".repeat(40)}/people`),
      await service.send<ProblemBody>('POST', '/people', '{"__proto__":{"role":"owner"}}'),
      await service.send<ProblemBody>('POST', '/people', '{"constructor":{"prototype":{}}}'),
      await service.send<ProblemBody>('POST', '/people', '[1,2'),
      await service.send<ProblemBody>('POST', '/people', ''),
    ];
    for (const { status, body, headers } of answers) {
      expect(status).toBeGreaterThanOrEqual(400);
      expect(status).toBeLessThan(500);
      expect(JSON.stringify(body)).not.toMatch(
        /node_modules|\.[jt]s:\d|\bat \w+ \(|SELECT|sqlite|typeorm|fastify|nest/i,
      );
      expect(headers.get('server') ?? headers.get('x-powered-by')).toBeNull();
    }
  });
});
