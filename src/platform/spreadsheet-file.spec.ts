import { inflateRawSync } from 'node:zlib';
import { parseXml, type XmlElement } from '@rgrove/parse-xml';
import fc from 'fast-check';
import { readSheet } from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import { maximumSheetCellCharacters, type Sheet, sheetText, writeSpreadsheet } from './spreadsheet-file.js';

const sheetOf = (rows: Sheet['rows'], header = rows[0]?.map((_, index) => `column ${index}`) ?? ['one']) =>
  writeSpreadsheet({ name: 'Exposures', header, rows });

/** The files of a ZIP archive by its central directory (PKWARE APPNOTE 4.3.12 [M]), read by no part of the writer. */
function filesIn(zip: Buffer): Map<string, string> {
  const files = new Map<string, string>();
  const end = zip.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
  let at = zip.readUInt32LE(end + 16);
  for (let count = zip.readUInt16LE(end + 10); count > 0; count -= 1) {
    const size = zip.readUInt32LE(at + 20);
    const nameLength = zip.readUInt16LE(at + 28);
    const local = zip.readUInt32LE(at + 42);
    const start = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28);
    const name = zip.toString('utf8', at + 46, at + 46 + nameLength);
    const packed = zip.subarray(start, start + size);
    files.set(name, (zip.readUInt16LE(at + 10) === 8 ? inflateRawSync(packed) : packed).toString('utf8'));
    at += 46 + nameLength + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32);
  }
  return files;
}

function elements(node: { children: unknown[] }, name: string): XmlElement[] {
  return (node.children as XmlElement[]).flatMap((child) =>
    child.type === 'element' ? [...(child.name === name ? [child] : []), ...elements(child, name)] : [],
  );
}

/** What a program that reads ECMA-376, part 1, 22.9.2.19 [M] makes of a text in a sheet. */
const understood = (text: string) =>
  text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, digits: string) =>
    String.fromCharCode(Number.parseInt(digits, 16)),
  );

const hostile = fc.constantFrom(
  '=1+1',
  '=HYPERLINK("http://example.org","x")',
  '+1',
  '-1',
  '@SUM(A1)',
  "'=1",
  '\t=1',
  '<v>1</v>',
  'a & b "c"',
  ' x ',
  'a\r\nb',
  '_x0041_',
  '_x005F_',
  '\u0000\u0007',
  '\u007F\u0080\u009F',
  '\uFDD0',
  '\uFFFE',
  '\uD800',
  '\u{10FFFE}behind',
  'constructor',
  '__proto__',
  'toString',
  'hasOwnProperty',
  '00112',
  '1e5',
  '2026-11-25',
  'TRUE',
);
const cell = fc.oneof(fc.string({ unit: 'grapheme' }), fc.string({ unit: 'binary' }), hostile);

/** What comes back of a text: nothing of an empty one, and a sign for code points beyond U+FFFF that are no characters. */
const kept = (text: string) =>
  text === ''
    ? null
    : [...text]
        .map((each) => ((each.codePointAt(0) ?? 0) % 0x1_0000 >= 0xfffe && each.length > 1 ? '\uFFFD' : each))
        .join('');

