const pointsPerMillimetre = 72 / 25.4;

/** Millimetres as points, which PDFs are measured in. */
export function points(millimetres: number): number {
  return millimetres * pointsPerMillimetre;
}

/**
 * Draws a PDF without margins. The library is loaded for the first one, since it would make every start slower.
 * @returns the whole file
 */
export async function drawPdf(
  options: Pick<PDFKit.PDFDocumentOptions, 'size' | 'autoFirstPage' | 'bufferPages'> & {
    info: PDFKit.DocumentInfo;
  },
  draw: (document: PDFKit.PDFDocument) => void,
): Promise<Buffer> {
  const { default: PdfDocument } = await import('pdfkit');
  const document = new PdfDocument({
    ...options,
    margin: 0,
    info: { Creator: 'Lotward', Producer: 'Lotward', ...options.info },
  });
  const chunks: Buffer[] = [];
  document.on('data', (chunk: Buffer) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => {
    document.on('end', resolve);
    document.on('error', reject);
  });
  draw(document);
  document.end();
  await ended;
  return Buffer.concat(chunks);
}
