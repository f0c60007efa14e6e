import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { NoticeFileReader } from '../../../src/recalls/notice-files/notice-file-reader.service.js';
import { needsReading, proposalOf } from '../../../src/recalls/notice-files/notice-proposal.js';
import type { NoticeFileKind } from '../../../src/recalls/notice-files/notice-record.js';
import { readNotice } from '../../../src/recalls/notice-reading/notice-reading.js';

const reader = new NoticeFileReader();
const fixture = (name: string) => readFileSync(`tests/support/notices/${name}`, 'utf8');

/** A file of each kind, with invented makers, products and lots. */
export const noticeFiles = {
  csv: fixture('notices.csv'),
  'enforcement json': fixture('enforcement.json'),
  'safety gate xml': fixture('safety-gate.xml'),
} as const;

/** The notices of a file that can be read. */
export function recordsOf(kind: NoticeFileKind, text: string) {
  const { records, faults } = reader.read(kind, text);
  expect(faults).toEqual([]);
  return records;
}

/** The first fault of a file that cannot. */
export function faultOf(kind: NoticeFileKind, text: string) {
  const { records, faults } = reader.read(kind, text);
  expect(records).toEqual([]);
  return faults[0];
}

/** What is proposed for each notice of a file, its text read as it is when somebody brings it. */
export function proposalsOf(kind: NoticeFileKind, text: string) {
  return recordsOf(kind, text).map((record) =>
    proposalOf(record, needsReading(record) ? readNotice(record.text, { today: '2026-11-26' }) : null),
  );
}
