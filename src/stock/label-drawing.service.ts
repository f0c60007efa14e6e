import { Injectable } from '@nestjs/common';
import type { Element } from '../catalogue/gs1/element.js';
import { printElementString, separator } from '../catalogue/gs1/element-string.js';
import { dataMatrixOf, drawSymbol, type SymbolMatrix } from '../platform/drawing/data-matrix.js';
import { drawPdf, points } from '../platform/drawing/pdf.js';
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
  return dataMatrixOf(text, { parsefnc: true });
}

/** Draws labels as a PDF: symbols, and text beside them. */
@Injectable()
export class LabelDrawing {
  /** @param startAt position of the first label on its page, from 1 */
  async draw(labels: readonly DrawnLabel[], sheet: LabelSheet, startAt: number): Promise<Buffer> {
    const size: [number, number] = [points(sheet.pageWidthMillimetres), points(sheet.pageHeightMillimetres)];
    const positions = labelPositions(sheet, labels.length, startAt);
    return drawPdf({ autoFirstPage: false, size, info: { Title: 'Labels' } }, (document) => {
      let pages = 0;
      for (const [index, position] of positions.entries()) {
        const label = labels[index];
        if (!label) continue;
        for (; pages <= position.page; pages += 1) document.addPage();
        this.drawLabel(document, label, sheet, position);
      }
    });
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
    drawSymbol(document, matrix, {
      leftMillimetres: leftMillimetres + quietZoneMillimetres,
      topMillimetres: top,
      moduleMillimetres: moduleSize,
    });

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
