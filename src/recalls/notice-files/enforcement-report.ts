import { Temporal } from 'temporal-polyfill';
import {
  damageRemarks,
  fieldName,
  keepable,
  maximumNoticeRecords,
  maximumRecordCharacters,
  type NoticeFile,
  type NoticeRecord,
  recordText,
} from './notice-record.js';

/** Fields that say what a person reads first come first; whatever else is there follows. */
const firstFields = [
  'recall_number',
  'recalling_firm',
  'product_description',
  'code_info',
  'more_code_info',
  'reason_for_recall',
  'classification',
  'status',
  'recall_initiation_date',
];
const known = new Set(firstFields);

/**
 * Reads enforcement reports as openFDA publishes them (fields as documented there [S]): `{meta, results: […]}`, a bare
 * list of reports, or one report; none is an answer too. Unknown fields are written out, missing ones are missing. A report without any known
 * field is kept as the text it is.
 * @param value of the JSON text
 */
export function readEnforcementReports(value: unknown): NoticeFile {
  const whole = (message: string, row: number | null = null): NoticeFile => ({
    records: [],
    faults: [{ row, column: null, message }],
  });
  const entries = entriesOf(value);
  if (typeof entries === 'string') return whole(entries);
  if (entries.length > maximumNoticeRecords) {
    return whole(
      `The file holds ${entries.length} reports; at most ${maximumNoticeRecords} are taken in at a time. Bring it in parts.`,
    );
  }
  const records: NoticeRecord[] = [];
  for (const [index, entry] of entries.entries()) {
    const number = index + 1;
    if (!isObject(entry)) {
      return whole(
        `Report ${number} is ${shown(entry)}; each must be an object with fields such as recall_number.`,
        number,
      );
    }
    const record = recordOf(entry, number);
    if (record.text === '') return whole(`Report ${number} has no fields. Take it out.`, number);
    if (record.text.length > maximumRecordCharacters) {
      return whole(
        `Report ${number} has ${record.text.length} characters; at most ${maximumRecordCharacters} are taken.`,
        number,
      );
    }
    records.push(record);
  }
  return { records, faults: [] };
}

/** The reports, or why there are none. */
function entriesOf(value: unknown): unknown[] | string {
  if (Array.isArray(value)) return value;
  if (!isObject(value)) return `The file holds ${shown(value)}; a list of reports or one report is expected.`;
  if ('results' in value) {
    return Array.isArray(value.results)
      ? value.results
      : `"results" is ${shown(value.results)}; a list of reports is expected.`;
  }
  if (isObject(value.error)) {
    const message = textOf(value.error.message ?? value.error.code ?? '');
    return `The file is no report but an error of who published it: ${message.slice(0, 200)}.`;
  }
  return Object.keys(value).some((name) => known.has(name))
    ? [value]
    : 'The file has neither "results" nor the fields of a report, such as recall_number and code_info.';
}

function recordOf(entry: Record<string, unknown>, number: number): NoticeRecord {
  const said = (name: string) => keepable(textOf(entry[name] ?? '')) || null;
  const names = [
    ...firstFields.filter((name) => name in entry),
    ...Object.keys(entry).filter((name) => !known.has(name)),
  ];
  const text = recordText(names.map((name) => [fieldName(name), textOf(entry[name])]));
  const firm = said('recalling_firm');
  return {
    number,
    reference: said('recall_number'),
    issuer: firm,
    issuedOn: dayOf(said('recall_initiation_date')),
    classification: said('classification'),
    risk: said('reason_for_recall'),
    remedy: null,
    text,
    products: [
      {
        makerName: firm,
        productName: nameIn(said('product_description')),
        shade: null,
        gtins: [],
        lots: null,
        openEnded: false,
      },
    ],
    remarks: damageRemarks(text),
  };
}

/** What a description begins with, before sizes and numbers follow. */
function nameIn(description: string | null): string | null {
  const [name = ''] = (description ?? '').split(/[,;(\n]/, 1);
  return name.trim() || description;
}

function textOf(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'string') return value;
  if (typeof value !== 'object') return String(value);
  if (Array.isArray(value) && value.every((each) => typeof each === 'string')) return value.join(', ');
  if (Object.keys(value).length === 0) return '';
  try {
    return JSON.stringify(value);
  } catch (error) {
    // Deeper than can be written out: whatever else the report says is still read.
    if (error instanceof RangeError) return '…';
    throw error;
  }
}

/** `20260703`, as openFDA writes days, or the ISO form. */
function dayOf(text: string | null): string | null {
  const match = /^(\d{4})-?(\d{2})-?(\d{2})\b/.exec(text ?? '');
  if (match === null) return null;
  const [year = 0, month = 0, day = 0] = match.slice(1).map(Number);
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' }).toString();
  } catch {
    return null;
  }
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return value === null ? 'null' : 'an object';
  return typeof value === 'string' ? `the text "${value.slice(0, 40)}"` : String(value);
}
