import type { SymbolReading } from '../catalogue/barcode.js';
import { symbolUseBy } from '../catalogue/symbol-use-by.js';
import type { SymbolOfPackage } from './printed-facts.js';

/** What a scanned symbol says of goods: which number, how many of it, and what is printed. */
export interface ScannedGoods {
  /** 14 digits. */
  gtin: string;
  /** How many of that number the symbol stands for: more than one on a box that names its content. */
  count: number;
  printed: SymbolOfPackage;
}

/** What a registered number stands for. */
export interface TradedAs {
  productId: string;
  contentCount: number;
}

export interface Goods {
  productId: string;
  /** Pieces in one of what was counted. */
  piecesEach: number;
  /** Pieces in one of the packs that came in it; 1 for loose pieces. */
  packPieces: number;
  warnings: string[];
}

/**
 * What the symbol on received goods says. One in 32 foreign texts passes the check of an own label, so a code that no
 * container carries is another company's, and what stands beside it counts.
 *
 * @param isOwnLabel whether a container of the studio carries this label code
 * @returns what it says, or a message when it names no product or cannot be read
 */
export function scannedGoods(
  reading: SymbolReading,
  isOwnLabel: (code: string) => boolean,
): ScannedGoods | { fault: string } {
  switch (reading.kind) {
    case 'product only':
      return { gtin: reading.gtin14, count: 1, printed: {} };
    case 'gs1':
      return namedGoods(reading);
    case 'own label':
      if (isOwnLabel(reading.code)) {
        return {
          fault: `this is the label ${reading.code} of a studio's own, not a maker's symbol; scan the maker's, or choose the product by hand`,
        };
      }
      return namedGoods(reading);
    case 'plain text':
      return {
        fault: `"${reading.text.slice(0, 40)}" names no product; scan the symbol with the GTIN, or choose the product by hand`,
      };
    case 'invalid':
      return { fault: reading.errors[0]?.message.replace(/\.$/, '') ?? 'the symbol cannot be read' };
  }
}

function namedGoods(
  elements: Extract<SymbolReading, { kind: 'gs1' | 'own label' }>,
): ScannedGoods | { fault: string } {
  const { gtin14, contentGtin14, count = 0, lotCode, producedOn } = elements;
  const useBy = symbolUseBy(elements);
  const printed: SymbolOfPackage = {
    ...(lotCode === undefined ? {} : { lotCode }),
    ...(useBy === null ? {} : { useBy }),
    ...(producedOn === undefined ? {} : { producedOn }),
  };
  if (gtin14 !== undefined) return { gtin: gtin14, count: 1, printed };
  if (contentGtin14 !== undefined && count > 0) return { gtin: contentGtin14, count, printed };
  return { fault: 'the symbol names no product; scan the one with the GTIN, or choose the product by hand' };
}

/**
 * Which product was received, and how many pieces stand behind one that was counted. A product chosen by hand and the
 * number scanned must agree; a number not registered yet is taken as one piece of the product chosen, with a warning.
 *
 * @param traded what the scanned number stands for; undefined when it is not registered
 * @param piecesEach pieces in each of what was counted by hand, where nothing was scanned
 */
export function goodsOf(
  chosenProductId: string | undefined,
  scanned: ScannedGoods | null,
  traded: TradedAs | undefined,
  piecesEach = 1,
): Goods | { field: 'productId' | 'symbol'; fault: string } {
  if (scanned === null) {
    return chosenProductId === undefined
      ? { field: 'productId', fault: 'choose the product, or scan its symbol' }
      : { productId: chosenProductId, piecesEach, packPieces: piecesEach, warnings: [] };
  }
  if (traded !== undefined) {
    if (chosenProductId !== undefined && chosenProductId !== traded.productId) {
      return {
        field: 'productId',
        fault: `the product ${chosenProductId} was chosen, but the scanned GTIN ${scanned.gtin} belongs to the product ${traded.productId}; compare with the package and give one of them`,
      };
    }
    const { productId, contentCount } = traded;
    // An outer box says how many of the number it holds: of packs each is put away by itself, of single pieces all.
    const packPieces = contentCount > 1 ? contentCount : scanned.count;
    return { productId, piecesEach: scanned.count * contentCount, packPieces, warnings: [] };
  }
  if (chosenProductId === undefined) {
    return {
      field: 'symbol',
      fault: `the GTIN ${scanned.gtin} is not registered for any product; choose the product by hand, or add the number to it first`,
    };
  }
  return {
    productId: chosenProductId,
    piecesEach: scanned.count,
    packPieces: scanned.count,
    warnings: [
      `The GTIN ${scanned.gtin} is not registered, so it was counted as one piece. Add it to the product, with its content if it is a pack.`,
    ],
  };
}
