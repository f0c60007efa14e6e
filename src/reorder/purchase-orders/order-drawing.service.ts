import { Injectable } from '@nestjs/common';
import { type Column, Paper } from '../../platform/drawing/paper.js';
import { drawPdf } from '../../platform/drawing/pdf.js';
import type { PaperLine, PaperOfOrder } from './order-paper.js';

const columns: readonly Column<PaperLine>[] = [
  { title: 'No.', share: 0.5, align: 'right', text: ({ lineNumber }) => String(lineNumber) },
  { title: 'Order code', share: 1.6, text: ({ orderCode }) => orderCode ?? '–' },
  { title: 'Product', share: 4.2, text: ({ product }) => product },
  { title: 'Packs', share: 0.8, align: 'right', text: ({ packs }) => String(packs) },
  { title: 'One pack', share: 1.6, text: ({ pack }) => pack },
  { title: 'Price of a pack', share: 1.7, align: 'right', text: ({ packPrice }) => packPrice ?? 'not known' },
  { title: 'Price', share: 1.7, align: 'right', text: ({ linePrice }) => linePrice ?? 'not known' },
];

/** Draws a purchase order as a document for the supplier. */
@Injectable()
export class OrderDrawing {
  /** @returns a PDF of A4 pages */
  draw(order: PaperOfOrder): Promise<Buffer> {
    const { number, studio, supplierName } = order;
    const title = `Purchase order ${number}`;
    return drawPdf(
      {
        size: 'A4',
        bufferPages: true,
        autoFirstPage: true,
        info: { Title: `${title}: ${studio.name}`, CreationDate: new Date(order.madeAt) },
      },
      (document) => {
        const paper = new Paper(document, {
          left: studio.name,
          mark: markOf(order),
          foot: `${title} · ${order.day}`,
        });
        paper.title(title, `to ${supplierName}`);
        paper.facts([
          ['From', studio.name],
          ...(studio.contact === null ? [] : ([['Contact', studio.contact]] as const)),
          ['Date', order.day],
          ...(order.customerNumber === null ? [] : ([['Customer number', order.customerNumber]] as const)),
        ]);
        paper.gap(8);
        paper.table(columns, order.lines);
        paper.sums(sumsOf(order));
        if (order.unpricedLines > 0) paper.paragraph(unpricedWords(order), 'soft');
        paper.gap(6);
        paper.paragraph(
          `Please name order ${number} on the delivery note, and deliver unopened goods with the longest remaining life you have.`,
          'soft',
        );
        if (paper.charactersReplaced > 0) {
          paper.paragraph(
            'Characters shown as ¿ are missing in the fonts of this document; the list (CSV) has them.',
            'soft',
          );
        }
        paper.finish();
      },
    );
  }
}

function markOf({ isDraft, isCalledOff }: PaperOfOrder): string {
  if (isCalledOff) return 'Called off: do not deliver';
  return isDraft ? 'Draft: not an order' : '';
}

function sumsOf({ linesSum, deliveryCost, total }: PaperOfOrder): [string, string][] {
  return [
    ['Lines', linesSum],
    ['Delivery', deliveryCost ?? 'as agreed'],
    ...(total === null ? [] : ([['Total', total]] as [string, string][])),
  ];
}

function unpricedWords({ unpricedLines }: PaperOfOrder): string {
  const lines = unpricedLines === 1 ? '1 line stands' : `${unpricedLines} lines stand`;
  return `${lines} here without a price; please confirm it before you deliver.`;
}
