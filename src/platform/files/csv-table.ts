import { CsvError, type Info, parse } from 'csv-parse/sync';
import type { FileFaultView } from './file-faults.views.js';

export const maximumFileRows = 1_000;
export const maximumCellCharacters = 300;

const delimiters = [',', ';', '\t'] as const;
/** What stands in place of a character that no reader could make out. */
const unreadable = '\uFFFD';
const unseen = /[\p{Cc}\p{Cs}]/u;
/** The same for texts of several lines. */
const unseenInText = /[^\P{Cc}\t\r\n]|\p{Cs}/u;

export interface TableColumn<Name extends string> {
  name: Name;
  /** Whether the file must have it. */
  needed: boolean;
  /** Its cells hold whole texts of up to so many characters, with lines; else a line of `maximumCellCharacters`. */
  textOf?: number;
}

export interface TableRow<Name extends string> {
  /** As a spreadsheet counts it: the header is row 1. */
  number: number;
  /** What stands there, without spaces around it; an empty cell is left out. */
  cells: Partial<Record<Name, string>>;
  faults: { column: Name | null; message: string }[];
}

export interface Table<Name extends string> {
  rows: TableRow<Name>[];
  /** Why the file as a whole cannot be read, or its header. */
  faults: FileFaultView[];
}

/**
 * Reads a table from CSV (RFC 4180) with comma, semicolon or tab, whichever splits the header into most columns that are
 * known; with or without a byte order mark, with any end of line. Columns stand in any order and are found by their
 * names, in which capitals, underscores and hyphens do not matter. Cells are text and nothing else: what a spreadsheet
 * would take for a formula stays as it is written.
 * @param mostRows beside the header
 */
export function readCsvTable<Name extends string>(
  text: string,
  columns: readonly TableColumn<Name>[],
  mostRows = maximumFileRows,
): Table<Name> {
  const whole = (message: string, row: number | null = null): Table<Name> => ({
    rows: [],
    faults: [{ row, column: null, message }],
  });
  if (text.replace('\uFEFF', '').trim() === '')
    return whole('The file is empty. It needs a row of column names first.');
  const records = readRecords(text, columns, mostRows);
  if ('message' in records) return whole(records.message, records.row);
  const [header, ...body] = records;
  if (header === undefined) return whole('The file is empty. It needs a row of column names first.');

  const faults: FileFaultView[] = [];
  const found = header.map((cell) => columns.find(({ name }) => folded(name) === folded(cell))?.name ?? null);
  for (const [index, cell] of header.entries()) {
    const name = found[index] ?? null;
    if (name === null) {
      const allowed = columns.map(({ name }) => name).join(', ');
      const shown = cell.trim() === '' ? 'a column without a name' : `an unknown column "${shortened(cell)}"`;
      faults.push({
        row: 1,
        column: shortened(cell),
        message: `The file has ${shown}. Known are: ${allowed}. Rename it or take it out.`,
      });
    } else if (found.indexOf(name) !== index) {
      faults.push({
        row: 1,
        column: name,
        message: `The column "${name}" stands there twice. Take one out.`,
      });
    }
  }
  for (const { name, needed } of columns) {
    if (!needed || found.includes(name)) continue;
    faults.push({ row: 1, column: name, message: `The column "${name}" is missing. Add it.` });
  }
  if (faults.length > 0) return { rows: [], faults };

  const headed = found.flatMap((name) => columns.find((column) => column.name === name) ?? []);
  const rows = body.flatMap((record, index): TableRow<Name>[] =>
    record.every((cell) => cell.trim() === '') ? [] : [readRow(record, index + 2, headed)],
  );
  if (rows.length === 0) return whole('The file has column names but no rows. Add what is to be taken in.');
  if (rows.length > mostRows) {
    return whole(
      `The file has more than ${mostRows} rows; at most so many are taken in at a time. Bring it in parts.`,
    );
  }
  return { rows, faults: [] };
}

function readRow<Name extends string>(
  record: string[],
  number: number,
  header: readonly TableColumn<Name>[],
): TableRow<Name> {
  const row: TableRow<Name> = { number, cells: {}, faults: [] };
  if (record.length !== header.length) {
    row.faults.push({
      column: null,
      message: `has ${record.length} cells, but the file has ${header.length} columns; a cell that holds the separator stands in quotes`,
    });
    return row;
  }
  for (const [index, { name, textOf }] of header.entries()) {
    const cell = (record[index] ?? '').trim();
    if (cell === '') continue;
    const message = cellFault(cell, textOf);
    if (message !== null) row.faults.push({ column: name, message });
    else row.cells[name] = cell;
  }
  return row;
}

/**
 * What no text in a file may be, in words that follow the name of its column; null when nothing is wrong.
 * @param textOf so many characters, when it may have several lines
 */
export function cellFault(cell: string, textOf?: number): string | null {
  const most = textOf ?? maximumCellCharacters;
  if (cell.length > most) return `has ${cell.length} characters; at most ${most} are taken`;
  if (cell.includes(unreadable)) return 'holds a character that could not be read; save the file as UTF-8';
  if (textOf !== undefined) {
    return unseenInText.test(cell) ? 'holds a character that cannot be seen; take it out' : null;
  }
  return unseen.test(cell)
    ? 'holds a line break or another character that cannot be seen; take it out'
    : null;
}

/** All records, blank ones too, so that their places are the numbers of rows in a spreadsheet. */
function readRecords<Name extends string>(
  text: string,
  columns: readonly TableColumn<Name>[],
  mostRows: number,
): string[][] | { message: string; row: number | null } {
  const records: string[][] = [];
  try {
    parse(text, {
      bom: true,
      delimiter: delimiterOf(text, columns),
      relax_column_count: true,
      // More than are taken, blank ones among them: enough to say that there are too many.
      to: mostRows * 2,
      on_record: (record: string[]) => {
        records.push(record);
        return null;
      },
    });
    return records;
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const row = (error as CsvError & Partial<Info>).records ?? records.length;
    const said: Partial<Record<string, string>> = {
      CSV_QUOTE_NOT_CLOSED: 'A quote is opened here and never closed.',
      INVALID_OPENING_QUOTE:
        'A quote stands inside a cell that is not in quotes; write it twice and the cell in quotes.',
      CSV_INVALID_CLOSING_QUOTE:
        'Something stands after the closing quote of a cell; a quote in a cell is written twice.',
    };
    return { message: said[error.code] ?? 'From here on the file cannot be read as CSV.', row: row + 1 };
  }
}

function delimiterOf<Name extends string>(text: string, columns: readonly TableColumn<Name>[]): string {
  const [line = ''] = text.replace('\uFEFF', '').split(/\r\n|\r|\n/, 1);
  const known = new Set(columns.map(({ name }) => folded(name)));
  const hits = (delimiter: string) =>
    line.split(delimiter).filter((cell) => known.has(folded(cell.replaceAll('"', '')))).length;
  return delimiters.reduce((best, each) => (hits(each) > hits(best) ? each : best));
}

function folded(name: string): string {
  return name
    .normalize('NFKC')
    .replace(/[\s_-]+/g, ' ')
    .trim()
    .toLowerCase();
}

function shortened(cell: string): string {
  return cell.trim().slice(0, 40);
}