describe('a spreadsheet', () => {
  it('gives every text and number back to a reader, cell by cell', async () => {
    const value = fc.oneof(
      cell,
      fc.integer(),
      fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => number + 0),
      fc.constant(null),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(value, value, fc.constant(1)), { minLength: 1, maxLength: 6 }),
        async (rows) => {
          const [sheet] = await sharedTexts(await sheetOf(rows));
          const expected = rows.map((row) =>
            row.map((each) => (typeof each === 'string' ? kept(each) : each)),
          );
          expect(sheet).toEqual(expected);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('loses no character of the first 65,536, not even halves of characters and what is none', async () => {
    const perText = 1_024;
    const rows = Array.from({ length: 0x1_0000 / perText }, (_, row) => [
      Array.from({ length: perText }, (_, index) => `${String.fromCharCode(row * perText + index)}.`).join(
        '',
      ),
    ]);
    const [sheet] = await sharedTexts(await sheetOf(rows));
    expect(sheet?.map(([text]) => text)).toEqual(rows.map(([text]) => text));
  });

  it('shows a sign for each code point beyond that is no character, and loses nothing behind it', async () => {
    const planes = Array.from({ length: 16 }, (_, index) => (index + 1) * 0x1_0000);
    const rows = planes.map((plane) => [
      String.fromCodePoint(plane + 0xfffd, plane + 0xfffe, plane + 0xffff, 0x61),
    ]);
    const [sheet] = await sharedTexts(await sheetOf(rows));
    expect(sheet?.map(([text]) => text)).toEqual(
      planes.map((plane) => `${String.fromCodePoint(plane + 0xfffd)}\uFFFD\uFFFDa`),
    );
  });

  /** By the reader of the same author: it shows that this reader reads it, not that others do. */
  it('is read by a reader of spreadsheets', async () => {
    const rows = [
      ['2026-11-25', 'Umber', '=1+1', '00112', 3, -2.5],
      ['2026-11-26', ' Ochre ', 'Größe „1“ 標籤', '1e5', 0, null],
    ];
    const data = await readSheet(await sheetOf(rows, ['day', 'shade', 'note', 'lot', 'pieces', 'amount']), {
      trim: false,
    });
    expect(data).toEqual([['day', 'shade', 'note', 'lot', 'pieces', 'amount'], ...rows]);
  });

  /** ECMA-376, part 1, 18.3.1.4, 18.18.11 and 18.8.30 [M]: `t="s"` is a text of the shared ones, the format "@" is text. */
  it('has cells of the type and format text, no formula, a bold header that stays in sight, and widths', async () => {
    const files = filesIn(await sheetOf([['=1+1', 7]], ['note', 'pieces']));
    const sheet = parseXml(files.get('xl/worksheets/sheet1.xml') ?? '');
    const styles = parseXml(files.get('xl/styles.xml') ?? '');
    const cells = elements(sheet, 'c');
    expect(cells.map(({ attributes }) => [attributes.r, attributes.t])).toEqual([
      ['A1', 's'],
      ['B1', 's'],
      ['A2', 's'],
      ['B2', undefined],
    ]);
    expect(elements(sheet, 'f')).toEqual([]);
    const formats = elements(styles, 'cellXfs').flatMap((list) => elements(list, 'xf'));
    const styleOf = (index: number) => formats[Number(cells[index]?.attributes.s)];
    const codes = new Map(
      elements(styles, 'numFmt').map(({ attributes }) => [attributes.numFmtId, attributes.formatCode]),
    );
    for (const index of [0, 1, 2]) expect(codes.get(styleOf(index)?.attributes.numFmtId)).toBe('@');
    expect(codes.get(styleOf(3)?.attributes.numFmtId)).toBeUndefined();
    const fonts = elements(styles, 'fonts').flatMap((list) => elements(list, 'font'));
    const isBold = (index: number) =>
      elements(fonts[Number(styleOf(index)?.attributes.fontId)] ?? { children: [] }, 'b').length === 1;
    expect([0, 1, 2].map(isBold)).toEqual([true, true, false]);
    expect(elements(sheet, 'pane')[0]?.attributes).toMatchObject({ ySplit: '1', state: 'frozen' });
    expect(elements(sheet, 'col').map(({ attributes }) => Number(attributes.width))).toEqual([8, 8]);
    expect(elements(parseXml(files.get('xl/workbook.xml') ?? ''), 'sheet')[0]?.attributes.name).toBe(
      'Exposures',
    );
  });

  it('of no rows has its header', async () => {
    expect(await readSheet(await sheetOf([], ['day', 'lot']))).toEqual([['day', 'lot']]);
  });

  it('shortens a text that no program would take in one cell, visibly', () => {
    const long = `${'x'.repeat(maximumSheetCellCharacters - 2)}😀😀`;
    expect(sheetText(long)).toHaveLength(maximumSheetCellCharacters - 1);
    expect(sheetText(long).endsWith('x…')).toBe(true);
    expect(sheetText('x'.repeat(maximumSheetCellCharacters))).not.toContain('…');
  });
});

/** The rows under the header, read with a parser of XML. */
async function sharedTexts(file: Buffer): Promise<(string | number | null)[][][]> {
  const files = filesIn(file);
  const texts = elements(parseXml(files.get('xl/sharedStrings.xml') ?? ''), 't').map((each) => each.text);
  const sheet = parseXml(files.get('xl/worksheets/sheet1.xml') ?? '');
  const rows = elements(sheet, 'row').slice(1);
  return [
    rows.map((row) => {
      const cells: (string | number | null)[] = [null, null, null];
      for (const each of elements(row, 'c')) {
        const column = (each.attributes.r ?? '').charCodeAt(0) - 65;
        const text = texts[Number(each.text)];
        cells[column] = each.attributes.t === 's' ? understood(text ?? '?') : Number(each.text);
      }
      return cells;
    }),
  ];
}
