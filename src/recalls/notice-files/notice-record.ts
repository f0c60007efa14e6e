import type { LotTerm } from '../../stock/lot-matching/lot-scope.js';

export const noticeFileKinds = ['csv', 'enforcement json', 'safety gate xml'] as const;
export type NoticeFileKind = (typeof noticeFileKinds)[number];

/** More notices a file may not hold: a year of weekly reports has fewer. */
export const maximumNoticeRecords = 5_000;
/** Rows of a table, which names a lot in each. */
export const maximumNoticeRows = 20_000;
/** So long may the text of one notice be: about a megabyte. */
export const maximumRecordCharacters = 1_048_576;

/** One notice of a file: what its fields say, and all of them written out as a text. What is null is not said. */
export interface NoticeRecord {
  /** Which of the file, from 1; of a table the row, as a spreadsheet counts it. */
  number: number;
  /** Under which it is filed. */
  reference: string | null;
  /** Who published it: a maker, an authority, a country. */
  issuer: string | null;
  /** ISO `YYYY-MM-DD`. */
  issuedOn: string | null;
  classification: string | null;
  risk: string | null;
  remedy: string | null;
  /** Everything that stands there, a line a field: it is kept, and lots are read from it. */
  text: string;
  /** What it is about, as fields of their own say it. */
  products: RecordProduct[];
  /** What a person should know who reads it. */
  remarks: RecordRemark[];
}

/** The sentence is English; the code lets a page say it in another language. */
export interface RecordRemark {
  code: 'damaged characters' | 'names nothing';
  message: string;
}

/** A product that a notice names in fields of their own. */
export interface RecordProduct {
  makerName: string | null;
  productName: string | null;
  shade: string | null;
  /** 14 digits each. */
  gtins: string[];
  /** Null: no field is for lots alone, they are to be read in the text. Empty: none is named. */
  lots: LotTerm[] | null;
  openEnded: boolean;
}

/** What a file of notices holds, or why it cannot be read as one. */
export interface NoticeFile {
  records: NoticeRecord[];
  faults: { row: number | null; column: string | null; message: string }[];
}

/** Halves of characters and NUL, which no database keeps; other marks that cannot be seen, but not ends of lines and tabs. */
const unkeepable = /[^\P{Cc}\t\n]|\p{Cs}/gu;

/** Lines `Name: value` of what is said, in the order given; nothing of what is empty. */
export function recordText(fields: readonly (readonly [name: string, value: string])[]): string {
  return fields
    .map(([name, value]) => [name, keepable(value)] as const)
    .filter(([, value]) => value !== '')
    .map(([name, value]) => `${name}: ${value}`)
    .join('\n');
}

/** A text as it can be kept, with what stood there marked where it cannot. */
export function keepable(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(unkeepable, '\uFFFD').trim();
}

const unknown =
  /^(?:unknown|no(?:t)? brand(?:ed)?|none|n\/?a|not (?:known|specified|applicable)|-+|\?+)\.?$/i;

/** Whether a field was filled in by who does not know. */
export function saysUnknown(text: string): boolean {
  return unknown.test(text.trim());
}

/** `batchNumber` and `code_info` in words: "Batch number", "Code info". */
export function fieldName(name: string): string {
  const words = name
    .replace(/[_\s]+/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`)
    .trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What a person should know of a text that was damaged before it came here. */
export function damageRemarks(text: string): RecordRemark[] {
  if (!text.includes('\uFFFD')) return [];
  const message =
    'It holds characters that could not be read. Compare codes and names with the notice itself.';
  return [{ code: 'damaged characters', message }];
}

/** A text in one line of at most so many characters; null when there is nothing. */
export function inOneLine(text: string, mostCharacters: number): string | null {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line.length <= mostCharacters) return line === '' ? null : line;
  return `${line.slice(0, mostCharacters - 1).replace(/[\uD800-\uDBFF]$/, '')}…`;
}
