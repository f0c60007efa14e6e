import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNotice } from '../notice-reading/notice-reading.js';
import { noticeColumns, noticeExample } from './notice-columns.js';
import { NoticeFileReader } from './notice-file-reader.service.js';
import { needsReading, proposalOf } from './notice-proposal.js';
import { maximumNoticeRecords, maximumRecordCharacters, type NoticeFileKind } from './notice-record.js';

const reader = new NoticeFileReader();
const fixture = (name: string) => readFileSync(`tests/support/notices/${name}`, 'utf8');
const files = {
  csv: fixture('notices.csv'),
  'enforcement json': fixture('enforcement.json'),
  'safety gate xml': fixture('safety-gate.xml'),
} as const;
const kinds = Object.keys(files) as NoticeFileKind[];
const recordsOf = (kind: NoticeFileKind, text: string) => {
  const { records, faults } = reader.read(kind, text);
  expect(faults).toEqual([]);
  return records;
};
const faultOf = (kind: NoticeFileKind, text: string) => {
  const { records, faults } = reader.read(kind, text);
  expect(records).toEqual([]);
  return faults[0];
};
const proposalsOf = (kind: NoticeFileKind, text: string) =>
  recordsOf(kind, text).map((record) =>
    proposalOf(record, needsReading(record) ? readNotice(record.text, { today: '2026-11-26' }) : null),
  );

describe('enforcement reports', () => {
  const records = recordsOf('enforcement json', files['enforcement json']);

  it('are read field by field, unknown ones written out', () => {
    expect(records.map(({ number, reference, issuedOn }) => [number, reference, issuedOn])).toEqual([
      [1, 'X-0412-2026', '2026-07-03'],
      [2, 'X-0413-2026', '2026-07-10'],
      [3, 'X-0414-2026', null],
      [4, null, null],
    ]);
    expect(records[0]).toMatchObject({
      issuer: 'Halden Pigments GmbH',
      classification: 'Class II',
      risk: 'Burkholderia cepacia found in unopened bottles',
      products: [{ makerName: 'Halden Pigments GmbH', lots: null }],
    });
    expect(records[0]?.text.split('\n')).toEqual([
      'Recall number: X-0412-2026',
      'Recalling firm: Halden Pigments GmbH',
      'Product description: Brow pigment Warm Umber, 15 mL dropper bottle, GTIN 9501101530003',
      'Code info: HU-118, HU-119, Exp 10/27',
      'Reason for recall: Burkholderia cepacia found in unopened bottles',
      'Classification: Class II',
      'Status: Ongoing',
      'Recall initiation date: 20260703',
      'Distribution pattern: Austria, Germany',
    ]);
    expect(records[1]?.text).toContain('Something new: one, two');
    expect(records[2]?.text).toContain('Code info: 07110002 thru 07110009');
    expect(records[3]?.text).toBe('Note: A report without a field that is known here.');
  });

  it('are taken as a list and one by one too', () => {
    const { results } = JSON.parse(files['enforcement json']) as { results: object[] };
    expect(recordsOf('enforcement json', JSON.stringify(results))).toEqual(records);
    expect(recordsOf('enforcement json', JSON.stringify(results[0]))).toEqual([records[0]]);
    for (const none of ['[]', '{"meta":{},"results":[]}'])
      expect(recordsOf('enforcement json', none)).toEqual([]);
  });

  it('name the product by how its description begins, unless the text names several', () => {
    const [proposal] = proposalsOf('enforcement json', files['enforcement json']);
    expect(proposal?.scope.items).toMatchObject([
      { makerName: 'Halden Pigments GmbH', productName: 'Brow pigment Warm Umber' },
    ]);
  });

  it.each([
    ['{"results":{}}', '"results" is an object'],
    ['[{"recall_number":"1"},7]', 'Report 2 is 7'],
    ['[[{"recall_number":"1"}]]', 'Report 1 is a list'],
    ['[{}]', 'Report 1 has no fields'],
    ['"text"', 'the text "text"'],
    ['null', 'holds null'],
    ['{"a":1}', 'neither "results" nor'],
    ['{"error":{"code":"NOT_FOUND","message":"No matches found!"}}', 'No matches found!'],
    ['{"results":[', 'no JSON'],
    ['<report/>', 'no JSON'],
  ])('are refused whole when they are %s', (text, message) => {
    expect(faultOf('enforcement json', text)?.message).toContain(message);
  });
});

