/** Reads symbols off the page's own thread, so that the page stays quick while the camera looks. */
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import wasmUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import type { ReadAnswer, ReadRequest } from './decoder.protocol.js';
import { type Part, partsOfFrame, partsOfPhoto, readerOptions } from './decoding.js';
import { isHandedOn } from './handed-on.js';

const worker = globalThis as unknown as {
  onmessage: (event: { data: ReadRequest }) => void;
  postMessage(answer: ReadAnswer): void;
};

// From this service, not from where the package would fetch it.
const reader = prepareZXingModule({ overrides: { locateFile: () => wasmUrl }, fireImmediately: true });
// Whoever asks for a symbol is told; until then nobody waits.
reader.catch(() => undefined);

const canvas = new OffscreenCanvas(1, 1);
const context = canvas.getContext('2d', { willReadFrequently: true });

function dotsOf(picture: ImageBitmap, { left, top, width, height, scale }: Part): ImageData {
  if (!context) throw new Error('There is no canvas to look at the picture.');
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  context.drawImage(picture, left, top, width, height, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height);
}

async function symbolsOf(picture: ImageBitmap, parts: Part[]): Promise<string[]> {
  for (const part of parts) {
    const results = await readBarcodes(dotsOf(picture, part), readerOptions);
    const symbols = results
      .filter(({ isValid, symbologyIdentifier, text }) => isValid && isHandedOn(symbologyIdentifier, text))
      .map(({ symbologyIdentifier, text }) => symbologyIdentifier + text);
    if (symbols.length > 0) return [...new Set(symbols)];
  }
  return [];
}

async function read(request: ReadRequest): Promise<ReadAnswer> {
  const { id } = request;
  let picture: ImageBitmap | undefined;
  try {
    await reader;
    picture =
      'frame' in request ? request.frame : await createImageBitmap(request.photo).catch(() => undefined);
    if (!picture) return { id, failed: 'no picture' };
    const parts = ('frame' in request ? partsOfFrame : partsOfPhoto)(picture.width, picture.height);
    return { id, symbols: await symbolsOf(picture, parts) };
  } catch {
    return { id, failed: 'no reader' };
  } finally {
    picture?.close();
  }
}

worker.onmessage = ({ data }) => void read(data).then((answer) => worker.postMessage(answer));
