import { describe, expect, it } from 'vitest';
import { faultOf, noticeFiles, proposalsOf, recordsOf } from '../../../tests/support/notices/read-notices.js';

describe('enforcement reports', () => {
  const records = recordsOf('enforcement json', noticeFiles['enforcement json']);

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
    const { results } = JSON.parse(noticeFiles['enforcement json']) as { results: object[] };
    expect(recordsOf('enforcement json', JSON.stringify(results))).toEqual(records);
    expect(recordsOf('enforcement json', JSON.stringify(results[0]))).toEqual([records[0]]);
    for (const none of ['[]', '{"meta":{},"results":[]}'])
      expect(recordsOf('enforcement json', none)).toEqual([]);
  });

  it('name the product by how its description begins, unless the text names several', () => {
    const [proposal] = proposalsOf('enforcement json', noticeFiles['enforcement json']);
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
