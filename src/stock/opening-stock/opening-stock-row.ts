import { gtin14 } from '../../catalogue/gs1/check-digit.js';
import {
  type PigmentRole,
  type ProductKind,
  pigmentRoles,
  productKinds,
} from '../../catalogue/vocabulary.js';
import { otherOrderOfDate, readWrittenDay } from '../../identity/written-day.js';
import { type SameCodeDecision, sameCodeDecisions } from '../lot-match.js';
import { mostPiecesInLine } from '../planned-containers.js';
import { type PrintedFacts, printedFacts, type SaidOfPackage } from '../printed-facts.js';
import { readUseBy } from '../use-by.js';
import { nonePrinted, type OpeningStockColumn, unreadable } from './opening-stock-columns.js';
import { isScientific, readCount, readMillilitres, readPercent } from './written-number.js';

export type StockCells = Partial<Record<OpeningStockColumn, string>>;

export interface StockCellFault {
  column: OpeningStockColumn | null;
  /** Words that follow the name of the column. */
  message: string;
}

/** What the row says of the product, as far as it does: needed for one that is not in the catalogue yet. */
export interface SaidOfProduct {
  kind: ProductKind | null;
  pigmentRole: PigmentRole | null;
  volumeMicrolitres: number | null;
  openedLife: string | null;
  notation: string | null;
}

/** One row of a file of opening stock, read by itself. What is null is left out or at fault. */
export interface StockRow {
  maker: string | null;
  product: string | null;
  shade: string | null;
  said: SaidOfProduct;
  /** 14 digits. */
  gtin: string | null;
  /** What is printed on it; null when that is at fault. */
  printed: PrintedFacts | null;
  /** How what is printed is said to receiving. */
  saidOfPackage: SaidOfPackage;
  quantity: number | null;
  piecesEach: number | null;
  /** ISO `YYYY-MM-DD`. */
  openedOn: string | null;
  /** What is left in each opened bottle, as it was written. */
  remaining: { microlitres: number } | { percent: number } | null;
  place: string | null;
  owner: string | null;
  sameCodeDecision: SameCodeDecision | null;
}

const longest: Partial<Record<OpeningStockColumn, number>> = {
  maker: 120,
  product: 120,
  shade: 120,
  notation: 40,
  lot: 60,
  batch: 60,
  'opened life': 40,
};
const leastBottleMicrolitres = 100;
const mostBottleMicrolitres = 1_000_000;

/**
 * Reads a row of opening stock by itself: every fault that needs no look at the record.
 * @param cells texts without spaces around them; an empty cell is left out
 * @param day the studio's local day: nothing was made or opened after it
 */
export function readStockRow(cells: StockCells, day: string): { row: StockRow; faults: StockCellFault[] } {
  const faults: StockCellFault[] = [];
  const fault = (column: OpeningStockColumn, message: string): null => {
    faults.push({ column, message });
    return null;
  };
  for (const [column, most] of Object.entries(longest) as [OpeningStockColumn, number][]) {
    const length = cells[column]?.length ?? 0;
    if (length > most) fault(column, `has ${length} characters; at most ${most} are taken`);
  }
  const oneOf = <Word extends string>(column: OpeningStockColumn, words: readonly Word[]): Word | null => {
    const cell = cells[column];
    if (cell === undefined) return null;
    const word = words.find((each) => each === cell.toLowerCase());
    return word ?? fault(column, `"${cell.slice(0, 40)}" is none of: ${words.join(', ')}`);
  };
  const count = (column: OpeningStockColumn): number | null => {
    const cell = cells[column];
    if (cell === undefined) return null;
    const read = readCount(cell, mostPiecesInLine);
    return 'fault' in read ? fault(column, read.fault) : read.count;
  };

  const openedOn = readOpenedOn(cells['opened on'], day, fault);
  const { said, printed } = readPackage(cells, day, fault);
  const row: StockRow = {
    maker: cells.maker ?? null,
    product: cells.product ?? null,
    shade: cells.shade ?? null,
    said: {
      kind: oneOf('kind', productKinds),
      pigmentRole: oneOf('role', pigmentRoles),
      volumeMicrolitres: readBottle(cells['bottle ml'], fault),
      openedLife: cells['opened life'] ?? null,
      notation: cells.notation ?? null,
    },
    gtin: readGtin(cells.gtin, fault),
    printed,
    saidOfPackage: said,
    quantity:
      cells.quantity === undefined ? fault('quantity', 'is empty; write how many') : count('quantity'),
    piecesEach: count('pieces per box'),
    openedOn,
    remaining: readRemaining(cells, fault),
    place: cells.place ?? null,
    owner: cells.owner ?? null,
    sameCodeDecision: oneOf('same code', sameCodeDecisions),
  };
  if (cells.gtin === undefined) {
    if (row.maker === null) fault('maker', 'is empty; write whose name is on the label');
    if (row.product === null)
      fault('product', 'is empty; write what it is called, or a GTIN that is registered');
  }
  return { row, faults };
}

