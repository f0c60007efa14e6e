import { pipeline, Readable } from 'node:stream';
import { stringify } from 'csv-stringify';

/**
 * What a spreadsheet takes for the beginning of a formula, or for nothing before one: OWASP ASVS 5.0, 1.2.10 [S] names
 * = + - @, tab and NUL; OWASP's "CSV Injection" [M] adds the ends of lines and the wide forms of the four signs.
 */
const runsAsFormula = /^['\s]*[=+\-@＝＋－＠]|^'*[\t\r\n\0]/;

/**
 * A cell as text and nothing else: what a spreadsheet would run gets an apostrophe before it, and so does what already
 * looks as if it had been given one, so that taking away one apostrophe always gives back what was there.
 */
export function neutralized(cell: string): string {
  return runsAsFormula.test(cell) ? `'${cell}` : cell;
}

/**
 * Writes rows as CSV by RFC 4180 (comma, CRLF, a header), a row at a time, so that their number does not matter. Begins
 * with a byte order mark, by which spreadsheets know UTF-8. Every export is written here.
 *
 * Texts are neutralized; numbers are written as they are. A reader gets the text back by removing the first character of
 * a cell that begins with an apostrophe and, without it, still begins a formula by the rule above.
 * @param columns names of the columns, which are the properties of a row
 * @param failed called when the rows could not be read to their end; the file then breaks off
 */
export function csvOf<Column extends string>(
  columns: readonly Column[],
  rows: AsyncIterable<Record<Column, string | number | null>>,
  failed: (error: Error) => void,
): Readable {
  const csv = stringify({
    header: true,
    columns: [...columns],
    bom: true,
    record_delimiter: 'windows',
    cast: { string: neutralized },
    quoted_match: /[\r\n]/,
  });
  return pipeline(Readable.from(rows), csv, (error) => {
    if (error) failed(error);
  });
}
