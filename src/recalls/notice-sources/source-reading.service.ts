import { Injectable } from '@nestjs/common';
import { readXmlFile } from '../../platform/files/xml-file.js';
import type { NoticeSource } from '../../platform/notice-sources-setting.js';
import { NoticeFileReader } from '../notice-files/notice-file-reader.service.js';
import type { NoticeRecord } from '../notice-files/notice-record.js';
import { type KnownVersion, NoticeFetch } from './notice-fetch.service.js';
import type { SourceOutcome } from './source-state.js';
import { latestReports } from './weekly-reports.js';

/** What a source held. */
export interface SourceReading {
  outcome: SourceOutcome;
  records: NoticeRecord[];
}

const everything: KnownVersion = { etag: null, lastModified: null };

/** Fetches a source and reads what it holds; of a list of weekly reports, the latest of these. */
@Injectable()
export class SourceReader {
  constructor(private readonly files: NoticeFileReader) {}

  async read(
    source: NoticeSource,
    known: KnownVersion,
    now: string,
    ending: AbortSignal,
    fetch = new NoticeFetch(),
  ): Promise<SourceReading> {
    const fetched = await fetch.fetch(source, known, now, ending);
    if (fetched.kind !== 'text') return { outcome: fetched, records: [] };
    const { text, etag, lastModified } = fetched;
    const reports = reportsOf(source, text);
    if (reports.length === 0) {
      const records = this.recordsOf(source, text);
      return typeof records === 'string'
        ? unusable(records)
        : { outcome: { kind: 'read', etag, lastModified }, records };
    }
    const all: NoticeRecord[] = [];
    // The earliest first, as they were published.
    for (const url of reports.reverse()) {
      const report = await fetch.fetch({ ...source, url }, everything, now, ending);
      if (report.kind === 'unchanged') continue;
      if (report.kind === 'failed') return { outcome: report, records: [] };
      const records = this.recordsOf(source, report.text);
      if (typeof records === 'string') return unusable(records);
      all.push(...records);
    }
    return { outcome: { kind: 'read', etag, lastModified }, records: all };
  }

  /** @returns the notices, or why there are none */
  private recordsOf({ kind }: NoticeSource, text: string): NoticeRecord[] | string {
    const { records, faults } = this.files.read(kind, text);
    const [fault] = faults;
    return fault === undefined ? records : fault.message;
  }
}

function reportsOf({ kind, url }: NoticeSource, text: string): string[] {
  // A report need not be read twice to know that it is no list.
  if (kind !== 'safety gate xml' || /caseNumber/i.test(text)) return [];
  const { root } = readXmlFile(text);
  return root === null ? [] : latestReports(root, url);
}

function unusable(why: string): SourceReading {
  const error = `What it holds cannot be read: ${why}`.slice(0, 500);
  return { outcome: { kind: 'failed', error, isLasting: true, retryAt: null }, records: [] };
}
