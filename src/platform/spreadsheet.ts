import { Worker } from 'node:worker_threads';
import { invalidField, Problem } from './problem.js';
import type { Sheet } from './spreadsheet-file.js';

/** Rows of a sheet beside its header: the format has no more (ECMA-376; Excel's published limits [S]). */
export const maximumSheetRows = 1_048_575;
/** A workbook is put together in memory, about half a kilobyte a cell at its height. */
export const maximumSheetCells = 1_000_000;
export const spreadsheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** One at a time, so that several do not add up in memory. */
let turn: Promise<unknown> = Promise.resolve();

/**
 * Writes rows as an .xlsx file, in a thread of its own, so that whoever is being served meanwhile does not wait. The same
 * columns and rows as for `csvOf`, but the format cannot be written row by row: what is too long for it is refused, and
 * CSV has no such limit.
 * @param name of the sheet, at most 31 characters
 * @param columns names of the columns, which are the properties of a row
 * @throws Problem invalid-fields when there are too many rows, before anything is sent
 */
export async function spreadsheetOf<Column extends string>(
  name: string,
  columns: readonly Column[],
  rows: AsyncIterable<Record<Column, string | number | null>>,
): Promise<Buffer> {
  const most = Math.min(maximumSheetRows, Math.floor(maximumSheetCells / columns.length));
  const file = turn.then(async () => {
    const sheet: Sheet = { name, header: columns, rows: await gathered(columns, rows, most) };
    return inThread(sheet);
  });
  turn = file.catch(() => undefined);
  return file;
}

async function gathered<Column extends string>(
  columns: readonly Column[],
  rows: AsyncIterable<Record<Column, string | number | null>>,
  most: number,
): Promise<(string | number | null)[][]> {
  const cells: (string | number | null)[][] = [];
  for await (const row of rows) {
    if (cells.length === most) {
      throw invalidField(
        'format',
        `There are more than ${most} rows, and a spreadsheet of ${columns.length} columns is written with at most so many. Ask for CSV, which has no limit.`,
      );
    }
    cells.push(columns.map((column) => row[column]));
  }
  return cells;
}

function inThread(sheet: Sheet): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./spreadsheet.worker.js', import.meta.url), { workerData: sheet });
    worker.once('message', (file: Uint8Array) =>
      resolve(Buffer.from(file.buffer, file.byteOffset, file.byteLength)),
    );
    worker.once('error', reject);
    worker.once('exit', () => {
      // Without effect when the file came first.
      reject(new Problem(503, 'not-ready', 'The file was not written to its end. Ask again.'));
    });
  });
}