type TellFault = (column: OpeningStockColumn, message: string) => null;

function readPackage(
  cells: StockCells,
  day: string,
  fault: TellFault,
): { said: SaidOfPackage; printed: PrintedFacts | null } {
  const { lot, batch } = cells;
  const useBy = cells['use by'];
  const manufacturedOn = cells['manufactured on'];
  const said: SaidOfPackage = {};
  let sound = true;
  const unsound = (column: OpeningStockColumn, message: string) => {
    sound = false;
    fault(column, message);
  };
  const state = lot?.toLowerCase();
  if (lot === undefined && batch === undefined) {
    unsound('lot', `is empty; write the code as printed, or "${nonePrinted}" or "${unreadable}"`);
  } else if (state === nonePrinted || state === unreadable) {
    if (batch !== undefined) unsound('lot', `says "${state}", but the batch ${batch} is given; leave it out`);
    else said.codeState = state;
  } else {
    said.codes = [
      ...(lot === undefined ? [] : [{ kind: 'lot' as const, code: lot }]),
      ...(batch === undefined ? [] : [{ kind: 'batch' as const, code: batch }]),
    ];
    for (const [column, code] of [
      ['lot', lot],
      ['batch', batch],
    ] as const) {
      if (code === undefined || !isScientific(code)) continue;
      unsound(
        column,
        `${code} is how a spreadsheet shortens a long number; show the column as text and copy the code anew`,
      );
    }
  }
  if (useBy === undefined)
    unsound('use by', `is empty; write the date as printed, year first, or "${nonePrinted}"`);
  else if (useBy.toLowerCase() === nonePrinted) said.useBy = null;
  else {
    const reading = readUseBy(useBy);
    if ('error' in reading)
      unsound('use by', otherOrderOfDate(useBy) ?? reading.error.message.replace(/\.$/, ''));
    else said.useBy = useBy;
  }
  if (manufacturedOn !== undefined) {
    const read = readWrittenDay(manufacturedOn);
    if ('fault' in read) unsound('manufactured on', read.fault);
    else said.manufacturedOn = read.day;
  }
  if (!sound) return { said, printed: null };
  const facts = printedFacts(said, {}, day);
  if ('facts' in facts) return { said, printed: facts.facts };
  for (const each of facts.faults) fault(columnOfPackage[each.field], each.message);
  return { said, printed: null };
}

const columnOfPackage = {
  codes: 'lot',
  codeState: 'lot',
  useBy: 'use by',
  manufacturedOn: 'manufactured on',
} as const;

function readBottle(cell: string | undefined, fault: TellFault): number | null {
  if (cell === undefined) return null;
  const read = readMillilitres(cell);
  if ('fault' in read) return fault('bottle ml', read.fault);
  const { microlitres } = read;
  return microlitres < leastBottleMicrolitres || microlitres > mostBottleMicrolitres
    ? fault(
        'bottle ml',
        `${cell} is not from ${leastBottleMicrolitres / 1_000} to ${mostBottleMicrolitres / 1_000} millilitres`,
      )
    : microlitres;
}

function readGtin(cell: string | undefined, fault: TellFault): string | null {
  if (cell === undefined) return null;
  if (isScientific(cell)) {
    return fault(
      'gtin',
      `${cell} is how a spreadsheet shortens a long number; show the column as text and copy the number anew`,
    );
  }
  const digits = cell.replace(/[ -]/g, '');
  if (!/^\d+$/.test(digits) || ![8, 12, 13, 14].includes(digits.length)) {
    return fault(
      'gtin',
      `"${cell.slice(0, 40)}" is not a GTIN; it has 8, 12, 13 or 14 digits, below the bars`,
    );
  }
  return (
    gtin14(digits) ??
    fault('gtin', `the check digit of ${digits} is wrong; a digit is mistyped, or a zero in front is lost`)
  );
}

function readOpenedOn(cell: string | undefined, day: string, fault: TellFault): string | null {
  if (cell === undefined) return null;
  const read = readWrittenDay(cell);
  if ('fault' in read) return fault('opened on', read.fault);
  return read.day > day ? fault('opened on', `${read.day} lies after today, ${day}`) : read.day;
}

function readRemaining(cells: StockCells, fault: TellFault): StockRow['remaining'] {
  const cell = cells.remaining;
  if (cell === undefined) return null;
  if (cells['opened on'] === undefined) {
    return fault('remaining', 'is told of opened bottles only; write when it was opened, or leave it out');
  }
  if (cell.endsWith('%')) {
    const read = readPercent(cell);
    return 'fault' in read ? fault('remaining', read.fault) : { percent: read.percent };
  }
  if (!/ml$/i.test(cell))
    return fault('remaining', `"${cell.slice(0, 40)}" has no unit; write it as 6 ml or as 60 %`);
  const read = readMillilitres(cell);
  return 'fault' in read ? fault('remaining', read.fault) : { microlitres: read.microlitres };
}
