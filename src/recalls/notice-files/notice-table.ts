import { readWrittenDay } from '../../identity/written-day.js';
import type { DaySpan, LotTerm } from '../../stock/lot-matching/lot-scope.js';
import { readUseBy } from '../../stock/use-by.js';
import { type NoticeCells, type NoticeColumn, noticeColumns } from './notice-columns.js';
import { fieldName, type NoticeRecord, type RecordProduct, recordText } from './notice-record.js';
import { numbersOfTrade } from './numbers-of-trade.js';

export interface NoticeCellFault {
  column: NoticeColumn;
  /** Words that follow the name of the column. */
  message: string;
}

/** A row of a table of notices, read by itself. */
export interface NoticeRow {
  number: number;
  cells: NoticeCells;
  product: RecordProduct;
  /** ISO `YYYY-MM-DD`. */
  issuedOn: string | null;
  faults: NoticeCellFault[];
}

const longestCode = 100;
/** Between several codes in one cell; a code may have one of these itself, so the whole cell is taken for one too. */
const betweenCodes = /\s*[,;\n]\s*/;

/**
 * Reads a row by itself. A row that names neither lots nor days leaves its lots to be read in its text, when it has one;
 * without one it names none, so that each lot of the product may be meant.
 * @param cells texts without spaces around them; an empty cell is left out
 */
export function readNoticeRow(number: number, cells: NoticeCells): NoticeRow {
  const faults: NoticeCellFault[] = [];
  const fault = (column: NoticeColumn, message: string): null => {
    faults.push({ column, message });
    return null;
  };
  const flag = (column: 'all lots' | 'others too'): boolean => {
    const cell = cells[column]?.toLowerCase() ?? 'no';
    if (cell !== 'yes' && cell !== 'no') fault(column, `"${cell.slice(0, 40)}" is neither yes nor no`);
    return cell === 'yes';
  };
  const terms = termsOf(cells, flag('all lots'), fault);
  const isText = terms.length === 0 && cells['notice text'] !== undefined;
  return {
    number,
    cells,
    product: {
      makerName: cells.maker ?? null,
      productName: cells.product ?? null,
      shade: cells.shade ?? null,
      gtins: gtinsOf(cells.gtin, fault),
      lots: isText ? null : terms,
      openEnded: flag('others too'),
    },
    issuedOn: dayOf(cells['issued on'], fault),
    faults,
  };
}

type TellFault = (column: NoticeColumn, message: string) => null;

function termsOf(cells: NoticeCells, allLots: boolean, fault: TellFault): LotTerm[] {
  const useBy = spanOf(cells, 'use by', fault);
  const manufactured = spanOf(cells, 'manufactured', fault);
  const terms: LotTerm[] = [];
  if (allLots) terms.push({ kind: 'all lots' });
  if (cells.lot !== undefined) {
    const codes = cells.lot.split(betweenCodes).filter((code) => code !== '');
    const long = codes.find((code) => code.length > longestCode);
    if (long !== undefined) fault('lot', `"${long.slice(0, 40)}…" is longer than any lot`);
    if (cells.lot.length <= longestCode) codes.unshift(cells.lot);
    for (const code of new Set(codes)) terms.push({ kind: 'code', code, useBy });
  }
  const [from, through] = [cells['lot from'], cells['lot through']];
  if (from !== undefined && through !== undefined) terms.push({ kind: 'code range', from, through, useBy });
  else if (from !== undefined)
    fault('lot through', 'is empty; write where the range ends, or write one lot in "lot"');
  else if (through !== undefined)
    fault('lot from', 'is empty; write where the range begins, or write one lot in "lot"');
  const named = terms.some(({ kind }) => kind === 'code' || kind === 'code range');
  if (useBy !== null && !named) terms.push({ kind: 'use-by', useBy });
  if (manufactured !== null) {
    // Beside a code it could only narrow, which is not for a file to do; alone it names lots.
    if (!named) terms.push({ kind: 'manufactured', manufactured });
  }
  return terms;
}