describe('a weekly report', () => {
  const records = recordsOf('safety gate xml', files['safety gate xml']);

  it('is read notification by notification, in elements and attributes, whatever is missing or unknown', () => {
    expect(records.map(({ reference, issuedOn }) => [reference, issuedOn])).toEqual([
      ['SR/09001/26', '2026-07-03'],
      ['SR/09002/26', '2026-07-03'],
      ['SR/09003/26', '2026-07-03'],
    ]);
    expect(records[0]).toMatchObject({
      issuer: 'Austria',
      classification: 'Serious risk',
      risk: 'Chemical: The product contains Pigment Green 7 (CI 74260) above the limit.',
      remedy: 'Measures ordered by public authorities: Recall of the product from end users',
      products: [
        {
          makerName: 'Halden Pigments',
          productName: 'Brow pigment – Warm Umber & co',
          gtins: ['09501101530003'],
          lots: null,
        },
      ],
    });
    expect(records[0]?.text).toContain('Batch number: HU-118; HU-119');
    expect(records[0]?.text).toMatch(/Pictures: \S+1\.jpg\s+\S+2\.jpg/);
    expect(records[1]?.products[0]).toMatchObject({
      makerName: null,
      productName: 'Tattoo ink',
      gtins: ['09501101020917'],
    });
    expect(records[1]?.text).toContain('Batchnumber barcode: L 4711');
    expect(records[1]?.text).toContain('Made up field: kept all the same');
    expect(records[2]?.products[0]).toMatchObject({
      makerName: 'Nordlicht',
      productName: 'Needle cartridge',
    });
    expect(records[2]?.text).toContain('Batch number: Unknown');
  });

  it('proposes no maker where nobody knows it', () => {
    const makers = proposalsOf('safety gate xml', files['safety gate xml']).map(
      ({ scope }) => scope.items[0]?.makerName,
    );
    expect(makers).toEqual(['Halden Pigments', null, 'Nordlicht']);
  });

  it('is read the same with its notifications in one element, and with prefixes', () => {
    const nested = files['safety gate xml']
      .replaceAll('<notifications', '<notification')
      .replaceAll('</notifications>', '</notification>')
      .replace('<notification>', '<notifications><notification>')
      .replace('</report>', '</notifications></report>');
    expect(recordsOf('safety gate xml', nested)).toEqual(records);
    const prefixed = files['safety gate xml'].replaceAll(
      /<(\/?)(notifications|caseNumber|brand)/g,
      '<$1s:$2',
    );
    expect(recordsOf('safety gate xml', prefixed)).toEqual(records);
  });

  it('that holds none, is broken, or is something else is refused whole', () => {
    for (const text of ['<html><body>Not found</body></html>', '<report/>', '<notifications/>'])
      expect(faultOf('safety gate xml', text)?.message).toContain('no notification');
    expect(faultOf('safety gate xml', files['safety gate xml'].replace('</brand>', ''))).toMatchObject({
      message: expect.stringContaining('cannot be read as XML'),
    });
    expect(faultOf('safety gate xml', '{}')?.message).toContain('cannot be read as XML');
  });
});

