import type { PhotoMediaType } from './photo-media-type.js';

const pngSignature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** `IHDR`, the chunk a PNG begins with. */
const pngHeader = [0x49, 0x48, 0x44, 0x52];

/**
 * What a file is by its own bytes, whatever it was called: a PNG by its signature and first chunk (W3C PNG, 5.2 and
 * 11.2.1), a JPEG by its markers up to the frame (ITU-T T.81, B.1 and B.2.2). Both must have a width and a height.
 * @returns null when it is neither, or cut off before its size
 */
export function pictured(bytes: Uint8Array): PhotoMediaType | null {
  if (isPng(bytes)) return 'image/png';
  return isJpeg(bytes) ? 'image/jpeg' : null;
}

function isPng(bytes: Uint8Array): boolean {
  if (bytes.length < 33 || !holds(bytes, 0, pngSignature) || !holds(bytes, 12, pngHeader)) return false;
  return number(bytes, 8, 4) === 13 && number(bytes, 16, 4) > 0 && number(bytes, 20, 4) > 0;
}

/** Walks from segment to segment; each but the standing markers tells its length. */
function isJpeg(bytes: Uint8Array): boolean {
  if (!holds(bytes, 0, [0xff, 0xd8])) return false;
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return false;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (isFrame(marker)) {
      return at + 9 <= bytes.length && number(bytes, at + 5, 2) > 0 && number(bytes, at + 7, 2) > 0;
    }
    if (marker === 0xd9 || marker === 0xda) return false;
    const length = number(bytes, at + 2, 2);
    if (length < 2) return false;
    at += 2 + length;
  }
  return false;
}

/** SOF0 to SOF15; three codes among them mean other things. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

function holds(bytes: Uint8Array, at: number, expected: readonly number[]): boolean {
  return expected.every((byte, index) => bytes[at + index] === byte);
}

/** Big-endian, as both formats write numbers. */
function number(bytes: Uint8Array, at: number, length: number): number {
  let value = 0;
  for (let index = 0; index < length; index += 1) value = value * 256 + (bytes[at + index] ?? 0);
  return value;
}
