import { describe, expect, it } from 'vitest';
import { readSymbol, type SymbolInput } from '../catalogue/barcode.js';
import { checkDigit } from '../catalogue/gs1/check-digit.js';
import { makeLabelCode } from '../catalogue/own-label.js';
import { goodsOf, scannedGoods } from './received-goods.js';

const today = '2026-11-25';
const gtin = '09506000134352';
const parcel = `00950600013435200${checkDigit('00950600013435200')}`;

const ownLabel = makeLabelCode(new Uint8Array(12));
const scan = (symbol: SymbolInput, ownLabels: string[] = []) =>
  scannedGoods(readSymbol(symbol, today), (code) => ownLabels.includes(code));

describe('the symbol on received goods', () => {
  it('gives number, lot and dates', () => {
    expect(scan({ text: `01${gtin}11260115172806301012-7`, symbologyIdentifier: ']d2' })).toEqual({
      gtin,
      count: 1,
      printed: {
        lotCode: '12-7',
        useBy: { date: '2028-06-30', precision: 'day' },
        producedOn: { date: '2026-01-15', precision: 'day' },
      },
    });
  });

  it('gives how many are inside when it names its content', () => {
    const scanned = scan({ text: `(00)${parcel}(02)${gtin}(37)24` });
    expect(scanned).toMatchObject({ gtin, count: 24 });
  });

  it.each([
    ['a wrong check digit', '9506000134353', /check digit/],
    ['plain text', 'LOT 7', /"LOT 7" names no product/],
    ['the label of a container here', ownLabel, /studio's own/],
    ['such a label beside a number', `(01)${gtin}(10)7(91)${ownLabel}`, /studio's own/],
    ['a symbol without number', `(00)${parcel}`, /names no product/],
  ])('is refused with %s', (_, text, message) => {
    expect(scan({ text }, [ownLabel])).toEqual({ fault: expect.stringMatching(message) });
  });
});

describe('the last day of use on received goods', () => {
  it.each([
    ['a moment after which nothing may be used', '(7003)2805011200', '2028-05-01'],
    ['an earlier moment beside a use-by date', '(17)280630(7003)2805011200', '2028-05-01'],
    ['a best-before date alone', '(15)280331', '2028-03-31'],
    ['a use-by date beside a best-before date', '(15)280331(17)280630', '2028-06-30'],
  ])('is taken from %s', (_, dates, date) => {
    expect(scan({ text: `(01)${gtin}${dates}(10)7` })).toMatchObject({
      printed: { useBy: { date, precision: 'day' } },
    });
  });
});

describe('a foreign text that looks like an own label', () => {
  it('leaves what stands beside it as it is', () => {
    expect(scan({ text: `(01)${gtin}(10)7(91)${ownLabel}` })).toEqual({
      gtin,
      count: 1,
      printed: { lotCode: '7' },
    });
  });

  it('names no product by itself', () => {
    expect(scan({ text: ownLabel })).toEqual({ fault: expect.stringMatching(/names no product/) });
  });
});

describe('the product of received goods', () => {
  const scanned = { gtin, count: 1, printed: {} };

  it('is the one whose number was scanned, a pack counting with its content', () => {
    expect(goodsOf(undefined, scanned, { productId: 'p', contentCount: 20 })).toMatchObject({
      productId: 'p',
      piecesEach: 20,
    });
    expect(goodsOf('p', { ...scanned, count: 3 }, { productId: 'p', contentCount: 20 })).toMatchObject({
      piecesEach: 60,
      packPieces: 20,
    });
    expect(goodsOf('p', { ...scanned, count: 24 }, { productId: 'p', contentCount: 1 })).toMatchObject({
      piecesEach: 24,
      packPieces: 24,
    });
  });

  it('is refused when another one was chosen by hand, naming both', () => {
    expect(goodsOf('q', scanned, { productId: 'p', contentCount: 1 })).toEqual({
      field: 'productId',
      fault: expect.stringMatching(/product q .* product p/),
    });
  });

  it('is the one chosen by hand while the number is not registered, with a warning', () => {
    expect(goodsOf('q', scanned, undefined)).toEqual({
      productId: 'q',
      piecesEach: 1,
      packPieces: 1,
      warnings: [expect.stringContaining(gtin)],
    });
  });

  it('is refused when neither a number nor a choice names it', () => {
    expect(goodsOf(undefined, scanned, undefined)).toMatchObject({ field: 'symbol' });
    expect(goodsOf(undefined, null, undefined)).toMatchObject({ field: 'productId' });
  });
});
