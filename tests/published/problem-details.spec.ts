import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ProblemBody, type RunningService, startService } from '../support/service.js';

// RFC 9457 (Problem Details for HTTP APIs), July 2023 [M]: the media type application/problem+json; members type (a URI),
// title, status (equal to the status of the answer), detail; further members allowed beside them.
describe('problem details by RFC 9457', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service.dispose());

  const requests: [string, () => Promise<{ status: number; headers: Headers; body: ProblemBody }>][] = [
    ['not found', () => service.get<ProblemBody>(`${service.url}/api/v1/nothing`)],
    ['another studio', () => service.get<ProblemBody>(`${service.url}/api/v1/studios/x/people`)],
    [
      'an address that cannot be decoded',
      () => service.get<ProblemBody>(`${service.url}/api/v1/studios/%zz`),
    ],
    [
      'an address that is too long',
      () => service.get<ProblemBody>(`${service.url}/api/v1/studios/${'x'.repeat(5_000)}`),
    ],
    ['malformed body', () => service.send<ProblemBody>('POST', '/people', '{')],
    [
      'a body nested without end',
      () => service.send<ProblemBody>('POST', '/people', `${'{"a":'.repeat(3_000)}1${'}'.repeat(3_000)}`),
    ],
    ['refused fields', () => service.post<ProblemBody>('/people', { role: 'king' })],
    [
      'not a JSON type',
      () => service.send<ProblemBody>('POST', '/people', 'a=b', { 'content-type': 'text/plain' }),
    ],
  ];

  it.each(requests)('answers %s with the members of the standard', async (_, request) => {
    const { status, headers, body } = await request();
    expect(status).toBeGreaterThanOrEqual(400);
    expect(status).toBeLessThan(500);
    expect(headers.get('content-type')).toMatch(/^application\/problem\+json/);
    expect(body.status).toBe(status);
    expect(() => new URL(body.type)).not.toThrow();
    expect(body.title).not.toBe('');
    expect(body.detail).not.toBe('');
    expect(body.type.endsWith(body.code)).toBe(true);
    expect(JSON.stringify(body)).not.toMatch(/node_modules|\.ts:|\.js:/);
  });
});
