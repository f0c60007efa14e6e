import { points } from './pdf.js';
import { standardText } from './standard-text.js';

/** What stands at the head and the foot of each page. */
export interface PaperHead {
  /** Whose report, and on what. */
  left: string;
  /** Such as "not closed"; empty: nothing is to be said. */
  mark: string;
  foot: string;
}

export interface Column<Row> {
  title: string;
  /** Its share of the width. */
  share: number;
  align?: 'right';
  text: (row: Row) => string;
}

const margin = points(17);
const headHeight = points(10);
const footHeight = points(9);
const ink = '#1c1c1e';
const soft = '#55565c';
const line = '#c9cad0';
const band = '#f0f1f4';
const warning = '#8f1d14';
const bodySize = 9;
const tableSize = 8;
/** A longer text may go on over the end of a page. */
const aboutFiveLines = 55;
const cellGap = 7;
/** A heading with a line or two and the head and first row of a table. */
const spaceOfSection = 110;
const fonts = { regular: 'Helvetica', bold: 'Helvetica-Bold' };

/** Sheets of paper that are written from the top, with tables that go on over as many as they need. */
export class Paper {
  private y = 0;
  private replaced = 0;
  private readonly left = margin;
  private readonly width: number;
  private readonly bottom: number;

  constructor(
    private readonly document: PDFKit.PDFDocument,
    private readonly head: PaperHead,
  ) {
    this.width = document.page.width - 2 * margin;
    this.bottom = document.page.height - margin - footHeight;
    this.y = margin + headHeight;
  }

  /** How many characters could not be shown as they were written. */
  get charactersReplaced(): number {
    return this.replaced;
  }

  title(text: string, below: string): void {
    this.write(text, { size: 19, font: 'bold' });
    this.gap(2);
    this.write(below, { size: 11, colour: soft });
    this.gap(10);
  }

  /** A heading that never stands alone at the end of a page. */
  section(text: string): void {
    this.gap(14);
    this.need(spaceOfSection);
    this.write(text, { size: 13, font: 'bold' });
    this.gap(5);
  }

  paragraph(text: string, style: 'plain' | 'soft' | 'warning' = 'plain'): void {
    const colour = style === 'plain' ? ink : style === 'soft' ? soft : warning;
    this.write(text, { size: bodySize, colour, ...(style === 'warning' && { font: 'bold' as const }) });
    this.gap(4);
  }

  /** Names and what they are, one below the other. */
  facts(facts: readonly (readonly [string, string])[]): void {
    const nameWidth = this.width * 0.24;
    for (const [name, value] of facts) {
      const text = this.shown(value);
      this.document.font(fonts.regular).fontSize(bodySize);
      const height = this.heightOf(text, this.width - nameWidth);
      this.need(Math.min(height, aboutFiveLines));
      const top = this.y;
      this.document.font(fonts.bold).fontSize(bodySize).fillColor(soft);
      this.document.text(this.shown(name), this.left, top, { width: nameWidth - cellGap, lineBreak: true });
      this.document.font(fonts.regular).fontSize(bodySize);
      this.flow(text, this.left + nameWidth, this.width - nameWidth, ink, top);
      this.gap(3);
    }
    this.gap(2);
  }

  /** Large figures with what they count, side by side. */
  figures(figures: readonly (readonly [string, string])[]): void {
    const aRow = 4;
    const boxWidth = (this.width - (aRow - 1) * 6) / aRow;
    const boxHeight = 42;
    for (let start = 0; start < figures.length; start += aRow) {
      this.need(boxHeight + 6);
      for (const [index, [figure, name]] of figures.slice(start, start + aRow).entries()) {
        const x = this.left + index * (boxWidth + 6);
        this.document.rect(x, this.y, boxWidth, boxHeight).fill(band);
        this.document.font(fonts.bold).fontSize(15).fillColor(ink);
        this.document.text(this.shown(figure), x + 7, this.y + 7, { lineBreak: false });
        this.document.font(fonts.regular).fontSize(7.5).fillColor(soft);
        this.document.text(this.shown(name), x + 7, this.y + 27, { lineBreak: false });
      }
      this.y += boxHeight + 6;
    }
    this.gap(4);
  }

