import { Injectable } from '@nestjs/common';
import { dataMatrixOf, drawSymbol } from '../../platform/drawing/data-matrix.js';
import { drawPdf, points } from '../../platform/drawing/pdf.js';

export interface DrawnBadge {
  /** What the symbol holds. */
  text: string;
  name: string;
  studioName: string;
  /** YYYY-MM-DD */
  printedOn: string;
}

/** The card of ISO/IEC 7810 ID-1, which every card holder fits. */
const cardMillimetres = { width: 85.6, height: 53.98 };
const symbolMillimetres = 26;
const edgeMillimetres = 7;
const smallestTextPoints = 6;

/** Draws a badge as a PDF of one card: a DataMatrix symbol, and whose it is. */
@Injectable()
export class BadgeDrawing {
  async draw({ text, name, studioName, printedOn }: DrawnBadge): Promise<Buffer> {
    const size: [number, number] = [points(cardMillimetres.width), points(cardMillimetres.height)];
    const info = { Title: 'Badge', CreationDate: new Date(printedOn) };
    return drawPdf({ size, info }, (document) => {
      const top = (cardMillimetres.height - symbolMillimetres) / 2;
      const matrix = dataMatrixOf(text);
      drawSymbol(document, matrix, {
        leftMillimetres: edgeMillimetres,
        topMillimetres: top,
        moduleMillimetres: symbolMillimetres / matrix.modulesASide,
      });
      const left = points(2 * edgeMillimetres + symbolMillimetres);
      const width = points(cardMillimetres.width - edgeMillimetres) - left;
      const lines = [
        { text: name, font: 'Helvetica-Bold', size: 13, at: 0 },
        { text: studioName, font: 'Helvetica', size: 9, at: 20 },
        { text: `Badge of ${printedOn}`, font: 'Helvetica', size: 7, at: 34 },
        { text: 'Works on enrolled tablets. Lost: tell the studio.', font: 'Helvetica', size: 7, at: 46 },
      ];
      for (const line of lines) {
        document.font(line.font).fontSize(line.size);
        const fitting = (line.size * width) / Math.max(1, document.widthOfString(line.text));
        document.fontSize(Math.max(smallestTextPoints, Math.min(line.size, fitting)));
        document.text(line.text, left, points(top) + line.at, { width, height: line.size, ellipsis: true });
      }
    });
  }
}
