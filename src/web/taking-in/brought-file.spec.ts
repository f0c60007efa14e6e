import { expect, it } from 'vitest';
import { mostFileBytes, readBroughtFile } from './brought-file.js';

it('gives the text of a file that is UTF-8, its byte order mark with it', async () => {
  expect(await readBroughtFile(new Blob(['\uFEFFmaker;Jördis']))).toEqual({ text: '\uFEFFmaker;Jördis' });
});

it('takes no other encoding, no workbook and nothing too long', async () => {
  // "Jördis" in ISO 8859-1.
  const latin = new Uint8Array([0x4a, 0xf6, 0x72, 0x64, 0x69, 0x73]);
  expect(await readBroughtFile(new Blob([latin]))).toEqual({ fault: 'notUtf8' });
  expect(await readBroughtFile(new Blob(['PK\u0003\u0004']))).toEqual({ fault: 'workbook' });
  expect(await readBroughtFile(new Blob(['x'.repeat(mostFileBytes + 1)]))).toEqual({ fault: 'tooLong' });
});
