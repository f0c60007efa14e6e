import { inflateSync } from 'node:zlib';

export const pointsPerMillimetre = 72 / 25.4;

/** A page of a PDF. */
export interface Page {
  widthMillimetres: number;
  heightMillimetres: number;
  /** What is drawn on it. */
  content: string;
}

/** The pages of a PDF as its own objects name them. */
export function pagesOf(pdf: Buffer): Page[] {
  const text = pdf.toString('latin1');
  const contents = new Map<string, string>();
  const streamHead = /(\d+) 0 obj\n<<\n\/Length (\d+)\n(\/Filter \/FlateDecode\n)?>>\nstream\n/g;
  for (const head of text.matchAll(streamHead)) {
    const [all, id = '', length, filter] = head;
    const bytes = pdf.subarray(head.index + all.length, head.index + all.length + Number(length));
    contents.set(id, (filter === undefined ? bytes : inflateSync(bytes)).toString('latin1'));
  }
  const page = /\/Type \/Page\n\/Parent .*\n\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]\n\/Contents (\d+) 0 R/g;
  return [...text.matchAll(page)].map(([, width, height, id = '']) => ({
    widthMillimetres: Number(width) / pointsPerMillimetre,
    heightMillimetres: Number(height) / pointsPerMillimetre,
    content: contents.get(id) ?? '',
  }));
}

/** The text drawn on a page, without the spacing between its letters. */
export function textOn(page: Page): string {
  return [...page.content.matchAll(/\[(.*?)\] TJ/g)]
    .map((shown) =>
      [...(shown[1] ?? '').matchAll(/<([0-9a-f]*)>/g)]
        .map((part) => Buffer.from(part[1] ?? '', 'hex').toString('latin1'))
        .join(''),
    )
    .join('\n');
}
