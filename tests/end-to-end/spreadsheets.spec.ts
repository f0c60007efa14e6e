import { readSheet } from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import type * as Spreadsheets from '../../src/platform/spreadsheet.js';

/** As it is built: the thread is a file of its own, which is only there then. */
const built = '../../dist/src/platform/spreadsheet.js';
const { spreadsheetOf, maximumSheetCells } = (await import(built)) as typeof Spreadsheets;

async function* rowsOf(count: number) {
  for (let number = 1; number <= count; number += 1) yield { lot: `HU-${number}`, pieces: number };
}

describe('a spreadsheet made in a thread', () => {
  it('holds every row, also when several are made at once', async () => {
    const files = await Promise.all(
      [2_500, 1, 0].map((count) => spreadsheetOf('Lots', ['lot', 'pieces'], rowsOf(count))),
    );
    const sheets = await Promise.all(files.map((file) => readSheet(file)));
    expect(sheets.map((rows) => rows.length)).toEqual([2_501, 2, 1]);
    expect(sheets[0]?.[0]).toEqual(['lot', 'pieces']);
    expect(sheets[0]?.at(-1)).toEqual(['HU-2500', 2_500]);
  });

  it('is refused when it is too long, and the next one is made all the same', async () => {
    const columns = Array.from({ length: 1_000 }, (_, index) => `column ${index}`);
    async function* wide(count: number) {
      const row = Object.fromEntries(columns.map((column) => [column, null]));
      for (let number = 0; number < count; number += 1) yield row;
    }
    const most = maximumSheetCells / columns.length;
    await expect(spreadsheetOf('Wide', columns, wide(most + 1))).rejects.toMatchObject({
      status: 400,
      detail: expect.stringContaining(`more than ${most} rows`),
    });
    expect(await spreadsheetOf('Wide', columns, wide(1))).toBeInstanceOf(Buffer);
  });

  it('fails when its rows cannot be read to their end', async () => {
    async function* breaking() {
      yield { lot: 'A' };
      throw new Error('the database is gone');
    }
    await expect(spreadsheetOf('Lots', ['lot'], breaking())).rejects.toThrow('the database is gone');
  });
});
