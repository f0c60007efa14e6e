import { buffer } from 'node:stream/consumers';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvOf, neutralized } from './csv.js';

const formula = /^['\s]*[=+\-@＝＋－＠]|^'*[\t\r\n\0]/;

/** What the documentation tells a reader to do. */
function undone(cell: string): string {
  return cell.startsWith("'") && formula.test(cell.slice(1)) ? cell.slice(1) : cell;
}

const cells = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({
    unit: fc.constantFrom(
      "'",
      '=',
      '+',
      '-',
      '@',
      '\t',
      '\r',
      '\n',
      '\0',
      ' ',
      '"',
      ',',
      ';',
      'a',
      '1',
      '＝',
    ),
  }),
);

async function written(rows: { one: string | number | null; other: string }[]): Promise<string> {
  async function* all() {
    yield* rows;
  }
  const file = csvOf(['one', 'other'], all(), (error) => {
    throw error;
  });
  return (await buffer(file)).toString('utf8');
}

describe('a CSV file', () => {
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '\0=1', ' =1', "'=1", '＝1'])(
    'does not begin a cell with %j',
    (cell) => {
      expect(neutralized(cell)).toBe(`'${cell}`);
    },
  );

  it.each(['', 'Umber', '5-0', 'a=b', "d'or", "'tis", '1,5'])('leaves %j as it is', (cell) => {
    expect(neutralized(cell)).toBe(cell);
  });

  it('begins no cell with a sign that a spreadsheet would run, and gives every text back', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.record({ one: cells, other: cells }), { maxLength: 5 }), async (rows) => {
        // A second reader of RFC 4180.
        const records = parse(await written(rows), { bom: true, record_delimiter: '\r\n' }) as string[][];
        expect(records).toHaveLength(rows.length + 1);
        for (const [index, row] of rows.entries()) {
          const record = records[index + 1] ?? [];
          for (const cell of record) expect(cell).not.toMatch(/^[\s]*[=+\-@＝＋－＠]|^[\t\r\n\0]/);
          expect(record.map(undone)).toEqual([row.one, row.other]);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('writes numbers as numbers, negative ones too, and nothing for null', async () => {
    const lines = (
      await written([
        { one: -5, other: 'x' },
        { one: null, other: '-5' },
      ])
    ).split('\r\n');
    expect(lines).toEqual(['\uFEFFone,other', '-5,x', ",'-5", '']);
  });

  it('tells when the rows cannot be read to their end', async () => {
    async function* breaking(): AsyncGenerator<{ one: string }> {
      yield { one: 'a' };
      throw new Error('the database is gone');
    }
    const told: string[] = [];
    const reading = buffer(csvOf(['one'], breaking(), (error) => void told.push(error.message)));
    await expect(reading).rejects.toThrow('the database is gone');
    expect(told).toEqual(['the database is gone']);
  });
});
