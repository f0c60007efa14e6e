import { describe, expect, it } from 'vitest';
import { type Finding, reportLines, type VerifiedStudio, type VerifyReport } from './report-words.js';

const hash = 'ab'.repeat(32);

const studio: VerifiedStudio = {
  id: 'studio-1',
  name: 'Larkmoor',
  entries: 1_204,
  head: { sequence: 1_204, hash },
  rows: 8_113,
  balances: 1,
  levels: 12,
  heads: 0,
  furthestHead: null,
};

const report = (given: Partial<VerifyReport>): VerifyReport => ({
  engine: 'sqlite',
  studios: [studio],
  registers: [{ chainId: 'chain-1', name: 'Larkmoor', rows: 52 }],
  wrong: 0,
  findings: [],
  ...given,
});

const finding = (message: string): Finding => ({
  check: 'row',
  studioId: null,
  table: null,
  id: null,
  message,
});

describe('a report in words', () => {
  it('says what was looked at, and that no head is remembered elsewhere', () => {
    expect(reportLines(report({}))).toEqual([
      'Studio Larkmoor (studio-1)',
      `  Audit log: 1,204 entries; its head is entry 1204, ${hash}.`,
      '  Held against it: 8,113 rows.',
      '  Held against the ledger: 1 balance, and what is on hand of 12 products.',
      '  No backup and no exported log remembers a head of this chain: a cut end, or a chain computed anew, would not show.',
      'Product register of Larkmoor (chain-1): 52 rows.',
      'Everything fits together.',
    ]);
  });

  it('names the furthest head that was compared', () => {
    const furthestHead = {
      from: 'the log a.ndjson, exported at noon,',
      studioId: 'studio-1',
      sequence: 900,
      hash,
    };
    const lines = reportLines(report({ studios: [{ ...studio, heads: 3, furthestHead }] }));
    expect(lines).toContain(
      '  Compared with 3 heads in backups and exported logs; the furthest is entry 900, in the log a.ndjson, exported at noon.',
    );
  });

  it('tells the first thing that is wrong, then some more, and how many there are', () => {
    expect(reportLines(report({ wrong: 1, findings: [finding('A.')] })).slice(-2)).toEqual([
      'One thing is wrong:',
      '  A.',
    ]);
    const findings = Array.from({ length: 100 }, (_, index) => finding(`Fault ${index + 1}.`));
    const lines = reportLines(report({ wrong: 1_500, findings }));
    const told = lines.slice(lines.indexOf('1,500 things are wrong. The first:'));
    expect(told.slice(0, 4)).toEqual([
      '1,500 things are wrong. The first:',
      '  Fault 1.',
      'Then:',
      '  Fault 2.',
    ]);
    expect(told.slice(-2)).toEqual(['  Fault 21.', '  and 1,479 more.']);
    expect(lines).not.toContain('Everything fits together.');
  });
});