/** A day, a month or a year at each end, all of it included; null when neither is said. */
function spanOf(cells: NoticeCells, what: 'use by' | 'manufactured', fault: TellFault): DaySpan | null {
  const end = (column: NoticeColumn, isFirst: boolean): string | null => {
    const cell = cells[column];
    if (cell === undefined) return null;
    const read = readUseBy(cell);
    if ('error' in read) return fault(column, `is no date: ${read.error.message}`);
    if (!isFirst) return read.lastDay;
    return `${cell.trim()}-01-01`.slice(0, 10);
  };
  const span = { from: end(`${what} from`, true), through: end(`${what} through`, false) };
  if (span.from !== null && span.through !== null && span.from > span.through) {
    fault(`${what} through`, `${span.through} lies before ${span.from}, where it begins`);
  }
  return span.from === null && span.through === null ? null : span;
}

function gtinsOf(cell: string | undefined, fault: TellFault): string[] {
  if (cell === undefined) return [];
  const gtins = numbersOfTrade(cell);
  if (gtins.length === 0) {
    fault('gtin', `"${cell.slice(0, 40)}" is no GTIN of 8, 12, 13 or 14 digits with a right check digit`);
  }
  return gtins;
}

function dayOf(cell: string | undefined, fault: TellFault): string | null {
  if (cell === undefined) return null;
  const read = readWrittenDay(cell);
  return 'fault' in read ? fault('issued on', read.fault) : read.day;
}

/** Rows as notices: those with one reference are one, in the order in which they begin; a row without one is its own. */
export function noticesOfRows(rows: readonly NoticeRow[]): NoticeRecord[] {
  const notices = new Map<string, NoticeRow[]>();
  for (const row of rows) {
    const { reference } = row.cells;
    const key = reference === undefined ? `row ${row.number}` : `reference ${reference}`;
    const others = notices.get(key);
    if (others === undefined) notices.set(key, [row]);
    else others.push(row);
  }
  return [...notices.values()].map(noticeOf);
}

function noticeOf(rows: readonly NoticeRow[]): NoticeRecord {
  const said = (column: NoticeColumn): string | null => {
    for (const { cells } of rows) if (cells[column] !== undefined) return cells[column];
    return null;
  };
  const texts = rows.map(({ cells }) =>
    recordText(noticeColumns.map(({ name }) => [fieldName(name), cells[name] ?? ''] as const)),
  );
  return {
    number: rows[0]?.number ?? 0,
    reference: said('reference'),
    issuer: said('issuer') ?? said('maker'),
    issuedOn: rows.find(({ issuedOn }) => issuedOn !== null)?.issuedOn ?? null,
    classification: said('classification'),
    risk: said('risk'),
    remedy: said('remedy'),
    text: texts.join('\n\n'),
    products: merged(rows.map(({ product }) => product)),
    remarks: rows.every(namesNothing)
      ? [
          {
            code: 'names nothing',
            message: 'It names neither a product nor a lot. Read it and write what it means.',
          },
        ]
      : [],
  };
}

function namesNothing({ product: { makerName, productName, shade, gtins, lots } }: NoticeRow): boolean {
  return [makerName, productName, shade, ...gtins].every((name) => name === null) && lots?.length === 0;
}

/** Lots of one product stand together. */
function merged(products: readonly RecordProduct[]): RecordProduct[] {
  const found = new Map<string, RecordProduct>();
  for (const product of products) {
    const { makerName, productName, shade, gtins, lots, openEnded } = product;
    const key = JSON.stringify([makerName, productName, shade, gtins]);
    const other = found.get(key);
    if (other === undefined) {
      found.set(key, { ...product, lots: lots && [...lots] });
      continue;
    }
    // Where one row names lots and another none, those are certain and the rest may be meant too.
    const isWider = !lots?.length !== !other.lots?.length;
    other.openEnded ||= openEnded || isWider;
    if (other.lots === null) other.lots = lots && [...lots];
    else other.lots.push(...(lots ?? []));
  }
  return [...found.values()];
}
