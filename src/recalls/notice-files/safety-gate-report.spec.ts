import { describe, expect, it } from 'vitest';
import { faultOf, noticeFiles, proposalsOf, recordsOf } from '../../../tests/support/notices/read-notices.js';

describe('a weekly report', () => {
  const records = recordsOf('safety gate xml', noticeFiles['safety gate xml']);

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
    const makers = proposalsOf('safety gate xml', noticeFiles['safety gate xml']).map(
      ({ scope }) => scope.items[0]?.makerName,
    );
    expect(makers).toEqual(['Halden Pigments', null, 'Nordlicht']);
  });

  it('is read the same with its notifications in one element, and with prefixes', () => {
    const nested = noticeFiles['safety gate xml']
      .replaceAll('<notifications', '<notification')
      .replaceAll('</notifications>', '</notification>')
      .replace('<notification>', '<notifications><notification>')
      .replace('</report>', '</notifications></report>');
    expect(recordsOf('safety gate xml', nested)).toEqual(records);
    const prefixed = noticeFiles['safety gate xml'].replaceAll(
      /<(\/?)(notifications|caseNumber|brand)/g,
      '<$1s:$2',
    );
    expect(recordsOf('safety gate xml', prefixed)).toEqual(records);
  });

  it('that holds none, is broken, or is something else is refused whole', () => {
    for (const text of ['<html><body>Not found</body></html>', '<report/>', '<notifications/>'])
      expect(faultOf('safety gate xml', text)?.message).toContain('no notification');
    expect(faultOf('safety gate xml', noticeFiles['safety gate xml'].replace('</brand>', ''))).toMatchObject({
      message: expect.stringContaining('cannot be read as XML'),
    });
    expect(faultOf('safety gate xml', '{}')?.message).toContain('cannot be read as XML');
  });
});
