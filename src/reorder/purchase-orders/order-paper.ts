import { writtenMoney } from '../written-money.js';
import { orderedPieces } from './order-receipt.js';
import { lineMinor } from './order-sums.js';

/** What an order says to the supplier, all of it ready to be written. */
export interface PaperOfOrder {
  number: number;
  /** ISO 8601 instant at which it last became what it says, so that the same order is the same document. */
  madeAt: string;
  /** The day of the order, such as `26 November 2026`. */
  day: string;
  studio: { name: string; contact: string | null };
  supplierName: string;
  /** The number under which the supplier knows the studio; null: not known. */
  customerNumber: string | null;
  /** It was not approved yet: nobody may take it for an order. */
  isDraft: boolean;
  /** It was called off. */
  isCalledOff: boolean;
  currency: string;
  lines: PaperLine[];
  /** Written sums; null: not known. */
  linesSum: string;
  deliveryCost: string | null;
  total: string | null;
  unpricedLines: number;
}

export interface PaperLine {
  lineNumber: number;
  orderCode: string | null;
  product: string;
  packs: number;
  /** What one pack is, such as `2 boxes of 20`. */
  pack: string;
  pieces: number;
  packPriceMinor: number | null;
  packPrice: string | null;
  lineMinor: number | null;
  linePrice: string | null;
}

/** A line as it is ordered. */
export interface LineForPaper {
  id: string;
  lineNumber: number;
  productId: string;
  orderCode: string | null;
  packs: number;
  packContainers: number;
  containerPieces: number;
  packPriceMinor: number | null;
}

/** @param product what it is called */
export function lineOfPaper(line: LineForPaper, product: string, currency: string): PaperLine {
  const { lineNumber, orderCode, packs, packPriceMinor } = line;
  const sum = lineMinor(line);
  return {
    lineNumber,
    orderCode,
    product,
    packs,
    pack: packWords(line),
    pieces: orderedPieces(line),
    packPriceMinor,
    packPrice: packPriceMinor === null ? null : writtenMoney(packPriceMinor, currency),
    lineMinor: sum,
    linePrice: sum === null ? null : writtenMoney(sum, currency),
  };
}

/** What one pack is, in words: containers, and the pieces in each where there are more than one. */
export function packWords({
  packContainers,
  containerPieces,
}: Pick<LineForPaper, 'packContainers' | 'containerPieces'>): string {
  if (containerPieces === 1) return packContainers === 1 ? 'single' : `${packContainers} pieces`;
  const box = `box of ${containerPieces}`;
  return packContainers === 1 ? box : `${packContainers} boxes of ${containerPieces}`;
}

/** A line in plain text: `1. 3 × HI-77 Halden Ink Umber (single): EUR 45.00`. */
export function paperLine({ lineNumber, packs, orderCode, product, pack, linePrice }: PaperLine): string {
  const name = orderCode === null ? product : `${orderCode} ${product}`;
  const price = linePrice === null ? '' : `: ${linePrice}`;
  return `${lineNumber}. ${packs} × ${name} (${pack})${price}`;
}
