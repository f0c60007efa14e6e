import { readFileSync } from 'node:fs';
import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { NoticeFileView } from '../../src/recalls/notice-files/notice-files.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import { tableContents } from '../support/table-contents.js';

const fixture = (name: string) => readFileSync(`tests/support/notices/${name}`, 'utf8');

describe.each(usualEngine)('a file of notices', (engine) => {
  let service: RunningService;
  let sql: PlainSql;

  beforeAll(async () => {
    service = await startService(engine);
    sql = await PlainSql.connect(service, 'read');
  });
  afterAll(async () => {
    await sql?.close();
    await service?.dispose();
  });

  /** The status of a body of so many bytes, which is refused before it is sent. */
  const statusOfLength = (path: string, bytes: number) =>
    new Promise((resolve, reject) => {
      const sent = request(service.studio + path, {
        method: 'POST',
        headers: {
          authorization: `Bearer ${service.token}`,
          'content-type': 'application/json',
          'content-length': bytes,
        },
      });
      // A route with a larger limit would wait for what never comes.
      sent.setTimeout(10_000, () => sent.destroy(new Error(`No answer of ${path} in time.`)));
      sent.once('error', reject);
      sent.once('response', (answer) => {
        answer.resume();
        sent.destroy();
        resolve(answer.statusCode);
      });
      sent.flushHeaders();
    });

  const read = (kind: string, text: string, after?: number) =>
    service.post<NoticeFileView & ProblemBody>('/recalls/files', { id: undefined, kind, text, after });

  it.each([
    ['csv', 'notices.csv', 5],
    ['enforcement json', 'enforcement.json', 4],
    ['safety gate xml', 'safety-gate.xml', 3],
  ])('of the kind %s is read notice by notice, and nothing is written', async (kind, name, count) => {
    const before = await tableContents(sql);
    const { status, body } = await read(kind, fixture(name));
    expect(status).toBe(200);
    expect(body).toMatchObject({ notices: count, next: null });
    expect(body.items).toHaveLength(count);
    for (const { text, scope } of body.items) {
      expect(text).not.toBe('');
      expect(scope.items.length).toBeGreaterThan(0);
    }
    expect(await tableContents(sql)).toEqual(before);
  });

  it('with faults is refused whole, each fault by its place', async () => {
    const { status, body } = await read('csv', 'product,gtin,use by from\nUmber,1,x\nOchre,2,2027\n');
    expect([status, body.code]).toEqual([400, 'unusable-file']);
    expect(body.faults?.map(({ field }) => field)).toEqual([
      'row 2, use by from',
      'row 2, gtin',
      'row 3, gtin',
    ]);
    const broken = await read('safety gate xml', fixture('safety-gate.xml').replace('</danger>', ''));
    expect(broken.body).toMatchObject({
      code: 'unusable-file',
      faults: [{ field: expect.stringMatching(/^row \d+$/) }],
    });
  });

  it('without any notice is refused', async () => {
    expect((await read('enforcement json', '{"results":[]}')).body.faults?.[0]?.message).toContain(
      'no notice',
    );
  });

  it('that was read in another encoding than its own is refused, by its line', async () => {
    const text = Buffer.from('product,lot\nUmber,1\nBläue,2\n', 'latin1').toString('utf8');
    for (const kind of ['csv', 'enforcement json', 'safety gate xml']) {
      const { body } = await read(kind, text);
      expect(body.faults).toEqual([
        { field: 'row 3', message: expect.stringContaining('save the file as UTF-8') },
      ]);
    }
    const wide = await read('csv', Buffer.from('product,lot\n', 'utf16le').toString('latin1'));
    expect(wide.body).toMatchObject({ code: 'invalid-fields', faults: [{ field: 'text' }] });
  });

  it('that blows up when its entities are put in, or is nested without end, is refused at once', async () => {
    const laughs = Array.from(
      { length: 9 },
      (_, level) => `<!ENTITY l${level + 1} "${`&l${level};`.repeat(10)}">`,
    );
    const bomb = `<!DOCTYPE r [<!ENTITY l0 "lol">${laughs.join('')}]><r><notifications><caseNumber>&l9;</caseNumber></notifications></r>`;
    const started = performance.now();
    expect((await read('safety gate xml', bomb)).body.faults?.[0]?.message).toContain('&l9;');
    const outside = '<!DOCTYPE r [<!ENTITY x SYSTEM "file:///etc/passwd">]><r caseNumber="&x;"/>';
    expect((await read('safety gate xml', outside)).body.faults?.[0]?.message).toContain('&x;');
    const deep = '<a>'.repeat(300_000);
    expect((await read('safety gate xml', deep)).body.faults?.[0]?.message).toContain('deep in each other');
    const list = `${'['.repeat(1_000_000)}${']'.repeat(1_000_000)}`;
    expect((await read('enforcement json', list)).body.faults?.[0]?.message).toContain('Report 1 is a list');
    expect(performance.now() - started).toBeLessThan(10_000);
  });

  it('of several megabytes is read in pages; a larger one is refused by its limit, and other routes keep theirs', async () => {
    const filler = 'Bacteria were found in bottles that had not been opened. '.repeat(70);
    const reports = Array.from({ length: 900 }, (_, index) => ({
      recall_number: `X-${index}`,
      product_description: 'Brow pigment',
      code_info: `HU-${index}`,
      reason_for_recall: filler,
    }));
    const text = JSON.stringify(reports);
    expect(text.length).toBeGreaterThan(3_500_000);
    const references: (string | null)[] = [];
    for (let after: number | null = 0; after !== null; ) {
      const { body }: { body: NoticeFileView } = await read('enforcement json', text, after);
      expect(body.notices).toBe(900);
      references.push(...body.items.map(({ reference }) => reference));
      after = body.next;
      // The rest is read the same way; some pages show that they meet.
      if (references.length > 250) break;
    }
    expect(references.length).toBeGreaterThan(200);
    expect(references).toEqual(reports.slice(0, references.length).map(({ recall_number }) => recall_number));

    const long = await read('csv', 'x'.repeat(4_000_001));
    expect([long.status, long.body.code]).toEqual([400, 'invalid-fields']);
    expect(await statusOfLength('/recalls/files', 4_194_305)).toBe(413);
    const notice = await service.post<ProblemBody>('/recalls/readings', {
      id: undefined,
      text: 'é'.repeat(1_000_000),
    });
    expect(notice.status).toBe(200);
    expect(await statusOfLength('/opening-stock/preview', 1_048_577)).toBe(413);
    expect(await statusOfLength('/holds', 1_048_577)).toBe(413);
  });
});
