import { Injectable } from '@nestjs/common';
import bwipJs from 'bwip-js/node';
import PdfDocument from 'pdfkit';
import type { Element } from '../catalogue/gs1/element.js';
import { printElementString, separator } from '../catalogue/gs1/element-string.js';
import {
  type LabelPosition,
  type LabelSheet,
  labelPositions,
  moduleMillimetres,
  quietZoneMillimetres,
} from './label-sheets.js';
import type { LabelLine } from './label-text.js';

export interface DrawnLabel {
  elements: readonly Element[];
  lines: readonly LabelLine[];
}

/** The dark modules of a symbol, row by row. */
export interface SymbolMatrix {
  modulesASide: number;
  isDark: (row: number, column: number) => boolean;
}

const pointsPerMillimetre = 72 / 25.4;
/** Text never comes closer to the edge of the label, which printers miss by some tenths of a millimetre. */
const edgeMillimetres = 0.7;
const largestTextPoints = 7;
const smallestTextPoints = 3.8;
/** A size worked out to fit exactly may come out wider by the last binary digit. */
const roundingPoints = 0.01;
const fonts = { bold: 'Helvetica-Bold', regular: 'Helvetica' };

/** The GS1 DataMatrix symbol of elements, as modules to be drawn. */
function symbolMatrix(elements: readonly Element[]): SymbolMatrix {
  // The encoder's own reading of brackets would take those of a lot code for identifiers, so it gets FNC1 by name.
  const text = `${separator}${printElementString(elements, 'raw')}`.replaceAll(separator, '^FNC1');
  const [symbol] = bwipJs.raw({ bcid: 'datamatrix', text, parsefnc: true });
  if (!symbol || !('pixs' in symbol) || symbol.pixx !== symbol.pixy) {
    throw new Error('The symbol of a label has no square of modules.');
  }
  const { pixs, pixx } = symbol;
  return { modulesASide: pixx, isDark: (row, column) => pixs[row * pixx + column] === 1 };
}

/** Draws labels as a PDF: symbols of rectangles, so that any printer keeps their edges, and text beside them. */
@Injectable()
export class LabelDrawing {
  /** @param startAt position of the first label on its page, from 1 */
  async draw(labels: readonly DrawnLabel[], sheet: LabelSheet, startAt: number): Promise<Buffer> {
    const size: [number, number] = [points(sheet.pageWidthMillimetres), points(sheet.pageHeightMillimetres)];
    const document = new PdfDocument({
      autoFirstPage: false,
      size,
      margin: 0,
      info: { Title: 'Labels', Creator: 'Lotward', Producer: 'Lotward' },
    });
    const chunks: Buffer[] = [];
    document.on('data', (chunk: Buffer) => chunks.push(chunk));
    const ended = new Promise<void>((resolve, reject) => {
      document.on('end', resolve);
      document.on('error', reject);
    });
    let pages = 0;
    for (const [index, position] of labelPositions(sheet, labels.length, startAt).entries()) {
      const label = labels[index];
      if (!label) continue;
      for (; pages <= position.page; pages += 1) document.addPage();
      this.drawLabel(document, label, sheet, position);
    }
    document.end();
    await ended;
    return Buffer.concat(chunks);
  }

  private drawLabel(
    document: PDFKit.PDFDocument,
    { elements, lines }: DrawnLabel,
    sheet: LabelSheet,
    { leftMillimetres, topMillimetres }: LabelPosition,
  ): void {
    const matrix = symbolMatrix(elements);
    const moduleSize = moduleMillimetres(sheet, matrix.modulesASide);
    const side = matrix.modulesASide * moduleSize;
    const top = topMillimetres + (sheet.labelHeightMillimetres - side) / 2;
    drawSymbol(document, matrix, moduleSize, leftMillimetres + quietZoneMillimetres, top);

    const textLeft = leftMillimetres + side + 2 * quietZoneMillimetres;
    const width = points(leftMillimetres + sheet.labelWidthMillimetres - edgeMillimetres - textLeft);
    const lineStep = points(sheet.labelHeightMillimetres - 2 * edgeMillimetres) / lines.length;
    for (const [index, line] of lines.entries()) {
      document.font(fonts[line.weight]);
      const text = fitText(document, line.text, width, Math.min(largestTextPoints, lineStep * 0.88));
      document.text(text, points(textLeft), points(topMillimetres + edgeMillimetres) + index * lineStep, {
        lineBreak: false,
      });
    }
  }
}

/** One rectangle for each run of dark modules in a row, all in one path, so that no gap shows between rows. */
function drawSymbol(
  document: PDFKit.PDFDocument,
  { modulesASide, isDark }: SymbolMatrix,
  moduleSize: number,
  leftMillimetres: number,
  topMillimetres: number,
): void {
  for (let row = 0; row < modulesASide; row += 1) {
    for (let column = 0; column < modulesASide; column += 1) {
      if (!isDark(row, column)) continue;
      const start = column;
      while (column + 1 < modulesASide && isDark(row, column + 1)) column += 1;
      document.rect(
        points(leftMillimetres + start * moduleSize),
        points(topMillimetres + row * moduleSize),
        points((column + 1 - start) * moduleSize),
        points(moduleSize),
      );
    }
  }
  document.fill('black');
}

/** Sets the size at which a line fits, and shortens it where even the smallest is too large. */
function fitText(document: PDFKit.PDFDocument, text: string, width: number, largest: number): string {
  document.fontSize(largest);
  const fitting = (largest * width) / Math.max(document.widthOfString(text), 1);
  document.fontSize(Math.min(largest, Math.max(smallestTextPoints, fitting)));
  if (document.widthOfString(text) <= width + roundingPoints) return text;
  let kept = text.length;
  while (kept > 1 && document.widthOfString(`${text.slice(0, kept)}…`) > width) kept -= 1;
  return `${text.slice(0, kept).trimEnd()}…`;
}

function points(millimetres: number): number {
  return millimetres * pointsPerMillimetre;
}
