import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium, withBrowser } from '../support/chromium.js';
import { rawRequest } from '../support/raw-http.js';
import { type ProblemBody, type RunningService, startService } from '../support/service.js';

const publicUrl = 'https://lotward.studio.example';

describe('the door of the service', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startService('sqlite', {
      environment: { PUBLIC_URL: publicUrl, TRUST_PROXY: '127.0.0.1' },
    });
  });
  afterAll(() => service.dispose());

  const people = () => `/api/v1/studios/${service.studioId}/people`;
  const named = (name: string) =>
    service.seen<{ name: string }[]>('/people').then((all) => all.filter((person) => person.name === name));

  /** Adds a person as a browser would, with its cookie in place of the token. */
  function ask(name: string, headers: Record<string, string>, method = 'POST') {
    return rawRequest(service.url, {
      method,
      path: people(),
      headers: {
        host: new URL(service.url).host,
        authorization: `Bearer ${service.token}`,
        'content-type': 'application/json',
        ...headers,
      },
      body: JSON.stringify({ id: uuidv7(), name, role: 'artist' }),
    });
  }

  // OWASP ASVS 5.0, 3.5.1 [P].
  it.each([
    ['another site, by Fetch Metadata', { 'sec-fetch-site': 'cross-site' }],
    [
      'another origin of the same site',
      { 'sec-fetch-site': 'same-site', origin: 'https://other.studio.example' },
    ],
    ['another site, by Origin', { origin: 'https://attacker.example' }],
    ['a sandboxed frame', { origin: 'null' }],
    ['another program on this machine', { origin: 'http://localhost:8080' }],
  ])('lets no page of %s change anything', async (_, headers) => {
    const name = `Forged ${uuidv7()}`;
    const answer = await ask(name, headers as Record<string, string>);
    expect([answer.status, JSON.parse(answer.body).code]).toEqual([403, 'cross-site-request']);
    expect(await named(name)).toEqual([]);
  });

  it.each([
    ['its own page, by Fetch Metadata', { 'sec-fetch-site': 'same-origin', origin: publicUrl }],
    ['its own page through the proxy, by Origin', { origin: publicUrl }],
    ['a program', {}],
  ])('lets %s in', async (_, headers) => {
    const name = `Asked ${uuidv7()}`;
    expect((await ask(name, headers as Record<string, string>)).status).toBe(201);
    expect(await named(name)).toHaveLength(1);
  });

  it('lets a page of its own origin in when there is no Fetch Metadata', async () => {
    expect((await ask('Vera Holm', { origin: service.url })).status).toBe(201);
  });

  // OWASP ASVS 5.0, 3.4.2 [P]: no page of another origin is ever told that it may read an answer.
  it('tells no page of another origin that it may ask or read', async () => {
    const asked = await rawRequest(service.url, {
      method: 'OPTIONS',
      path: people(),
      headers: {
        host: new URL(service.url).host,
        origin: 'https://attacker.example',
        'access-control-request-method': 'POST',
        'access-control-request-headers': 'content-type',
      },
    });
    const read = await rawRequest(service.url, {
      path: people(),
      headers: {
        host: new URL(service.url).host,
        origin: 'https://attacker.example',
        authorization: `Bearer ${service.token}`,
      },
    });
    expect(asked.status).toBeGreaterThanOrEqual(400);
    expect(read.status).toBe(200);
    for (const { headers } of [asked, read]) {
      expect(Object.keys(headers).filter((header) => header.startsWith('access-control'))).toEqual([]);
    }
  });

  // What a form can send across sites without asking first. OWASP ASVS 5.0, 3.5.2 [P].
  it.each([
    ['a form', 'application/x-www-form-urlencoded', 'name=Vera&role=artist'],
    ['a form with files', 'multipart/form-data; boundary=x', '--x\r\n\r\n--x--'],
    ['plain text', 'text/plain', '{"name":"Vera","role":"artist"}'],
    ['XML', 'application/xml', '<person/>'],
    ['JSON of another kind', 'application/vnd.api+json', '{}'],
  ])('reads no %s', async (_, type, body) => {
    const answer = await service.send<ProblemBody>('POST', '/people', body, { 'content-type': type });
    expect([answer.status, answer.body.code]).toEqual([415, 'unsupported-media-type']);
    expect(answer.headers.get('content-type')).toMatch(/^application\/problem\+json/);
  });

  it('answers to its public name, to loopback names and to no other', async () => {
    const status = (host: string) =>
      rawRequest(service.url, { path: '/health/live', headers: { host } }).then((answer) => answer.status);
    expect(await status('lotward.studio.example')).toBe(200);
    expect(await status('localhost')).toBe(200);
    expect(await status('attacker.example')).toBe(403);
    expect(await status(`${new URL(service.url).host}.attacker.example`)).toBe(403);
  });

  // OWASP ASVS 5.0, 13.4.4 [P].
  it.each(['TRACE', 'DELETE', 'PROPFIND'])('does not serve %s', async (method) => {
    const answer = await rawRequest(service.url, {
      method,
      path: people(),
      headers: { host: new URL(service.url).host, 'x-probe': 'echo-me' },
    });
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.status).toBeLessThan(500);
    expect(answer.body).not.toContain('echo-me');
  });

  it.skipIf(!hasChromium)('refuses what a page of another site makes a browser send', async () => {
    const attacker = createServer((_, answer) => answer.setHeader('content-type', 'text/html').end('<body>'));
    await new Promise<void>((resolve) => attacker.listen(0, '127.0.0.1', resolve));
    const { port } = attacker.address() as AddressInfo;
    const refusals = () => service.log.join('').split('"code":"cross-site-request"').length - 1;
    const before = refusals();
    await withBrowser(async (browser) => {
      const page = await browser.newPage();
      // localhost and 127.0.0.1 are two sites.
      await page.goto(`http://localhost:${port}/`);
      const target = JSON.stringify(`${service.url}${people()}`);
      // Sent without asking first, though its answer is kept from the page.
      await page.evaluate(
        `fetch(${target}, { method: 'POST', mode: 'no-cors', credentials: 'include', body: '{}' }).catch(() => null)`,
      );
      await page.evaluate(`(() => {
        const form = document.createElement('form');
        form.method = 'post';
        form.action = ${target};
        document.body.append(form);
        form.submit();
      })()`);
      await page.waitForURL(`${service.url}/**`);
      expect(await page.textContent('body')).toContain('cross-site-request');
    });
    attacker.close();
    expect(refusals() - before).toBe(2);
  });
});
