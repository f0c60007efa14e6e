import { Worker } from 'node:worker_threads';
import { invalidField, Problem } from './problem.js';
import type { SheetPart } from './spreadsheet.worker.js';

/** Rows of a sheet beside its header: the format has no more (ECMA-376; Excel's published limits [S]). */
export const maximumSheetRows = 1_048_575;
/** A workbook is put together in memory, with half a kilobyte to a whole one for each cell. */
export const maximumSheetCells = 500_000;
export const spreadsheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

const rowsPerPart = 1_000;

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
  const file = turn.then(() => inThread(name, columns, rows));
  turn = file.catch(() => undefined);
  return file;
}

async function inThread<Column extends string>(
  name: string,
  columns: readonly Column[],
  rows: AsyncIterable<Record<Column, string | number | null>>,
): Promise<Buffer> {
  const worker = new Worker(new URL('./spreadsheet.worker.js', import.meta.url));
  const tell = (part: SheetPart) => worker.postMessage(part);
  const file = fileOf(worker);
  // Whatever is thrown here comes first.
  file.catch(() => undefined);
  try {
    tell({ head: { name, header: columns } });
    for await (const part of partsOf(columns, rows)) tell({ rows: part });
    tell('whole');
    return await file;
  } finally {
    await worker.terminate();
  }
}

function fileOf(worker: Worker): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    worker.once('message', ({ buffer, byteOffset, byteLength }: Uint8Array) =>
      resolve(Buffer.from(buffer, byteOffset, byteLength)),
    );
    worker.once('error', reject);
    // Without effect when the file came first.
    worker.once('exit', () =>
      reject(new Problem(503, 'not-ready', 'The file was not written to its end. Ask again.')),
    );
  });
}

async function* partsOf<Column extends string>(
  columns: readonly Column[],
  rows: AsyncIterable<Record<Column, string | number | null>>,
): AsyncGenerator<(string | number | null)[][]> {
  const most = Math.min(maximumSheetRows, Math.floor(maximumSheetCells / columns.length));
  let count = 0;
  let part: (string | number | null)[][] = [];
  for await (const row of rows) {
    count += 1;
    if (count > most) {
      throw invalidField(
        'format',
        `There are more than ${most} rows, and a spreadsheet of ${columns.length} columns is written with at most so many. Ask for CSV, which has no limit.`,
      );
    }
    part.push(columns.map((column) => row[column]));
    if (part.length < rowsPerPart) continue;
    yield part;
    part = [];
  }
  yield part;
}