  /** A table whose head stands on every page it needs, and whose rows are never cut by the end of a page. */
  table<Row>(columns: readonly Column<Row>[], rows: Iterable<Row>): void {
    const whole = columns.reduce((sum, { share }) => sum + share, 0);
    const widths = columns.map(({ share }) => (this.width * share) / whole);
    this.need(48);
    this.tableHead(columns, widths);
    for (const row of rows) {
      this.document.font(fonts.regular).fontSize(tableSize);
      const texts = columns.map(({ text }) => this.shown(text(row)));
      const heights = texts.map((text, index) => this.heightOf(text, (widths[index] ?? 0) - cellGap));
      const height = Math.min(Math.max(...heights, 0), this.pageHeight() - 40) + 5;
      if (this.y + height > this.bottom) {
        this.newPage();
        this.tableHead(columns, widths);
        this.document.font(fonts.regular).fontSize(tableSize);
      }
      this.document.fillColor(ink);
      this.cells(columns, widths, texts, height);
      this.document
        .moveTo(this.left, this.y + height - 1.5)
        .lineTo(this.left + this.width, this.y + height - 1.5)
        .lineWidth(0.4)
        .strokeColor(line)
        .stroke();
      this.y += height;
    }
    this.gap(6);
  }

  /** Sums below a table, at its right edge; the last is the one that counts. */
  sums(sums: readonly (readonly [string, string])[]): void {
    const nameRight = this.left + this.width * 0.8;
    for (const [index, [name, value]] of sums.entries()) {
      this.need(14);
      const font = index === sums.length - 1 ? fonts.bold : fonts.regular;
      this.document.font(font).fontSize(bodySize);
      const [shownName, shownValue] = [this.shown(name), this.shown(value)];
      const nameLeft = nameRight - this.document.widthOfString(shownName);
      const valueLeft = this.left + this.width - 5 - this.document.widthOfString(shownValue);
      this.document.fillColor(soft).text(shownName, nameLeft, this.y, { lineBreak: false });
      this.document.fillColor(ink).text(shownValue, valueLeft, this.y, { lineBreak: false });
      this.y += 14;
    }
    this.gap(4);
  }

  /** Lines to sign on by hand, beside who signed in the program. */
  signatures(signatures: readonly { name: string; role: string; at: string }[]): void {
    for (const { name, role, at } of signatures) {
      this.need(64);
      const middle = this.left + this.width * 0.52;
      this.document.font(fonts.bold).fontSize(bodySize).fillColor(ink);
      this.document.text(this.shown(name), this.left, this.y + 22, { lineBreak: false });
      this.document.font(fonts.regular).fontSize(7.5).fillColor(soft);
      this.document.text(this.shown(`${role} ${at}`), this.left, this.y + 35, { lineBreak: false });
      this.document
        .moveTo(middle, this.y + 32)
        .lineTo(this.left + this.width, this.y + 32)
        .lineWidth(0.6)
        .strokeColor(soft)
        .stroke();
      this.document.text('Signature by hand', middle, this.y + 35, { lineBreak: false });
      this.y += 54;
    }
  }

  /** Writes heads, feet and page numbers. Call it last. */
  finish(): void {
    const { start, count } = this.document.bufferedPageRange();
    for (let page = start; page < start + count; page += 1) {
      this.document.switchToPage(page);
      const { width, height } = this.document.page;
      this.document.font(fonts.regular).fontSize(7.5).fillColor(soft);
      const mark = this.shown(this.head.mark);
      const markWidth = this.document.font(fonts.bold).widthOfString(mark);
      const top = margin - 6;
      this.document.font(fonts.regular);
      this.document.text(
        fitted(this.document, this.shown(this.head.left), this.width - markWidth - 16),
        margin,
        top,
        {
          lineBreak: false,
        },
      );
      this.document.font(fonts.bold).fillColor(warning);
      this.document.text(mark, width - margin - markWidth, top, { lineBreak: false });
      this.document
        .moveTo(margin, top + 11)
        .lineTo(width - margin, top + 11)
        .lineWidth(0.6)
        .strokeColor(line)
        .stroke();
      this.document.font(fonts.regular).fillColor(soft);
      const foot = height - margin + 2;
      this.document.text(this.shown(this.head.foot), margin, foot, { lineBreak: false });
      const number = `Page ${page - start + 1} of ${count}`;
      this.document.text(number, width - margin - this.document.widthOfString(number), foot, {
        lineBreak: false,
      });
    }
  }

