import { describe, expect, it } from 'vitest';
import { readSymbol } from '../catalogue/barcode.js';
import { makeLabelCode } from '../catalogue/own-label.js';
import { type FoundGoods, namedBy, soughtBy } from './symbol-naming.js';

const gtin = '09506000134352';
const label = makeLabelCode(new Uint8Array(12).fill(3));
const foreign = makeLabelCode(new Uint8Array(12).fill(5));
const read = (text: string) => readSymbol({ text }, '2026-03-10');

const goods: FoundGoods = {
  labels: [{ code: label, containerId: 'bottle', lotId: 'umber-1', productId: 'umber' }],
  gtins: [{ gtin, productId: 'liner', contentCount: 20 }],
  lotCodes: [
    { code: 'N-1', lotId: 'liner-1', productId: 'liner', useBy: '2030-06-30' },
    { code: 'N-1', lotId: 'liner-2', productId: 'liner', useBy: '2031-06-30' },
    { code: 'N-1', lotId: 'umber-2', productId: 'umber', useBy: null },
    { code: foreign, lotId: 'umber-3', productId: 'umber', useBy: null },
  ],
};
const named = (text: string, found = goods) => namedBy(read(text), found);

describe('what a symbol names', () => {
  it('is the container of a label that was printed here', () => {
    expect(named(label)).toMatchObject({
      kind: 'named',
      named: { productIds: ['umber'], lotIds: ['umber-1'], containerId: 'bottle' },
      contentCount: null,
    });
  });

  it('is the lot whose code stands on it, when what looks like a label was never printed here', () => {
    expect(named(foreign)).toMatchObject({
      kind: 'named',
      reading: { kind: 'plain text' },
      named: { lotIds: ['umber-3'], containerId: null },
    });
  });

  it('is the product and lot of an element string whose AI 91 only looks like a label', () => {
    expect(named(`(01)${gtin}(10)N-1(91)${foreign}`)).toMatchObject({
      kind: 'named',
      reading: { kind: 'gs1' },
      named: { productIds: ['liner'], lotIds: ['liner-1', 'liner-2'] },
    });
  });

  it('is the lot of the date in the symbol, of several with one code', () => {
    expect(named(`(01)${gtin}(17)310630(10)N-1`)).toMatchObject({ named: { lotIds: ['liner-2'] } });
    expect(named(`(01)${gtin}(17)320630(10)N-1`)).toMatchObject({
      named: { lotIds: ['liner-1', 'liner-2'] },
    });
  });

  it('is a product alone where no lot stands in the symbol, with the pieces in its package', () => {
    for (const text of [gtin, `(01)${gtin}`]) {
      expect(named(text)).toMatchObject({ named: { productIds: ['liner'], lotIds: null }, contentCount: 20 });
    }
  });

  it('counts no pieces for a number of what is contained', () => {
    expect(named(`(00)395060001343520001(02)${gtin}(37)5(10)N-1`)).toMatchObject({
      kind: 'named',
      contentCount: null,
    });
  });

  it('is every lot that bears a typed code, in capitals or not', () => {
    expect(named('n-1')).toMatchObject({
      named: { productIds: ['liner', 'umber'], lotIds: ['liner-1', 'liner-2', 'umber-2'] },
    });
  });

  it.each([
    ['a lot never received', `(01)${gtin}(10)N-9`, { productId: 'liner', lotCode: 'N-9' }],
    ['a product without that number', '(01)09506000134369', { gtin: '09506000134369' }],
    ['text that nothing bears', 'nothing', {}],
    ['an element string without product number', ']d291S1', {}],
  ])('is not known: %s', (_, text, facts) => {
    expect(named(text)).toMatchObject({ kind: 'unknown', facts });
  });

  it('is nothing when the symbol is faulty', () => {
    const naming = named('(01)09506000134353');
    expect(naming).toMatchObject({ kind: 'unusable', detail: expect.stringContaining('Scan it again') });
  });

  it.each([label, foreign, gtin, `(01)${gtin}(10)N-1`, `(01)${gtin}(10)N-1(91)${foreign}`, 'n-1', '(10)N-1'])(
    'needs no more of the record than what is sought for %s',
    (text) => {
      const { labelCode, gtin: number, lotCodes } = soughtBy(read(text));
      const found: FoundGoods = {
        labels: goods.labels.filter(({ code }) => code === labelCode),
        gtins: goods.gtins.filter((one) => one.gtin === number),
        lotCodes: goods.lotCodes.filter(({ code }) => lotCodes.includes(code)),
      };
      expect(named(text, found)).toEqual(named(text));
    },
  );
});