describe('a table of notices', () => {
  const proposals = proposalsOf('csv', files.csv);
  const useBy = { from: '2027-10-01', through: '2027-10-31' };

  it('has a notice for each reference, with its lots by product', () => {
    expect(proposals.map(({ reference }) => reference)).toEqual([
      'HR-2026-07',
      'HR-2026-08',
      null,
      null,
      'HR-2026-09',
    ]);
    expect(proposals[0]).toMatchObject({
      issuer: 'Halden Pigments',
      issuedOn: '2026-07-03',
      risk: 'Bacteria were found.',
      remedy: 'Stop using it.',
    });
    expect(proposals[0]?.scope.items).toEqual([
      {
        makerName: 'Halden Pigments',
        productName: 'Brow pigment',
        shade: 'Warm umber',
        gtins: ['09501101530003'],
        productIds: [],
        lots: [
          { kind: 'code', code: 'HU-118', useBy: null },
          { kind: 'code', code: 'HU-119', useBy },
        ],
        openEnded: false,
      },
      expect.objectContaining({ shade: 'Ochre', gtins: [], lots: [{ kind: 'all lots' }] }),
    ]);
    expect(proposals[1]?.scope.items[0]).toMatchObject({
      lots: [{ kind: 'code range', from: '07110002', through: '07110009', useBy: null }],
      openEnded: true,
    });
    expect(proposals[2]?.scope.items[0]?.lots).toEqual([
      { kind: 'manufactured', manufactured: { from: '2026-01-01', through: '2026-03-15' } },
    ]);
  });

  it('has its lots read in the text of a row that names none', () => {
    const [item] = proposals[3]?.scope.items ?? [];
    expect(item).toMatchObject({ makerName: 'Nordlicht Needles', productName: 'Cartridge 1003RL' });
    expect(item?.lots.map((term) => term.kind === 'code' && term.code)).toEqual(['NL-7', 'NL-8']);
    expect(proposals[3]?.parts.filter(({ kind }) => kind === 'code')).toHaveLength(2);
  });

  it('keeps a row that names nothing, and says so', () => {
    const last = recordsOf('csv', files.csv).at(-1);
    expect(last).toMatchObject({ number: 8, text: 'Reference: HR-2026-09' });
    expect(proposals[4]?.remarks.map(({ code }) => code)).toEqual(['names nothing']);
  });

  it('takes several codes in one cell, and the cell as a code too', () => {
    const [record] = recordsOf('csv', 'product,lot\nUmber,"A-1; A-2, A-3"\n');
    expect(record?.products[0]?.lots?.map((term) => term.kind === 'code' && term.code)).toEqual([
      'A-1; A-2, A-3',
      'A-1',
      'A-2',
      'A-3',
    ]);
  });

  it('is open to other lots where one row of a product names lots and another none', () => {
    const [record] = recordsOf('csv', 'reference,product,lot\nR,Umber,A-1\nR,Umber,\n');
    expect(record?.products).toMatchObject([{ lots: [{ code: 'A-1' }], openEnded: true }]);
  });

  it.each([
    ['product,lot from\nUmber,1', 'lot through', 'is empty'],
    ['product,lot through\nUmber,1', 'lot from', 'is empty'],
    ['product,use by from\nUmber,03/04/2026', 'use by from', 'is no date'],
    ['product,use by from,use by through\nUmber,2027-02,2027-01', 'use by through', 'lies before'],
    ['product,issued on\nUmber,03/04/2026', 'issued on', 'read in two ways'],
    ['product,gtin\nUmber,9501101530004', 'gtin', 'is no GTIN'],
    ['product,all lots\nUmber,maybe', 'all lots', 'neither yes nor no'],
    [`product,lot\nUmber,${'x'.repeat(150)}`, 'lot', 'longer than any lot'],
    ['product,lot\nUmber,A,B', null, 'cells'],
  ])('is refused whole for %j', (text, column, message) => {
    expect(faultOf('csv', text)).toEqual({ row: 2, column, message: expect.stringContaining(message) });
  });

  it('refuses columns that are not known, so that a misspelt one narrows nothing', () => {
    expect(faultOf('csv', 'product,lot thru\nUmber,1')?.message).toContain('unknown column "lot thru"');
  });

  it('has an example that can be read', () => {
    const names = noticeColumns.map(({ name }) => name);
    const text = [names, ...noticeExample.map((row) => names.map((name) => row[name] ?? ''))]
      .map((cells) => cells.join('\t'))
      .join('\n');
    expect(recordsOf('csv', text)).toHaveLength(3);
  });
});