  private tableHead<Row>(columns: readonly Column<Row>[], widths: readonly number[]): void {
    this.document.font(fonts.bold).fontSize(tableSize);
    const titles = columns.map(({ title }) => title);
    const heights = titles.map((title, index) => this.heightOf(title, (widths[index] ?? 0) - cellGap));
    const height = Math.max(...heights) + 7;
    this.document.rect(this.left, this.y, this.width, height - 2).fill(band);
    this.document.fillColor(soft).font(fonts.bold).fontSize(tableSize);
    this.y += 2;
    this.cells(columns, widths, titles, height);
    this.y += height;
  }

  private cells<Row>(
    columns: readonly Column<Row>[],
    widths: readonly number[],
    texts: readonly string[],
    height: number,
  ): void {
    let x = this.left + 2;
    for (const [index, text] of texts.entries()) {
      const width = (widths[index] ?? 0) - cellGap;
      const { align } = columns[index] ?? {};
      if (this.document.widthOfString(text) <= width) {
        const at = align === 'right' ? x + width - this.document.widthOfString(text) : x;
        this.document.text(text, at, this.y + 1, { lineBreak: false });
      } else {
        this.document.text(text, x, this.y + 1, { width, height, ellipsis: true, ...(align && { align }) });
      }
      x += widths[index] ?? 0;
    }
  }

  private write(
    text: string,
    { size, font = 'regular', colour = ink }: { size: number; font?: keyof typeof fonts; colour?: string },
  ): void {
    this.document.font(fonts[font]).fontSize(size);
    this.need(size * 1.3);
    this.flow(this.shown(text), this.left, this.width, colour, this.y);
  }

  /** Writes a text of any length from a height on, over as many pages as it needs. */
  private flow(text: string, x: number, width: number, colour: string, top: number): void {
    const step = this.document.currentLineHeight(true);
    this.y = top;
    this.document.fillColor(colour);
    for (const piece of wrapped(this.document, text, width)) {
      if (this.y + step > this.bottom) {
        this.newPage();
        this.document.fillColor(colour);
      }
      this.document.text(piece, x, this.y, { lineBreak: false });
      this.y += step;
    }
  }

  private heightOf(text: string, width: number): number {
    const aLine = this.document.currentLineHeight(true);
    return this.document.widthOfString(text) <= width ? aLine : this.document.heightOfString(text, { width });
  }

  private pageHeight(): number {
    return this.bottom - margin - headHeight;
  }

  private need(height: number): void {
    if (this.y + height > this.bottom) this.newPage();
  }

  private newPage(): void {
    this.document.addPage();
    this.y = margin + headHeight;
  }

  gap(height: number): void {
    this.y += height;
  }

  private shown(text: string): string {
    const { text: shown, replaced } = standardText(text);
    this.replaced += replaced;
    return shown;
  }
}

/** The lines of a text at the present font; a word that is longer than a line is cut. */
function wrapped(document: PDFKit.PDFDocument, text: string, width: number): string[] {
  const lines: string[] = [];
  let written = '';
  for (const word of text.split(' ')) {
    const longer = written === '' ? word : `${written} ${word}`;
    if (document.widthOfString(longer) <= width) {
      written = longer;
      continue;
    }
    if (written !== '') lines.push(written);
    written = word;
    while (document.widthOfString(written) > width && written.length > 1) {
      let kept = 1;
      while (document.widthOfString(written.slice(0, kept + 1)) <= width) kept += 1;
      lines.push(written.slice(0, kept));
      written = written.slice(kept);
    }
  }
  return [...lines, written];
}

function fitted(document: PDFKit.PDFDocument, text: string, width: number): string {
  if (document.widthOfString(text) <= width) return text;
  let kept = text.length;
  while (kept > 1 && document.widthOfString(`${text.slice(0, kept)}…`) > width) kept -= 1;
  return `${text.slice(0, kept).trimEnd()}…`;
}
