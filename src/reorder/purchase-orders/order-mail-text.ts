import { type PaperOfOrder, paperLine } from './order-paper.js';

export interface OrderMailText {
  subject: string;
  text: string;
  html: string;
}

/**
 * An order as a mail to the supplier: plain words, the lines, and the same as a document attached.
 * @param mayHaveCome whether an earlier attempt may have reached the supplier
 */
export function orderMailText(paper: PaperOfOrder, mayHaveCome: boolean): OrderMailText {
  const { number, studio, supplierName, customerNumber, lines, total, day } = paper;
  const paragraphs = [
    `To ${supplierName}`,
    ...(mayHaveCome
      ? [
          `This order may have reached you before. It is the same order, number ${number}, and not a further one: please deliver it once.`,
        ]
      : []),
    `${studio.name} orders, with number ${number} of ${day}:`,
    lines.map(paperLine).join('\n'),
    ...(total === null ? [] : [`Total: ${total}`]),
    ...(customerNumber === null ? [] : [`Our customer number with you: ${customerNumber}`]),
    'The order is attached as a document (PDF) and as a list (CSV). Please name the number of the order on the delivery note.',
    [studio.name, ...(studio.contact === null ? [] : [studio.contact])].join('\n'),
  ];
  return {
    subject: `Order ${number} – ${studio.name}`,
    text: paragraphs.join('\n\n'),
    html: [
      '<!doctype html>',
      `<html lang="en"><head><meta charset="utf-8"><title>Order ${number}</title></head>`,
      '<body style="font-family:sans-serif;line-height:1.5;max-width:45em;margin:1em">',
      ...paragraphs.map((text) => `<p>${escaped(text).replaceAll('\n', '<br>\n')}</p>`),
      '</body></html>',
    ].join('\n'),
  };
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (character) => entities[character] ?? '');
}