describe('any file of notices', () => {
  it('is refused when it is empty', () => {
    for (const kind of kinds) expect(faultOf(kind, ' \n')?.message).toContain('empty');
  });

  it('has limits of notices and of the length of one, which are told', { timeout: 30_000 }, () => {
    const many = (count: number) => ({
      csv: `product,lot\n${Array.from({ length: count }, (_, index) => `P${index},L${index}\n`).join('')}`,
      'enforcement json': JSON.stringify(Array.from({ length: count }, () => ({ recall_number: 'X' }))),
      'safety gate xml': `<r>${'<notifications><caseNumber>1</caseNumber></notifications>'.repeat(count)}</r>`,
    });
    const most = many(maximumNoticeRecords);
    const more = many(maximumNoticeRecords + 1);
    for (const kind of kinds) {
      expect(recordsOf(kind, most[kind])).toHaveLength(maximumNoticeRecords);
      expect(faultOf(kind, more[kind])?.message).toContain(`at most ${maximumNoticeRecords}`);
    }
    const huge = many(100_000);
    for (const kind of kinds) expect(faultOf(kind, huge[kind])?.message).toMatch(/at most|more than/);
    const long = 'x'.repeat(maximumRecordCharacters);
    expect(faultOf('enforcement json', `[{"code_info":"${long}"}]`)?.message).toContain('Report 1');
    expect(faultOf('safety gate xml', `<n caseNumber="1"><danger>${long}</danger></n>`)?.message).toContain(
      'Notification 1',
    );
    expect(faultOf('csv', `product,notice text\nA,${long}`)).toMatchObject({ row: 2, column: 'notice text' });
  });

  it('keeps what a database can hold, with damage marked', () => {
    const [record] = recordsOf(
      'enforcement json',
      '[{"code_info":"A\\u0000B\\ud800C\\u0007","status":"x\\r\\ny"}]',
    );
    expect(record?.text).toBe('Code info: A\uFFFDB\uFFFDC\uFFFD\nStatus: x\ny');
    expect(record?.remarks.map(({ code }) => code)).toEqual(['damaged characters']);
  });

  it('loses no value of any report, whatever is in it', () => {
    const name = fc.constantFrom('code_info', 'recall_number', 'other', '__proto__', 'constructor');
    const value = fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 30 })
      .map((text) => text.replace(/[\p{Cc}\p{Cs}\s]+/gu, 'x'));
    fc.assert(
      fc.property(fc.array(fc.dictionary(name, value, { minKeys: 1 }), { minLength: 1 }), (reports) => {
        const records = recordsOf('enforcement json', JSON.stringify(reports));
        expect(records).toHaveLength(reports.length);
        for (const [index, report] of reports.entries())
          for (const each of Object.values(report)) expect(records[index]?.text).toContain(each);
      }),
    );
  });

  it('is read or refused, and never breaks off, whatever is in it', { timeout: 30_000 }, () => {
    const noise = fc.string({ unit: 'binary', maxLength: 8 });
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.nat(), fc.nat(40), noise, (kind, at, length, inserted) => {
        const text = files[kind];
        const start = at % text.length;
        const { records, faults } = reader.read(
          kind,
          text.slice(0, start) + inserted + text.slice(start + length),
        );
        expect(records.length > 0).toBe(faults.length === 0);
        for (const record of records) {
          const reading = needsReading(record) ? readNotice(record.text, { today: '2026-11-26' }) : null;
          expect(proposalOf(record, reading).scope.items.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 100 },
    );
  });
});
