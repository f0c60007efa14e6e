import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import bwipjs from 'bwip-js';
import { beforeAll, describe, expect, it } from 'vitest';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { readSymbol } from '../../src/catalogue/barcode.js';
import { readerOptions } from '../../src/web/scanner/decoding.js';
import { isHandedOn } from '../../src/web/scanner/handed-on.js';

// The reader of the pages, with the very options of the pages, on symbols drawn by bwip-js. The identifiers are those of
// the GS1 General Specifications, figure on symbology identifiers [S], and of ISO/IEC 15424 [M] for what is not GS1's.
const elements = '(01)09506000134352(10)AB(21)9';
const drawn: [bcid: string, content: string, identifier: string, text: string, kind: string][] = [
  ['gs1datamatrix', elements, ']d2', '010950600013435210AB\u001d219', 'gs1'],
  ['gs1-128', elements, ']C1', '010950600013435210AB\u001d219', 'gs1'],
  ['gs1qrcode', elements, ']Q3', '010950600013435210AB\u001d219', 'gs1'],
  ['databaromni', '(01)09506000134352', ']e0', '0109506000134352', 'gs1'],
  ['databarlimited', '(01)09506000134352', ']e0', '0109506000134352', 'gs1'],
  ['databarexpanded', elements, ']e0', '010950600013435210AB\u001d219', 'gs1'],
  ['ean13', '9506000134352', ']E0', '9506000134352', 'product only'],
  ['ean8', '95060002', ']E4', '95060002', 'product only'],
  ['upca', '950600134370', ']E0', '0950600134370', 'product only'],
  ['itf14', '19506000134359', ']I1', '19506000134359', 'product only'],
  ['qrcode', 'https://id.example.org/01/09506000134352', ']Q1', '', 'gs1'],
  ['datamatrix', 'LOT-12', ']d1', 'LOT-12', 'plain text'],
  ['code128', 'LOT-12', ']C0', 'LOT-12', 'plain text'],
  ['code39', 'LOT-12', ']A0', 'LOT-12', 'plain text'],
];

describe('the reader of the pages', () => {
  beforeAll(async () => {
    const wasm = readFileSync(fileURLToPath(import.meta.resolve('zxing-wasm/reader/zxing_reader.wasm')));
    await prepareZXingModule({
      overrides: { wasmBinary: new Uint8Array(wasm).buffer },
      fireImmediately: true,
    });
  });

  const read = async (bcid: string, text: string) => {
    const quiet = { paddingwidth: 12, paddingheight: 12, backgroundcolor: 'ffffff' };
    const picture = await bwipjs.toBuffer({ bcid, text, scale: 3, ...quiet });
    const results = await readBarcodes(new Uint8Array(picture), readerOptions);
    return results.filter((result) => isHandedOn(result.symbologyIdentifier, result.text));
  };

  it.each(drawn)(
    'tells what a symbol is, and keeps separators: %s',
    async (bcid, content, identifier, text, kind) => {
      const results = await read(bcid, content);
      expect(results.map((result) => [result.symbologyIdentifier, result.text])).toEqual([
        [identifier, text || content],
      ]);
      // As the scanner of the pages hands it on, the identifier in front.
      expect(readSymbol({ text: identifier + (text || content) }, '2026-03-01').kind).toBe(kind);
    },
  );

  it('passes over interleaved 2 of 5 that is no GTIN, which a part of a longer symbol may be', async () => {
    expect(await read('interleaved2of5', '123456')).toEqual([]);
  });
});
