import type { SymbolReading } from '../catalogue/barcode.js';
import { symbolUseBy } from '../catalogue/symbol-use-by.js';
import type { KnownBy } from './vocabulary.js';

/** Serial number (AI 21) of the piece, null when the symbol has none or nothing was scanned. */
export function serialOf(reading: SymbolReading | null): string | null {
  return reading && 'serial' in reading ? (reading.serial ?? null) : null;
}

/**
 * The serial number of a single piece: the one on an outer box tells the box, not the pieces in it.
 *
 * @param contentCount pieces in the package whose number the symbol bears; null when it bears none
 */
export function pieceSerialOf(reading: SymbolReading | null, contentCount: number | null): string | null {
  return contentCount === 1 ? serialOf(reading) : null;
}

/** Last day of use that the symbol holds, null when it holds none or nothing was scanned. */
export function useByOf(reading: SymbolReading | null): string | null {
  return reading?.kind === 'gs1' || reading?.kind === 'own label'
    ? (symbolUseBy(reading)?.date ?? null)
    : null;
}

/** How the lot was known. A symbol that tells only the product leaves the lot to be picked. */
export function knownByOf(reading: SymbolReading | null): KnownBy {
  switch (reading?.kind) {
    case 'own label':
      return 'own label';
    case 'plain text':
      return 'typed';
    case 'gs1':
      return reading.lotCode === undefined ? 'picked from a list' : "maker's symbol";
    default:
      return 'picked from a list';
  }
}
