import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultOf, noticeFiles, recordsOf } from '../../../tests/support/notices/read-notices.js';
import { readNotice } from '../notice-reading/notice-reading.js';
import { NoticeFileReader } from './notice-file-reader.service.js';
import { needsReading, proposalOf } from './notice-proposal.js';
import { maximumNoticeRecords, maximumRecordCharacters, type NoticeFileKind } from './notice-record.js';

const reader = new NoticeFileReader();
const kinds = Object.keys(noticeFiles) as NoticeFileKind[];

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
        const text = noticeFiles[kind];
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
