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
  saysUnknown,
} from './notice-record.js';
import { numbersOfTrade } from './numbers-of-trade.js';

/** An element of the report. */
export interface ReportElement {
  name: string;
  attributes: ReadonlyMap<string, string>;
  elements: readonly ReportElement[];
  readonly text: string;
}

/** Fields that say what a person reads first come first; whatever else is there follows. */
const firstFields = [
  'caseNumber',
  'reference',
  'brand',
  'name',
  'product',
  'type_numberOfModel',
  'batchNumber',
  'batchNumber_barcode',
  'barcode',
  'productionDates',
  'category',
  'riskType',
  'danger',
  'measures',
  'description',
  'level',
  'notifyingCountry',
  'countryOfOrigin',
];
/** The older field for both has a name of two; written so, it is read as lots. */
const ownNames: Readonly<Record<string, string>> = { batchNumber_barcode: 'Batchnumber barcode' };
const identifying = [
  'caseNumber',
  'product',
  'name',
  'brand',
  'batchNumber',
  'batchNumber_barcode',
  'barcode',
];

/**
 * Reads a weekly report of EU Safety Gate (field names as programs that read it publicly use them [S]). A notification is
 * whatever has a case number, as an element or an attribute; so are children of what is called `notifications` or
 * `notification`. Unknown fields are written out, missing ones are missing.
 * @param root of the XML text
 */
export function readSafetyGateReport(root: ReportElement): NoticeFile {
  const whole = (message: string, row: number | null = null): NoticeFile => ({
    records: [],
    faults: [{ row, column: null, message }],
  });
  const notifications = notificationsIn(root);
  if (notifications.length === 0) {
    return whole(
      `The file, whose outermost element is <${root.name.slice(0, 40)}>, holds no notification: none has a caseNumber. Export a weekly report.`,
    );
  }
  if (notifications.length > maximumNoticeRecords) {
    return whole(
      `The file holds ${notifications.length} notifications; at most ${maximumNoticeRecords} are taken in at a time. Bring it in parts.`,
    );
  }
  const reportedOn = reportDayOf(root);
  const records: NoticeRecord[] = [];
  for (const [index, notification] of notifications.entries()) {
    const record = recordOf(notification, index + 1, reportedOn);
    if (record.text.length > maximumRecordCharacters) {
      return whole(
        `Notification ${record.number} has ${record.text.length} characters; at most ${maximumRecordCharacters} are taken.`,
        record.number,
      );
    }
    if (record.text !== '') records.push(record);
  }
  return { records, faults: [] };
}

function notificationsIn(element: ReportElement): ReportElement[] {
  if (isNotification(element)) return [element];
  return element.elements.flatMap(notificationsIn);
}

function isNotification(element: ReportElement): boolean {
  if (fieldOf(element, 'caseNumber') !== undefined) return true;
  if (!/^notifications?$/i.test(element.name)) return false;
  return identifying.some((name) => fieldOf(element, name) !== undefined);
}

/** A field in whichever form it has; undefined when there is none. */
function fieldOf(element: ReportElement, name: string): string | undefined {
  const wanted = name.toLowerCase();
  const child = element.elements.find((each) => each.name.toLowerCase() === wanted);
  if (child !== undefined) return child.text;
  for (const [attribute, value] of element.attributes) if (attribute.toLowerCase() === wanted) return value;
  return undefined;
}

function recordOf(element: ReportElement, number: number, reportedOn: string | null): NoticeRecord {
  const said = (name: string): string | null => {
    const value = keepable(fieldOf(element, name) ?? '').replace(/\s+/g, ' ');
    return value === '' || saysUnknown(value) ? null : value;
  };
  const first = new Set(firstFields.map((name) => name.toLowerCase()));
  const others: (readonly [string, string])[] = [
    ...[...element.attributes].filter(([name]) => !['nil', 'lang', 'schemaLocation'].includes(name)),
    ...element.elements.map(({ name, text }) => [name, text] as const),
  ].filter(([name]) => !first.has(name.toLowerCase()));
  const text = recordText([
    ...firstFields.map((name) => [ownNames[name] ?? fieldName(name), fieldOf(element, name) ?? ''] as const),
    ...others.map(([name, value]) => [fieldName(name), value] as const),
  ]);
  const risk = [said('riskType'), said('danger')].filter((part) => part !== null).join(': ');
  return {
    number,
    reference: said('caseNumber') ?? said('reference'),
    issuer: said('notifyingCountry'),
    issuedOn: reportedOn,
    classification: said('level'),
    risk: risk === '' ? null : risk,
    remedy: said('measures'),
    text,
    products: [
      {
        makerName: said('brand'),
        productName: said('name') ?? said('product'),
        shade: null,
        gtins: numbersOfTrade(`${said('barcode') ?? ''}; ${said('batchNumber_barcode') ?? ''}`),
        lots: null,
        openEnded: false,
      },
    ],
    remarks: damageRemarks(text),
  };
}

/** The day of the report, which stands beside its notifications as DD/MM/YYYY [S] or in the ISO form. */
function reportDayOf(root: ReportElement): string | null {
  const text =
    fieldOf(root, 'report_date') ?? fieldOf(root, 'reportDate') ?? fieldOf(root, 'publicationDate') ?? '';
  const dayFirst = /^(\d{2})\/(\d{2})\/(\d{4})$/.exec(text);
  const yearFirst = /^(\d{4})-(\d{2})-(\d{2})/.exec(text);
  const parts = dayFirst ? [dayFirst[3], dayFirst[2], dayFirst[1]] : yearFirst?.slice(1);
  if (parts === undefined) return null;
  const [year = 0, month = 0, day = 0] = parts.map(Number);
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' }).toString();
  } catch {
    return null;
  }
}
