import { Injectable } from '@nestjs/common';
import bwipJs from 'bwip-js/node';
import PdfDocument from 'pdfkit';

export interface DrawnBadge {
  /** What the symbol holds. */
  text: string;
  name: string;
  studioName: string;
  /** YYYY-MM-DD */
  printedOn: string;
}

const pointsPerMillimetre = 72 / 25.4;
/** The card of ISO/IEC 7810 ID-1, which every card holder fits. */
const cardMillimetres = { width: 85.6, height: 53.98 };
const symbolMillimetres = 26;
const edgeMillimetres = 7;
const smallestTextPoints = 6;

/** Draws a badge as a PDF of one card: a DataMatrix of rectangles, which any printer keeps sharp, and whose it is. */
@Injectable()
export class BadgeDrawing {
  async draw({ text, name, studioName, printedOn }: DrawnBadge): Promise<Buffer> {
    const document = new PdfDocument({
      size: [points(cardMillimetres.width), points(cardMillimetres.height)],
      margin: 0,
      info: { Title: 'Badge', Creator: 'Lotward', Producer: 'Lotward', CreationDate: new Date(printedOn) },
    });
    const chunks: Buffer[] = [];
    document.on('data', (chunk: Buffer) => chunks.push(chunk));
    const ended = new Promise<void>((resolve, reject) => {
      document.on('end', resolve);
      document.on('error', reject);
    });
    drawSymbol(document, text);
    const left = points(2 * edgeMillimetres + symbolMillimetres);
    const width = points(cardMillimetres.width - edgeMillimetres) - left;
    const top = points((cardMillimetres.height - symbolMillimetres) / 2);
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
      document.text(line.text, left, top + line.at, { width, height: line.size, ellipsis: true });
    }
    document.end();
    await ended;
    return Buffer.concat(chunks);
  }
}

function drawSymbol(document: PDFKit.PDFDocument, text: string): void {
  const [symbol] = bwipJs.raw({ bcid: 'datamatrix', text });
  if (!symbol || !('pixs' in symbol) || symbol.pixx !== symbol.pixy) {
    throw new Error('The symbol of a badge has no square of modules.');
  }
  const { pixs, pixx: modules } = symbol;
  const size = points(symbolMillimetres) / modules;
  const left = points(edgeMillimetres);
  const top = points((cardMillimetres.height - symbolMillimetres) / 2);
  for (let row = 0; row < modules; row += 1) {
    for (let column = 0; column < modules; column += 1) {
      if (pixs[row * modules + column] !== 1) continue;
      const start = column;
      while (column + 1 < modules && pixs[row * modules + column + 1] === 1) column += 1;
      document.rect(left + start * size, top + row * size, (column + 1 - start) * size, size);
    }
  }
  document.fill('black');
}

function points(millimetres: number): number {
  return millimetres * pointsPerMillimetre;
}
