import { describe, expect, it } from 'vitest';
import { checkDigit } from '../catalogue/gs1/check-digit.js';
import { makeLabelCode } from '../catalogue/own-label.js';
import { goodsOf, scannedGoods } from './received-goods.js';

const today = '2026-11-25';
const gtin = '09506000134352';
const parcel = `00950600013435200${checkDigit('00950600013435200')}`;

describe('the symbol on received goods', () => {
  it('gives number, lot and dates', () => {
    expect(
      scannedGoods({ text: `01${gtin}11260115172806301012-7`, symbologyIdentifier: ']d2' }, today),
    ).toEqual({
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
    const scanned = scannedGoods({ text: `(00)${parcel}(02)${gtin}(37)24` }, today);
    expect(scanned).toMatchObject({ gtin, count: 24 });
  });

  it.each([
    ['a wrong check digit', '9506000134353', /check digit/],
    ['plain text', 'LOT 7', /"LOT 7" names no product/],
    ['an own label', makeLabelCode(new Uint8Array(12)), /studio's own/],
    ['a symbol without number', `(00)${parcel}`, /names no product/],
  ])('is refused with %s', (_, text, message) => {
    expect(scannedGoods({ text }, today)).toEqual({ fault: expect.stringMatching(message) });
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
      warnings: [expect.stringContaining(gtin)],
    });
  });

  it('is refused when neither a number nor a choice names it', () => {
    expect(goodsOf(undefined, scanned, undefined)).toMatchObject({ field: 'symbol' });
    expect(goodsOf(undefined, null, undefined)).toMatchObject({ field: 'productId' });
  });
});
