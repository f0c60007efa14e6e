import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { gzipSync } from 'node:zlib';
import nock from 'nock';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { NoticeSource } from '../../platform/notice-sources-setting.js';
import { type FetchLimits, NoticeFetch } from './notice-fetch.service.js';

const now = '2026-11-26T06:00:00.000Z';
const host = 'https://notices.example';
const limits: FetchLimits = { answerMilliseconds: 1_000, wholeMilliseconds: 1_500, bodyBytes: 100_000 };
const none = { etag: null, lastModified: null };
const source = (
  kind: NoticeSource['kind'] = 'enforcement json',
  path = '/reports?api_key=secret',
): NoticeSource => ({
  kind,
  url: host + path,
});
const fetchNow = (from = source(), known: { etag: string | null; lastModified: string | null } = none) =>
  new NoticeFetch(limits).fetch(from, known, now);
const answers = () => nock(host).get('/reports?api_key=secret');
const fails = (error: string | RegExp, isLasting: boolean, retryAt: string | null = null) => ({
  kind: 'failed',
  error: expect.stringMatching(error),
  isLasting,
  retryAt,
});

describe('an address of notices', () => {
  beforeAll(() => {
    if (!nock.isActive()) nock.activate();
    nock.disableNetConnect();
  });
  afterEach(() => {
    expect(nock.pendingMocks()).toEqual([]);
    nock.abortPendingRequests();
    nock.cleanAll();
  });
  afterAll(() => {
    nock.enableNetConnect();
    nock.restore();
  });

  it('gives its text, whatever type it says it has, and the name of its version', async () => {
    nock(host, { reqheaders: { accept: /application\/json/, 'user-agent': 'lotward' } })
      .get('/reports?api_key=secret')
      .reply(200, '{"results":[]}', { 'content-type': 'text/plain', etag: '"7"', 'last-modified': 'x' });
    expect(await fetchNow()).toEqual({
      kind: 'text',
      text: '{"results":[]}',
      etag: '"7"',
      lastModified: 'x',
    });
  });

  it('is asked whether anything is new, and may say no', async () => {
    nock(host, {
      reqheaders: { 'if-none-match': '"7"', 'if-modified-since': 'Sun, 06 Nov 1994 08:49:37 GMT' },
    })
      .get('/reports?api_key=secret')
      .reply(304);
    const known = { etag: '"7"', lastModified: 'Sun, 06 Nov 1994 08:49:37 GMT' };
    expect(await fetchNow(source(), known)).toEqual({ kind: 'unchanged' });

    nock(host, { badheaders: ['if-none-match', 'if-modified-since'] })
      .get('/reports?api_key=secret')
      .reply(304);
    expect(await fetchNow()).toEqual(fails('nothing of it is known', true));
  });

  it('that unpacks its answer is read unpacked', async () => {
    answers().reply(200, gzipSync('{"a":"Größe"}'), { 'content-encoding': 'gzip' });
    expect(await fetchNow()).toMatchObject({ kind: 'text', text: '{"a":"Größe"}' });
  });

  it.each([
    [429, { 'retry-after': '3600' }, '2026-11-26T07:00:00.000Z'],
    [503, { 'retry-after': 'Thu, 26 Nov 2026 06:30:00 GMT' }, '2026-11-26T06:30:00.000Z'],
    [503, { 'retry-after': 'soon' }, null],
    [429, {}, null],
  ])('that answers %i is asked again when it says: %j', async (status, headers, retryAt) => {
    answers().reply(status, 'Slow down', headers);
    expect(await fetchNow()).toEqual(fails(`answered ${status}`, false, retryAt));
  });

  it.each([500, 502, 504, 408])('that answers %i may answer later', async (status) => {
    answers().reply(status, '<html>oops</html>');
    expect(await fetchNow()).toEqual(fails(`answered ${status}`, false));
  });

  it.each([400, 401, 403, 404, 410, 204, 206])('that answers %i will not mend by itself', async (status) => {
    answers().reply(status);
    expect(await fetchNow()).toEqual(fails(`answered ${status} where 200 is expected`, true));
  });

  it('that found nothing for a search has no reports, which is no fault', async () => {
    answers().reply(404, '{"error":{"code":"NOT_FOUND","message":"No matches found!"}}');
    expect(await fetchNow()).toMatchObject({ kind: 'text', text: '[]' });
    answers().reply(404, '{"error":{"code":"OTHER"}}');
    expect(await fetchNow()).toEqual(fails('answered 404', true));
  });

  it.each([301, 302, 303, 307, 308])(
    'that leads elsewhere by %i is not followed, and where to is told',
    async (status) => {
      const elsewhere = nock('https://other.example').get('/x').reply(200, '[]');
      answers().reply(status, '', { location: 'https://other.example/x?key=secret' });
      const outcome = await fetchNow();
      expect(outcome).toEqual(fails('leads on to https://other\\.example/x\\. ', true));
      expect(JSON.stringify(outcome)).not.toContain('secret');
      expect(elsewhere.isDone()).toBe(false);
      nock.cleanAll();
    },
  );

  it('that does not answer in time, or cannot be reached, may do so later; its key is not told', async () => {
    answers().delayConnection(4_000).reply(200, '[]');
    expect(await fetchNow()).toEqual(fails('did not answer within 1 s', false));
    nock.abortPendingRequests();
    for (const code of ['ECONNREFUSED', 'ENOTFOUND', 'ECONNRESET', 'CERT_HAS_EXPIRED']) {
      answers().replyWithError(Object.assign(new Error(`at ${host}?api_key=secret`), { code }));
      const outcome = await fetchNow();
      expect(outcome).toEqual(fails(`could not be reached \\(${code}\\)`, false));
      expect(JSON.stringify(outcome)).not.toContain('secret');
    }
  });

  it('whose answer is too large is given up, also when it unpacks to more than it seems', async () => {
    answers().reply(200, 'x'.repeat(limits.bodyBytes + 1));
    expect(await fetchNow()).toEqual(fails('larger than 100000 bytes', true));
    answers().reply(200, 'x'.repeat(limits.bodyBytes));
    expect(await fetchNow()).toMatchObject({ kind: 'text' });
    answers().reply(200, gzipSync('x'.repeat(20_000_000)), { 'content-encoding': 'gzip' });
    expect(await fetchNow()).toEqual(fails('larger than 100000 bytes', true));
  });

  it('is read in the encoding it says, and refused when it is in another', async () => {
    const latin = Buffer.from('<?xml version="1.0" encoding="ISO-8859-1"?><a>Größe</a>', 'latin1');
    const xml = source('safety gate xml');
    answers().reply(200, latin, { 'content-type': 'application/xml' });
    expect(await fetchNow(xml)).toMatchObject({ kind: 'text', text: expect.stringContaining('Größe') });
    answers().reply(200, latin, { 'content-type': 'application/xml; charset=utf-8' });
    expect(await fetchNow(xml)).toEqual(fails('not written in utf-8', true));
    answers().reply(200, Buffer.from('\uFEFF<a>Größe</a>', 'utf16le'));
    expect(await fetchNow(xml)).toMatchObject({ kind: 'text', text: '<a>Größe</a>' });
    answers().reply(200, '<a/>', { 'content-type': 'text/xml; charset=klingon' });
    expect(await fetchNow(xml)).toEqual(fails('"klingon", which is not known', true));
  });

  it('is let go of when the service ends', async () => {
    answers().delayConnection(4_000).reply(200, '[]');
    const ending = new AbortController();
    const asked = new NoticeFetch().fetch(source(), none, now, ending.signal);
    setTimeout(() => ending.abort(), 20);
    expect(await asked).toEqual(fails('The service ended', false));
    expect(await new NoticeFetch().fetch(source(), none, now, AbortSignal.abort())).toEqual(
      fails('The service ended', false),
    );
    nock.cleanAll();
  });
});

