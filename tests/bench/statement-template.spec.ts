import { describe, expect, it } from 'vitest';
import { makeTemplate, type RecordedStatement } from './statement-template.js';

const id = (digit: string) =>
  `${digit.repeat(8)}-${digit.repeat(4)}-${digit.repeat(4)}-${digit.repeat(4)}-${digit.repeat(12)}`;

const statement = (
  sql: string,
  parameters: RecordedStatement['parameters'],
  rows: RecordedStatement['rows'] = [],
): RecordedStatement => ({ onReader: false, sql, parameters, rows });

const sourcesOf = (recorded: RecordedStatement[], request: Record<string, unknown>) =>
  makeTemplate(recorded, request).map(({ values }) => values);

describe('a template of recorded statements', () => {
  it('takes ids of the request from the next request', () => {
    const request = { params: { sessionId: id('1') }, body: { lines: [{ trayLineId: id('2') }] } };
    expect(sourcesOf([statement('a', [id('1'), id('2')])], request)).toEqual([
      [
        { from: 'request', field: 'params.sessionId' },
        { from: 'request', field: 'body.lines.0.trayLineId' },
      ],
    ]);
  });

  it('takes ids and hashes that were read from the rows that gave them', () => {
    const hash = 'ab'.repeat(32);
    const recorded = [
      statement('a', [], [{ lot_id: id('3'), hash, kind: 'pigment' }]),
      statement('b', [hash, id('3'), 'pigment']),
    ];
    expect(sourcesOf(recorded, {})[1]).toEqual([
      { from: 'row', statement: 0, row: 0, column: 'hash', more: 0 },
      { from: 'row', statement: 0, row: 0, column: 'lot_id', more: 0 },
      { from: 'constant', value: 'pigment' },
    ]);
  });

  it('counts a sequence on and leaves other numbers as they were', () => {
    const recorded = [statement('a', [], [{ sequence: 41 }]), statement('b', [42, 7])];
    expect(sourcesOf(recorded, {})[1]).toEqual([
      { from: 'row', statement: 0, row: 0, column: 'sequence', more: 1 },
      { from: 'constant', value: 7 },
    ]);
  });

  it('makes an id that came from nowhere anew, the same wherever it stood', () => {
    expect(sourcesOf([statement('a', [id('4'), id('5')]), statement('b', [id('4')])], {})).toEqual([
      [
        { from: 'fresh id', number: 0 },
        { from: 'fresh id', number: 1 },
      ],
      [{ from: 'fresh id', number: 0 }],
    ]);
  });
});
