import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inPrintedFont, type LabelFacts, labelContent, labelLines } from './label-text.js';

const bottle: LabelFacts = {
  form: 'bottle',
  labelCode: 'A123456789BC',
  productName: 'Brow line',
  detail: 'Umber',
  code: 'L-7',
  codeState: 'printed',
  useBy: '2028-06-30',
  openedAt: null,
  gtin14: '09506000134352',
};
const texts = (facts: Partial<LabelFacts>) =>
  labelLines({ ...bottle, ...facts }, 'Europe/Vienna').map((line) => line.text);

describe('the text of a label', () => {
  it('names product, shade, lot, date and code, and leaves room for the day of opening', () => {
    expect(texts({})).toEqual([
      'Brow line',
      'Umber',
      'Lot L-7',
      'Use by 2028-06-30',
      'A123-4567-89BC',
      'Opened on ____________',
    ]);
  });

  it('tells the day of opening where the studio is, once it is opened', () => {
    expect(texts({ openedAt: '2026-10-31T23:30:00.000Z' }).at(-1)).toBe('Opened on 2026-11-01');
  });

  it('has no day of opening on a box', () => {
    expect(texts({ form: 'box', detail: null })).toEqual([
      'Brow line',
      'Lot L-7',
      'Use by 2028-06-30',
      'A123-4567-89BC',
    ]);
  });

  it('says what is not printed on the package', () => {
    expect(texts({ code: null, codeState: 'none printed', useBy: null }).slice(2, 4)).toEqual([
      'No lot printed',
      'No use-by printed',
    ]);
    expect(texts({ code: null, codeState: 'unreadable' })[2]).toBe('Lot unreadable');
  });

  it('drops accents the font lacks and marks other characters, whatever the name', () => {
    expect(inPrintedFont('Crème Nº 5 – Šárka Őri')).toBe('Crème Nº 5 – Šárka Ori');
    expect(inPrintedFont('茶色 brown 🟤')).toBe('?? brown ?');
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(inPrintedFont(text)).toMatch(/^[\x20-\x7e\xa0-\xff€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]*$/);
      }),
    );
  });
});

describe('the symbol of a label', () => {
  it('holds number, date, lot and code', () => {
    expect(labelContent(bottle)).toEqual({
      code: 'A123456789BC',
      gtin14: '09506000134352',
      useBy: '2028-06-30',
      lotCode: 'L-7',
    });
  });

  it('holds the code alone when nothing else is known', () => {
    expect(labelContent({ ...bottle, gtin14: null, useBy: null, code: null })).toEqual({
      code: 'A123456789BC',
    });
  });
});