/** What a mock does not show: bytes that stop coming, and what a connection carries after all. */
describe('a server of notices that is there', () => {
  let server: Server;
  let url: string;
  let sent = 0;
  let closed: Promise<void>;
  const bomb = gzipSync(Buffer.alloc(60_000_000, 'x'));

  beforeAll(async () => {
    server = createServer((request, response) => {
      closed = new Promise((resolve) => response.once('close', resolve));
      if (request.url === '/stalled') {
        response.writeHead(200, { 'content-type': 'application/json' });
        response.write('[');
      } else if (request.url === '/bomb') {
        response.writeHead(200, { 'content-encoding': 'gzip' });
        response.end(bomb);
      } else if (request.url === '/endless') {
        response.writeHead(200);
        const more = (): void => {
          sent += 65_536;
          if (!response.destroyed) response.write(Buffer.alloc(65_536, 'x'), more);
        };
        more();
      } else if (request.url === '/broken-off') {
        response.writeHead(200, { 'content-length': 100 });
        response.write('[');
        setTimeout(() => response.destroy(), 20);
      }
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  });
  beforeEach(() => {
    sent = 0;
  });
  afterAll(async () => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  });

  const ask = (path: string) =>
    new NoticeFetch({ ...limits, answerMilliseconds: 1_400 }).fetch(
      { kind: 'csv', url: url + path },
      none,
      now,
    );

  it('and stalls in the middle is given up in time, and the connection let go of', async () => {
    expect(await ask('/stalled')).toEqual(fails('did not end within 1.5 s', false));
    await closed;
  });

  it('and sends without end, or far more than it seems, is cut off at the limit', async () => {
    expect(await ask('/endless')).toEqual(fails('larger than 100000 bytes', true));
    await closed;
    expect(sent).toBeLessThan(20_000_000);
    const before = process.memoryUsage().rss;
    expect(await ask('/bomb')).toEqual(fails('larger than 100000 bytes', true));
    await closed;
    expect(process.memoryUsage().rss - before).toBeLessThan(50_000_000);
  });

  it('and breaks off, or is not there any more, may answer later', async () => {
    expect(await ask('/broken-off')).toEqual(fails('could not be reached', false));
    const gone = await new NoticeFetch(limits).fetch({ kind: 'csv', url: 'http://127.0.0.1:9/' }, none, now);
    expect(gone).toEqual(fails('could not be reached', false));
  });
});
