import writeExcelFile, { type Cell } from 'write-excel-file/node';

/** A sheet as it is to be written: the header's names, then rows of as many cells. */
export interface Sheet {
  /** At most 31 characters, none of `: \ / ? * [ ]`. */
  name: string;
  header: readonly string[];
  rows: readonly (readonly (string | number | null)[])[];
}

/** What a cell holds at most; programs would call the file damaged otherwise (Excel's published limits [S]). */
export const maximumSheetCellCharacters = 32_767;

const narrowest = 8;
const widest = 60;
/** So many rows are looked at for how wide a column is. */
const measuredRows = 500;

/** What every object has of its own: the writer keeps its texts in one, and would take these for texts it knows. */
const inherited = new Set(Object.getOwnPropertyNames(Object.prototype));
/**
 * Characters that XML 1.0 has no way to write, halves of characters, and CR, which XML readers turn into LF; further what the
 * writer drops: all that XML 1.0 (2.2 [M]) discourages, which are more controls and U+FDD0 to U+FDEF, and U+FFFD.
 */
const unwritable = /(?![\t\n])\p{Cc}|[\uFDD0-\uFDEF\uFFFD-\uFFFF]|\p{Cs}/gu;
/** Code points beyond U+FFFF that are no characters: the writer loses what stands behind one. */
const noCharacter = /(?=[\u{10000}-\u{10FFFF}])\p{Noncharacter_Code_Point}/gu;
const escaped = (character: string) =>
  `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;

/**
 * A text in the notation of ECMA-376, part 1, 22.9.2.19 (ST_Xstring) [M]: `_xHHHH_` stands for a character that XML cannot
 * hold, and `_x005F_` for the underscore of a text that looks like one of these by itself.
 */
export function sheetText(text: string): string {
  const short =
    text.length > maximumSheetCellCharacters
      ? `${text.slice(0, maximumSheetCellCharacters - 1).replace(/[\uD800-\uDBFF]$/, '')}…`
      : text;
  const written = short
    .replace(noCharacter, '\uFFFD')
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replace(unwritable, escaped);
  return inherited.has(written) ? `${escaped(written)}${written.slice(1)}` : written;
}

/**
 * Writes a sheet as an Office Open XML workbook (.xlsx), whole and in memory. Texts are cells of the type text in the
 * format text, so that none runs as a formula, neither when it is opened nor when somebody edits it; numbers are numbers.
 * The header is bold and stays in sight.
 */
export function writeSpreadsheet({ name, header, rows }: Sheet): Promise<Buffer> {
  const cells: Cell[][] = [header.map((title) => ({ ...textCell(title), fontWeight: 'bold' }))];
  for (const row of rows) {
    cells.push(
      row.map((value) =>
        value === null || value === '' ? null : typeof value === 'number' ? value : textCell(value),
      ),
    );
  }
  const columns = header.map((title, index) => ({ width: widthOf(title, rows, index) }));
  return writeExcelFile(cells, { sheet: name, columns, stickyRowsCount: 1 }).toBuffer();
}

function textCell(text: string) {
  return { value: sheetText(text), type: String, format: '@' } as const;
}

/** In characters, wide enough for most of what stands there. */
function widthOf(title: string, rows: Sheet['rows'], index: number): number {
  let longest = title.length;
  for (const row of rows.slice(0, measuredRows)) {
    longest = Math.max(longest, String(row[index] ?? '').length);
  }
  return Math.min(widest, Math.max(narrowest, longest + 2));
}
