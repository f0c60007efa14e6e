import { describe, expect, it } from 'vitest';
import { faultOf, noticeFiles, proposalsOf, recordsOf } from '../../../tests/support/notices/read-notices.js';
import { noticeColumns, noticeExample } from './notice-columns.js';

describe('a table of notices', () => {
  const proposals = proposalsOf('csv', noticeFiles.csv);
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
    const last = recordsOf('csv', noticeFiles.csv).at(-1);
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
