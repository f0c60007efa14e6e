import bwipJs from 'bwip-js/node';
import { points } from './pdf.js';

/** The dark modules of a symbol, row by row. */
export interface SymbolMatrix {
  modulesASide: number;
  isDark: (row: number, column: number) => boolean;
}

export interface SymbolPlace {
  leftMillimetres: number;
  topMillimetres: number;
  moduleMillimetres: number;
}

/**
 * The square DataMatrix symbol (ISO/IEC 16022) of a text.
 * @param parsefnc whether `^FNC1` in the text stands for that function character
 */
export function dataMatrixOf(text: string, { parsefnc = false } = {}): SymbolMatrix {
  const [symbol] = bwipJs.raw({ bcid: 'datamatrix', text, parsefnc });
  if (!symbol || !('pixs' in symbol) || symbol.pixx !== symbol.pixy) {
    throw new Error('The symbol has no square of modules.');
  }
  const { pixs, pixx } = symbol;
  return { modulesASide: pixx, isDark: (row, column) => pixs[row * pixx + column] === 1 };
}

/**
 * Draws a symbol of rectangles, so that any printer keeps its edges: one for each run of dark modules in a row, all in one
 * path, so that no gap shows between rows.
 */
export function drawSymbol(
  document: PDFKit.PDFDocument,
  { modulesASide, isDark }: SymbolMatrix,
  { leftMillimetres, topMillimetres, moduleMillimetres }: SymbolPlace,
): void {
  for (let row = 0; row < modulesASide; row += 1) {
    for (let column = 0; column < modulesASide; column += 1) {
      if (!isDark(row, column)) continue;
      const start = column;
      while (column + 1 < modulesASide && isDark(row, column + 1)) column += 1;
      document.rect(
        points(leftMillimetres + start * moduleMillimetres),
        points(topMillimetres + row * moduleMillimetres),
        points((column + 1 - start) * moduleMillimetres),
        points(moduleMillimetres),
      );
    }
  }
  document.fill('black');
}
