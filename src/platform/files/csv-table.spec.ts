import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maximumCellCharacters, maximumFileRows, readCsvTable } from './csv-table.js';

const columns = [
  { name: 'maker', needed: true },
  { name: 'use by', needed: true },
  { name: 'note', needed: false },
] as const;
const read = (text: string) => readCsvTable(text, columns);
const cellsOf = (text: string) => read(text).rows.map(({ cells }) => cells);

describe('a table', () => {
  it('is read with comma, semicolon or tab, with or without a byte order mark, with any end of line', () => {
    const expected = [{ maker: 'Halden', 'use by': '2027-06', note: 'a' }];
    for (const delimiter of [',', ';', '\t'])
      for (const end of ['\r\n', '\n', '\r'])
        for (const mark of ['', '\uFEFF']) {
          const lines = [
            ['maker', 'use by', 'note'],
            ['Halden', '2027-06', 'a'],
          ];
          const text = mark + lines.map((line) => line.join(delimiter)).join(end) + end;
          expect(cellsOf(text), JSON.stringify(text)).toEqual(expected);
        }
  });

  it('finds columns by their names in any order, whatever their capitals, underscores and hyphens', () => {
    expect(cellsOf('Use_By,NOTE,Maker\n2027-06,x,Halden')).toEqual([
      { maker: 'Halden', 'use by': '2027-06', note: 'x' },
    ]);
    expect(cellsOf('"maker";"use-by"\n"Halden, Sons";2027')).toEqual([
      { maker: 'Halden, Sons', 'use by': '2027' },
    ]);
  });

  it('names every fault of its header at once', () => {
    const { faults, rows } = read('maker,colour,note,note,\nHalden,red,a,b,c');
    expect(rows).toEqual([]);
    expect(faults.map(({ row, column }) => [row, column])).toEqual([
      [1, 'colour'],
      [1, 'note'],
      [1, ''],
      [1, 'use by'],
    ]);
    expect(faults[0]?.message).toContain('unknown column "colour"');
    expect(faults[3]?.message).toBe('The column "use by" is missing. Add it.');
  });

  it('counts rows as a spreadsheet does, blank ones and lines inside cells too', () => {
    const { rows } = read('maker,use by,note\n\nA,2027,"one\ntwo"\n,,\nB,2027,x\n');
    expect(rows.map(({ number }) => number)).toEqual([3, 5]);
    expect(rows[0]?.faults[0]).toMatchObject({
      column: 'note',
      message: expect.stringContaining('line break'),
    });
  });

  it('tells cells that are too long, unreadable or unseen, and rows of another width', () => {
    const long = 'x'.repeat(maximumCellCharacters + 1);
    const { rows } = read(`maker,use by,note\n${long},J\uFFFDrdis,a\u0000b\nA,B\nA,B,C,D`);
    expect(rows.map(({ faults }) => faults.map(({ column }) => column))).toEqual([
      ['maker', 'use by', 'note'],
      [null],
      [null],
    ]);
    expect(rows[0]?.faults[1]?.message).toContain('UTF-8');
  });

  it('holds whole texts in columns that are for them, and as many rows as were asked for', () => {
    const texts = [
      { name: 'maker', needed: true },
      { name: 'note', needed: false, textOf: 500 },
    ] as const;
    const told = (text: string, mostRows = 3) => readCsvTable(text, texts, mostRows);
    expect(told('maker,note\nA,"one\n\ttwo"\n').rows).toEqual([
      { number: 2, cells: { maker: 'A', note: 'one\n\ttwo' }, faults: [] },
    ]);
    expect(
      told(`maker,note\nA,${'x'.repeat(501)}\n"A\nB",a\u0001b\n`).rows.map(({ faults }) => faults),
    ).toEqual([
      [{ column: 'note', message: expect.stringContaining('at most 500') }],
      [
        { column: 'maker', message: expect.stringContaining('line break') },
        { column: 'note', message: expect.stringContaining('cannot be seen') },
      ],
    ]);
    expect(told('maker,note\nA,\nB,\nC,\nD,\n').faults[0]?.message).toContain('more than 3 rows');
  });

  it('says where its quotes go wrong', () => {
    expect(read('maker,use by\nA,2027\n"B,2027\n').faults).toMatchObject([
      { row: 3, message: expect.stringContaining('never closed') },
    ]);
    expect(read('maker,use by\nA,2027\nB "b",2027\n').faults).toMatchObject([{ row: 3 }]);
    expect(read('maker,use by\n"A"x,2027\n').faults).toMatchObject([{ row: 2 }]);
  });

  it('is refused when it is empty, has no rows, or too many', () => {
    for (const text of ['', ' \n ', '\uFEFF']) expect(read(text).faults[0]?.message).toContain('empty');
    expect(read('maker,use by\n\n').faults[0]?.message).toContain('no rows');
    const rows = 'A,2027\n'.repeat(maximumFileRows);
    expect(read(`maker,use by\n${rows}`).rows).toHaveLength(maximumFileRows);
    expect(read(`maker,use by\n${rows}A,2027\n`).faults[0]?.message).toContain('more than 1000');
  });

  /** RFC 4180, section 2, rules 1 to 7, with its own examples [M]. */
  it('follows RFC 4180', () => {
    const letters = [
      { name: 'aaa', needed: true },
      { name: 'bbb', needed: true },
      { name: 'ccc', needed: true },
    ] as const;
    const body = (text: string) =>
      readCsvTable(`aaa,bbb,ccc\r\n${text}`, letters).rows.map(({ cells }) => cells);
    const zzz = { aaa: 'zzz', bbb: 'yyy', ccc: 'xxx' };
    expect(body('zzz,yyy,xxx\r\n')).toEqual([zzz]);
    expect(body('zzz,yyy,xxx')).toEqual([zzz]);
    expect(body('"zzz","yyy","xxx"\r\nzzz,yyy,xxx')).toEqual([zzz, zzz]);
    expect(body('"zzz","y,y","x""x"')).toEqual([{ aaa: 'zzz', bbb: 'y,y', ccc: 'x"x' }]);
  });

  it('gives back every row that another writer wrote, whatever text is in its cells', () => {
    const cell = fc
      .oneof(
        fc.string({ unit: 'grapheme', maxLength: 20 }),
        fc.constantFrom('=1+1', '+43 1 5550100', '-2', '@x', "'=1", '"', '""', 'a,b', 'a;b', 'a\tb', ' x '),
      )
      .map((text) => text.replace(/[\p{Cc}\p{Cs}\uFFFD\uFEFF]/gu, '').trim());
    const row = fc.record({ maker: cell, 'use by': cell, note: cell });
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 8 }),
        fc.constantFrom(',', ';', '\t'),
        fc.constantFrom('windows', 'unix'),
        fc.boolean(),
        fc.boolean(),
        (rows, delimiter, record_delimiter, quoted, bom) => {
          const text = stringify(rows, {
            header: true,
            columns: ['maker', 'use by', 'note'],
            delimiter,
            record_delimiter,
            quoted,
            bom,
          });
          const written = rows
            .map((each) => Object.fromEntries(Object.entries(each).filter(([, value]) => value !== '')))
            .filter((each) => Object.keys(each).length > 0);
          const { rows: found, faults } = read(text);
          if (written.length === 0) expect(faults[0]?.message).toContain('no rows');
          else expect(found.map(({ cells }) => cells)).toEqual(written);
        },
      ),
    );
  });
});
