import type { ReaderOptions } from 'zxing-wasm/reader';

/**
 * The symbols the trade's packages bear: GS1 DataMatrix and QR above all; GS1-128, ITF-14, EAN and UPC on boxes, DataBar
 * on small ones; Code 39 and Aztec where a maker numbers by the health industry's own code.
 */
const formats: ReaderOptions['formats'] = [
  'DataMatrix',
  'QRCode',
  'MicroQRCode',
  'RMQRCode',
  'Aztec',
  'Code128',
  'Code39Std',
  'EAN13',
  'EAN8',
  'UPCA',
  'UPCE',
  'ITF14',
  'DataBar',
  'DataBarLtd',
  'DataBarExp',
  'DataBarStk',
  'DataBarStkOmni',
  'DataBarExpStk',
];

/** Plain text, so that separators stay; every way of looking at a picture is tried, for packages lie as they lie. */
export const readerOptions: ReaderOptions = {
  formats,
  textMode: 'Plain',
  tryHarder: true,
  tryRotate: true,
  tryInvert: true,
  tryDownscale: true,
  maxNumberOfSymbols: 20,
};

/** A part of a picture, in its own dots, and how many times as large it is looked at. */
export interface Part {
  left: number;
  top: number;
  width: number;
  height: number;
  scale: number;
}

/** The whole picture of a camera is looked at no larger than this, in dots; what is small is looked for in the middle. */
const longestWhole = 1_280;
/** What is smaller is enlarged: a module should be some dots wide. */
const longestMiddle = 1_280;
const mostEnlarged = 2;

/** How to look at a picture of a camera until a symbol is found: the whole, then the middle as sharp as it is. */
export function partsOfFrame(width: number, height: number): Part[] {
  const whole = {
    left: 0,
    top: 0,
    width,
    height,
    scale: Math.min(1, longestWhole / Math.max(width, height)),
  };
  const middle = {
    left: Math.round(width / 4),
    top: Math.round(height / 4),
    width: Math.round(width / 2),
    height: Math.round(height / 2),
  };
  const scale = Math.min(mostEnlarged, longestMiddle / Math.max(middle.width, middle.height));
  return [whole, { ...middle, scale }];
}

/** A photo is looked at as large as it is, up to what a phone's memory holds easily. */
const mostDotsOfPhoto = 24_000_000;

/** How to look at a photo until a symbol is found: at its full size, then smaller, where grain and blur vanish. */
export function partsOfPhoto(width: number, height: number): Part[] {
  const full = Math.min(1, Math.sqrt(mostDotsOfPhoto / (width * height)));
  return [full, full / 2, full / 4].map((scale) => ({ left: 0, top: 0, width, height, scale }));
}
