import type { ProductView } from '../../catalogue/products.views.js';
import type { SameCodeDecision } from '../../stock/lot-match.js';
import type { PieceFault } from '../../stock/planned-containers.js';
import type { CodeState } from '../../stock/vocabulary.js';
import type { ProductDraft } from '../catalogue/product-draft.js';
import type { ScannedGoods } from './scanned-goods.js';

/** A line of a delivery as it is being put together; what was typed is kept as it was typed. */
export interface LineDraft {
  key: string;
  /** What was scanned; null for a line that was begun by hand, or whose symbol is put aside. */
  scanned: ScannedGoods | null;
  product: ProductView | null;
  /** Pieces in what carries the scanned number; null when that is not in the register. */
  contentCount: number | null;
  /** How often the same symbol was shown again without an answer to whether that is another one. */
  again: number;
  codeState: CodeState;
  lotCode: string;
  /** A second code printed on some labels. */
  batchCode: string;
  useBy: string;
  noUseBy: boolean;
  manufacturedOn: string;
  quantity: string;
  /** Where no symbol tells it: pieces in each box or pack. */
  piecesEach: string;
  faulty: Record<PieceFault, string>;
  /** Empty: where the whole delivery goes. */
  placeId: string;
  /** Empty: the studio's. */
  ownerId: string;
  /** YYYY-MM-DD, for bottles that come opened. */
  openedOn: string;
  /** Millilitres left in each of them; empty: what the label says. */
  millilitresLeft: string;
  /** Of one piece, in the studio's currency. */
  price: string;
  /** The code is known with another date: which ones, and what may be decided. */
  question: SameCodeQuestion | null;
  decision: SameCodeDecision | '';
  /** What the service said of it when it was last handed in. */
  faults: LineFault[];
  /** A product that is being made for it, and whether it is rather chosen now; null while none is. */
  making: { content: string; product: ProductDraft; shown: boolean } | null;
  /** Whether its fields are shown. */
  open: boolean;
}

export interface SameCodeQuestion {
  /** Use-by dates on record; null: none was printed. */
  recorded: (string | null)[];
  choices: SameCodeDecision[];
}

export interface LineFault {
  field: string;
  message: string;
}

const nothingFaulty: Record<PieceFault, string> = { 'broken seal': '', 'damaged package': '' };

/** A line for what was scanned, or for what is to be typed. @param key made by the caller, unlike any other */
export function newLine(
  key: string,
  from: {
    scanned?: ScannedGoods;
    product?: ProductView | null;
    contentCount?: number | null;
    lotCode?: string;
  } = {},
): LineDraft {
  const { scanned = null, product = null, contentCount = null, lotCode = '' } = from;
  return {
    key,
    scanned,
    product,
    contentCount,
    again: 0,
    codeState: 'printed',
    lotCode,
    batchCode: '',
    useBy: '',
    noUseBy: false,
    manufacturedOn: '',
    quantity: '1',
    piecesEach: '1',
    faulty: nothingFaulty,
    placeId: '',
    ownerId: '',
    openedOn: '',
    millilitresLeft: '',
    price: '',
    question: null,
    decision: '',
    faults: [],
    making: null,
    open: scanned === null || scanned.lotCode === null || scanned.useBy === null,
  };
}

/** What is printed decides the lot: when that is changed, what was asked and answered of it is void. */
export function changedLine(line: LineDraft, change: Partial<LineDraft>): LineDraft {
  const decidesLot = ['product', 'scanned', 'codeState', 'lotCode', 'batchCode', 'useBy', 'noUseBy'];
  const isAskedAnew = decidesLot.some((field) => field in change);
  const faults = line.faults.filter(({ field }) => !fieldsChanged(change).has(field));
  return { ...line, ...(isAskedAnew && { question: null, decision: '' }), faults, ...change };
}

/** The service's names of what was changed. */
function fieldsChanged(change: Partial<LineDraft>): ReadonlySet<string> {
  const names: Partial<Record<keyof LineDraft, string[]>> = {
    product: ['productId', 'symbol'],
    scanned: ['symbol', 'codes', 'codeState', 'useBy', 'manufacturedOn', 'quantity', 'piecesEach'],
    codeState: ['codes', 'codeState'],
    lotCode: ['codes', 'codeState'],
    batchCode: ['codes', 'codeState'],
    noUseBy: ['useBy', 'manufacturedOn'],
    useBy: ['useBy', 'manufacturedOn'],
    manufacturedOn: ['manufacturedOn'],
    quantity: ['quantity', 'faults'],
    piecesEach: ['piecesEach', 'quantity', 'faults'],
    faulty: ['faults'],
    placeId: ['placeId'],
    ownerId: ['ownerId'],
    price: ['unitCostMinor'],
    openedOn: ['openedAt', 'remainingMicrolitres'],
    millilitresLeft: ['remainingMicrolitres'],
  };
  return new Set(Object.keys(change).flatMap((field) => names[field as keyof LineDraft] ?? []));
}

/** Pieces behind one that is counted: a box that carries the number of its content holds more than one. */
export function piecesInOne(line: LineDraft): number {
  if (line.scanned === null || line.scanned.gtin === null) return Number(line.piecesEach) || 1;
  return line.scanned.count * (line.contentCount ?? 1);
}

/** Pieces of a line; 0 while its count is none. */
export function piecesOf(line: LineDraft): number {
  const quantity = Number(line.quantity);
  return Number.isInteger(quantity) && quantity > 0 ? quantity * piecesInOne(line) : 0;
}
