/**
 * Tables in a text: a line whose cells are all labels, and the lines below it that have cells too. Cells are parted by
 * tabs, several spaces, upright lines, or semicolons.
 */
import { type LabelRole, wholeLabel } from './label-words.js';
import type { Token } from './tokens.js';

export type TableLine = { from: number; to: number }[];

export interface NoticeTable {
  /** What each column holds; null: something else. */
  columns: (LabelRole | null)[];
  rows: TableLine[];
  /** The token after the table. */
  next: number;
}

type Parting = 'columns' | '|' | ';' | ',';
const columnRoles: ReadonlySet<LabelRole> = new Set([
  'lot',
  'use-by',
  'manufactured',
  'maker',
  'product',
  'shade',
  'gtin',
  'other number',
]);

/** The table whose head begins at the first token of a line; null when none does. */
export function tableAt(tokens: readonly Token[], index: number): NoticeTable | null {
  const headEnd = endOfLine(tokens, index);
  if (headEnd - index < 2 || headEnd - index > 80) return null;
  for (const parting of ['|', 'columns', ';', ','] as const) {
    const head = cellsOf(tokens, index, headEnd, parting);
    if (head.length < (parting === ',' ? 3 : 2)) continue;
    const columns = head.map(({ from, to }) => wholeLabel(tokens, from, to)?.role ?? null);
    const known = columns.filter((role) => role !== null && columnRoles.has(role));
    if (known.length < 2 || columns.length - known.length > 1 + columns.length / 3) continue;
    if (!columns.some((role) => role === 'lot' || role === 'use-by' || role === 'manufactured')) continue;
    const { rows, next } = rowsBelow(tokens, headEnd, parting, head);
    if (rows.length > 0) return { columns, rows, next };
  }
  return null;
}

function rowsBelow(
  tokens: readonly Token[],
  headEnd: number,
  parting: Parting,
  head: TableLine,
): { rows: TableLine[]; next: number } {
  const rows: TableLine[] = [];
  let at = headEnd;
  for (;;) {
    if (tokens[at]?.kind !== 'line end') break;
    const end = endOfLine(tokens, at + 1);
    const row = cellsOf(tokens, at + 1, end, parting);
    const rule =
      end > at + 1 &&
      tokens.slice(at + 1, Math.min(end, at + 200)).every(({ text }) => /^[-|:+=\u2013]$/.test(text));
    if (!rule) {
      if (row.length < 2 || (parting === ',' && row.length !== head.length)) break;
      rows.push(parting === 'columns' ? aligned(row, head) : row);
    }
    at = end;
  }
  return { rows, next: at };
}

/** What stands beyond the last column belongs to it: several lots parted by spaces. */
function aligned(row: TableLine, head: TableLine): TableLine {
  const last = head.length - 1;
  if (row.length <= head.length) return row;
  return [...row.slice(0, last), { from: row[last]?.from ?? 0, to: row[row.length - 1]?.to ?? 0 }];
}

function cellsOf(tokens: readonly Token[], from: number, to: number, parting: Parting): TableLine {
  const cells: TableLine = [];
  let start = from;
  for (let at = from; at < to; at++) {
    const token = tokens[at];
    if (token === undefined) break;
    if (parting === 'columns') {
      if (at > start && token.gap === 'wide') {
        cells.push({ from: start, to: at });
        start = at;
      }
      // Further tabs stand for cells that are empty.
      const empty = at === from ? token.tabs : token.tabs - 1;
      if (start === at)
        for (let cell = 0; cell < empty && cells.length < 30; cell++) cells.push({ from: at, to: at });
    } else if (token.text === parting) {
      if (at > from || parting !== '|') cells.push({ from: start, to: at });
      start = at + 1;
    }
  }
  if (start < to || parting === ';') cells.push({ from: start, to });
  return cells;
}

function endOfLine(tokens: readonly Token[], index: number): number {
  let at = index;
  while (at < tokens.length && tokens[at]?.kind !== 'line end' && tokens[at]?.kind !== 'blank line') at += 1;
  return at;
}
