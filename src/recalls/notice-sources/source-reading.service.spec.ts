import { readFileSync } from 'node:fs';
import nock from 'nock';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { NoticeSource } from '../../platform/notice-sources-setting.js';
import { NoticeFileReader } from '../notice-files/notice-file-reader.service.js';
import { SourceReader } from './source-reading.service.js';

const host = 'https://gate.example';
const now = '2026-11-26T06:00:00.000Z';
const weekly = readFileSync('tests/support/notices/safety-gate.xml', 'utf8');
const reader = new SourceReader(new NoticeFileReader());
const read = (kind: NoticeSource['kind'], path = '/list') =>
  reader.read(
    { kind, url: host + path },
    { etag: null, lastModified: null },
    now,
    new AbortController().signal,
  );
const list = (...weeks: string[]) =>
  `<reports>${weeks
    .map(
      (week) =>
        `<weeklyReport><reference>Report-${week}</reference><URL>\n${host}/${week}\n</URL></weeklyReport>`,
    )
    .join('')}</reports>`;

describe('a source', () => {
  beforeAll(() => {
    if (!nock.isActive()) nock.activate();
    nock.disableNetConnect();
  });
  afterEach(() => {
    expect(nock.pendingMocks()).toEqual([]);
    nock.cleanAll();
  });
  afterAll(() => {
    nock.enableNetConnect();
    nock.restore();
  });

  it('is read as the file it is', async () => {
    nock(host).get('/list').reply(200, weekly, { etag: '"w"' });
    const { outcome, records } = await read('safety gate xml');
    expect(outcome).toEqual({ kind: 'read', etag: '"w"', lastModified: null });
    expect(records).toHaveLength(3);
  });

  it('that lists weekly reports is read with the latest of them, the earliest first', async () => {
    nock(host)
      .get('/list')
      .reply(200, list('2026-27', '2026-26', '2025-52'), { etag: '"l"' });
    for (const week of ['2025-52', '2026-26', '2026-27'])
      nock(host).get(`/${week}`).reply(200, `<r><n caseNumber="${week}"/></r>`, { etag: '"of the report"' });
    const { outcome, records } = await read('safety gate xml');
    expect(outcome).toEqual({ kind: 'read', etag: '"l"', lastModified: null });
    expect(records.map(({ reference }) => reference)).toEqual(['2025-52', '2026-26', '2026-27']);
  });

  it('of which one report cannot be had is read again later, all of it', async () => {
    nock(host).get('/list').reply(200, list('2026-27', '2026-26'));
    nock(host).get('/2026-26').reply(200, '<r><n caseNumber="1"/></r>');
    nock(host).get('/2026-27').reply(503, '', { 'retry-after': '60' });
    expect(await read('safety gate xml')).toEqual({
      outcome: {
        kind: 'failed',
        error: 'It answered 503.',
        isLasting: false,
        retryAt: '2026-11-26T06:01:00.000Z',
      },
      records: [],
    });
  });

  it('that holds nothing just now is no failure', async () => {
    nock(host).get('/list').reply(200, '{"meta":{},"results":[]}');
    nock(host).get('/list').reply(404, '{"error":{"code":"NOT_FOUND","message":"No matches found!"}}');
    for (let time = 0; time < 2; time += 1) {
      expect(await read('enforcement json')).toMatchObject({ outcome: { kind: 'read' }, records: [] });
    }
  });

  const laughs = Array.from(
    { length: 9 },
    (_, level) => `<!ENTITY l${level + 1} "${`&l${level};`.repeat(10)}">`,
  );
  it.each([
    ['safety gate xml', weekly.replace('</danger>', ''), 'Missing end tag'],
    ['safety gate xml', '<html><body>Sign in, please</body></html>', 'holds no notification'],
    ['safety gate xml', '{"results":[]}', 'cannot be read as XML'],
    ['safety gate xml', `<!DOCTYPE r [<!ENTITY l0 "ha">${laughs.join('')}]><r caseNumber="&l9;"/>`, '&l9;'],
    ['safety gate xml', '<a>'.repeat(200_000), 'deep in each other'],
    ['safety gate xml', '', 'empty'],
    ['enforcement json', weekly, 'no JSON'],
    ['enforcement json', '{"results":[1]}', 'Report 1 is 1'],
    ['csv', '<html></html>', 'unknown column'],
    ['csv', 'product,gtin\nUmber,12', 'is no GTIN'],
  ] as const)('of the kind %s that holds something else fails for good: %j', async (kind, text, why) => {
    nock(host).get('/list').reply(200, text);
    const { outcome, records } = await read(kind);
    expect(outcome).toMatchObject({ kind: 'failed', isLasting: true, error: expect.stringContaining(why) });
    expect(records).toEqual([]);
  });
});
