import { Injectable } from '@nestjs/common';
import { readCsvTable } from '../../platform/files/csv-table.js';
import { readJsonFile } from '../../platform/files/json-file.js';
import { readXmlFile } from '../../platform/files/xml-file.js';
import { readEnforcementReports } from './enforcement-report.js';
import { noticeColumns } from './notice-columns.js';
import {
  maximumNoticeRecords,
  maximumNoticeRows,
  maximumRecordCharacters,
  type NoticeFile,
  type NoticeFileKind,
} from './notice-record.js';
import { noticesOfRows, readNoticeRow } from './notice-table.js';
import { readSafetyGateReport } from './safety-gate-report.js';

/** Reads files of notices, brought along or fetched: whole, or not at all and why. */
@Injectable()
export class NoticeFileReader {
  read(kind: NoticeFileKind, text: string): NoticeFile {
    if (kind === 'csv') return this.readTable(text);
    if (kind === 'enforcement json') {
      const { value, faults } = readJsonFile(text);
      return faults.length > 0 ? { records: [], faults } : readEnforcementReports(value);
    }
    const { root, faults } = readXmlFile(text);
    return root === null ? { records: [], faults } : readSafetyGateReport(root);
  }

  private readTable(text: string): NoticeFile {
    const table = readCsvTable(text, noticeColumns, maximumNoticeRows);
    if (table.faults.length > 0) return { records: [], faults: table.faults };
    const rows = table.rows.map(({ number, cells }) => readNoticeRow(number, cells));
    const faults = table.rows.flatMap(({ number, faults: unreadable }, index) =>
      [...unreadable, ...(rows[index]?.faults ?? [])].map((fault) => ({ row: number, ...fault })),
    );
    if (faults.length > 0) return { records: [], faults };
    const records = noticesOfRows(rows);
    if (records.length > maximumNoticeRecords) {
      const message = `The file holds ${records.length} notices; at most ${maximumNoticeRecords} are taken in at a time. Bring it in parts.`;
      return { records: [], faults: [{ row: null, column: null, message }] };
    }
    const long = records.find((record) => record.text.length > maximumRecordCharacters);
    if (long !== undefined) {
      const message = `The notice that begins here has ${long.text.length} characters; at most ${maximumRecordCharacters} are taken.`;
      return { records: [], faults: [{ row: long.number, column: null, message }] };
    }
    return { records, faults: [] };
  }
}
