import { describe, expect, it } from 'vitest';
import { partsOfFrame, partsOfPhoto } from './decoding.js';

const dots = ({ width, height, scale }: { width: number; height: number; scale: number }) =>
  width * scale * (height * scale);

describe('a picture of a camera', () => {
  it('is looked at whole, then in its middle without losing a dot', () => {
    expect(partsOfFrame(1920, 1080)).toEqual([
      { left: 0, top: 0, width: 1920, height: 1080, scale: 2 / 3 },
      { left: 480, top: 270, width: 960, height: 540, scale: 4 / 3 },
    ]);
  });

  it('is enlarged in its middle when it is small, at most twice', () => {
    expect(partsOfFrame(640, 480)[1]).toMatchObject({ width: 320, height: 240, scale: 2 });
  });

  it('is never more to look at than a small picture, however large the camera takes it', () => {
    for (const part of partsOfFrame(4_096, 3_072)) expect(dots(part)).toBeLessThan(4_200_000);
  });
});

describe('a photo', () => {
  it('is looked at in full size first', () => {
    expect(partsOfPhoto(4_000, 3_000).map(({ scale }) => scale)).toEqual([1, 0.5, 0.25]);
  });

  it('is made smaller when no phone could hold it', () => {
    for (const part of partsOfPhoto(12_000, 9_000)) expect(dots(part)).toBeLessThanOrEqual(24_000_001);
  });
});
