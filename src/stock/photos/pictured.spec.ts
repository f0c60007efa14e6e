import fc from 'fast-check';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { pictured } from './pictured.js';

/** A PNG by another program: pngjs. */
const png = () => new Uint8Array(PNG.sync.write(new PNG({ width: 2, height: 3 })));

/** A baseline JPEG up to its frame: SOI, APP0 (JFIF), a comment, SOF0 of 16 × 8. */
const jpeg = () =>
  Uint8Array.from([
    ...[0xff, 0xd8],
    ...[
      0xff, 0xe0, 0x00, 0x10, 0x4a, 0x46, 0x49, 0x46, 0x00, 0x01, 0x02, 0x00, 0x00, 0x01, 0x00, 0x01, 0x00,
      0x00,
    ],
    ...[0xff, 0xfe, 0x00, 0x05, 0x61, 0x62, 0x63],
    ...[0xff, 0xff, 0xc0, 0x00, 0x11, 0x08, 0x00, 0x10, 0x00, 0x08, 0x03],
  ]);

describe('what a file is by its bytes', () => {
  it('knows a PNG and a JPEG', () => {
    expect(pictured(png())).toBe('image/png');
    expect(pictured(jpeg())).toBe('image/jpeg');
  });

  it('knows neither when it is cut off before its size', () => {
    for (const whole of [png().subarray(0, 33), jpeg()]) {
      for (let length = 0; length < whole.length - 2; length += 1) {
        expect(pictured(whole.subarray(0, length)), `${length}`).toBeNull();
      }
    }
  });

  it('refuses a picture without width or height', () => {
    const flat = png();
    flat.set([0, 0, 0, 0], 16);
    expect(pictured(flat)).toBeNull();
    const low = jpeg();
    low.set([0, 0], low.length - 5);
    expect(pictured(low)).toBeNull();
  });

  it('refuses what only begins like one', () => {
    const page = new TextEncoder().encode('<script>alert(1)</script>'.repeat(4));
    expect(pictured(page)).toBeNull();
    expect(pictured(Uint8Array.from([0xff, 0xd8, 0xff, ...page]))).toBeNull();
    expect(pictured(Uint8Array.from([...png().subarray(0, 8), ...page]))).toBeNull();
    expect(
      pictured(Uint8Array.from([0xff, 0xd8, 0xff, 0xda, 0, 2, 0xff, 0xc0, 0, 17, 8, 0, 16, 0, 8])),
    ).toBeNull();
  });

  it('ends on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), fc.boolean(), (bytes, likeJpeg) => {
        const tried = likeJpeg ? Uint8Array.from([0xff, 0xd8, ...bytes]) : bytes;
        expect(['image/jpeg', 'image/png', null]).toContain(pictured(tried));
      }),
    );
  });
});
