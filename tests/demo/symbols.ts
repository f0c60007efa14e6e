import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import bwipjs from 'bwip-js';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

export type Symbology = 'gs1datamatrix' | 'gs1-128' | 'qrcode' | 'ean13';

export interface ReadSymbol {
  text: string;
  symbologyIdentifier: string;
}

const linear: ReadonlySet<Symbology> = new Set(['gs1-128', 'ean13']);

/** Renders a symbol as a picture (PNG). GS1 symbols take bracketed element strings. */
export async function renderSymbol(symbology: Symbology, content: string): Promise<Buffer> {
  return bwipjs.toBuffer({
    bcid: symbology,
    text: content,
    scale: 4,
    paddingwidth: 10,
    paddingheight: 10,
    backgroundcolor: 'ffffff',
    ...(linear.has(symbology) ? { height: 15 } : {}),
  });
}

let ready = false;

/** Reads the one symbol of a picture, as a camera or hand-held scanner would hand it on: separators kept. */
export async function decodeSymbol(picture: Uint8Array): Promise<ReadSymbol> {
  if (!ready) {
    const wasm = fileURLToPath(import.meta.resolve('zxing-wasm/reader/zxing_reader.wasm'));
    const bytes = readFileSync(wasm);
    prepareZXingModule({
      overrides: {
        wasmBinary: bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
      },
    });
    ready = true;
  }
  const [symbol] = await readBarcodes(Uint8Array.from(picture), { tryHarder: true, textMode: 'Plain' });
  if (!symbol?.isValid) throw new Error('No symbol could be read in the picture.');
  return { text: symbol.text, symbologyIdentifier: symbol.symbologyIdentifier };
}
