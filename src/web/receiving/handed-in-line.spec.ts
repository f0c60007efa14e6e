import { describe, expect, it } from 'vitest';
import type { ProductView } from '../../catalogue/products.views.js';
import { handedInLine, lacksOfLine } from './handed-in-line.js';
import { changedLine, type LineDraft, newLine, piecesOf } from './line-draft.js';
import type { ScannedGoods } from './scanned-goods.js';

const product = { id: 'product', name: 'Liner' } as ProductView;
const scanned: ScannedGoods = {
  text: 'symbol',
  symbologyIdentifier: ']d2',
  gtin: '09506000134352',
  count: 1,
  lotCode: 'CL-2041',
  useBy: '2028-10-31',
  useByPrecision: 'month',
  producedOn: null,
  serial: null,
};
const scannedLine = newLine('scanned', { scanned, product, contentCount: 20 });
const typedLine: LineDraft = {
  ...newLine('typed', { product }),
  lotCode: ' HU-118 ',
  useBy: '2028-10',
};
const handedIn = (line: LineDraft) =>
  handedInLine(line, { usualPlaceId: 'shelf', currency: 'EUR', timeZone: 'Europe/Vienna' });
const lacks = (line: LineDraft) => lacksOfLine(line, 'shelf', 'EUR');

it('hands in the symbol and leaves out what it says', () => {
  expect(handedIn({ ...scannedLine, quantity: '2' })).toEqual({
    symbol: { text: 'symbol', symbologyIdentifier: ']d2' },
    quantity: 2,
    placeId: 'shelf',
  });
  expect(piecesOf({ ...scannedLine, quantity: '2' })).toBe(40);
});

it('names the product chosen for a number that is not in the register', () => {
  expect(handedIn({ ...scannedLine, contentCount: null })).toMatchObject({
    productId: 'product',
    symbol: { text: 'symbol' },
  });
});

it('hands in what a symbol without a number says, and not the symbol', () => {
  const line = newLine('plain', { scanned: { ...scanned, gtin: null }, product });
  expect(handedIn(line)).toEqual({
    productId: 'product',
    codes: [{ kind: 'lot', code: 'CL-2041' }],
    useBy: '2028-10',
    quantity: 1,
    placeId: 'shelf',
  });
});

it('hands in what was typed, as exactly as it was typed', () => {
  const line: LineDraft = {
    ...typedLine,
    batchCode: 'B7',
    quantity: '3',
    piecesEach: '20',
    faulty: { 'broken seal': '1', 'damaged package': '0' },
    placeId: 'case',
    price: '12,5',
    decision: 'separate lot',
  };
  expect(handedIn(line)).toEqual({
    productId: 'product',
    codes: [
      { kind: 'lot', code: 'HU-118' },
      { kind: 'batch', code: 'B7' },
    ],
    useBy: '2028-10',
    quantity: 3,
    piecesEach: 20,
    placeId: 'case',
    faults: [{ kind: 'broken seal', pieces: 1 }],
    unitCostMinor: 1250,
    sameCodeDecision: 'separate lot',
  });
});

it('says that nothing is printed instead of guessing', () => {
  expect(handedIn({ ...typedLine, codeState: 'none printed', noUseBy: true })).toMatchObject({
    codeState: 'none printed',
    useBy: null,
  });
  expect(handedIn({ ...typedLine, codeState: 'none printed', noUseBy: true })).not.toHaveProperty('codes');
});

it('says of a bottle that came opened since when, by the day of the studio, and what is left', () => {
  const bottle = { ...product, stockForm: 'container', kind: 'pigment' } as ProductView;
  const line = { ...typedLine, product: bottle, openedOn: '2026-07-01', millilitresLeft: '7,5' };
  expect(handedIn(line)).toMatchObject({ openedAt: '2026-06-30T22:00:00Z', remainingMicrolitres: 7500 });
  // Pieces are used once each, so nothing of them comes opened.
  expect(handedIn({ ...line, product: { ...bottle, stockForm: 'pieces' } })).not.toHaveProperty('openedAt');
});

describe('what is lacking', () => {
  it('is nothing for what was scanned whole or typed whole', () => {
    expect(lacks(scannedLine)).toEqual([]);
    expect(lacks(typedLine)).toEqual([]);
  });

  it.each<[Partial<LineDraft>, string]>([
    [{ product: null }, 'product'],
    [{ lotCode: ' ' }, 'lot'],
    [{ useBy: '' }, 'useBy'],
    [{ useBy: '31.10.2028' }, 'useByUnreadable'],
    [{ useBy: '2028-13' }, 'useByUnreadable'],
    [{ quantity: '0' }, 'quantity'],
    [{ quantity: '1.5' }, 'quantity'],
    [{ piecesEach: '' }, 'quantity'],
    [{ faulty: { 'broken seal': '1', 'damaged package': '1' } }, 'faulty'],
    [{ price: 'free' }, 'price'],
    [{ price: '1.234' }, 'price'],
    [{ millilitresLeft: 'half' }, 'left'],
    [{ again: 1 }, 'again'],
    [{ question: { recorded: ['2027-01-31'], choices: ['separate lot'] } }, 'decision'],
  ])('is told: %j', (change, lack) => {
    expect(lacks({ ...typedLine, ...change })).toEqual([lack]);
  });

  it('is the place where none is chosen at all', () => {
    expect(lacksOfLine(typedLine, '', 'EUR')).toEqual(['place']);
  });
});

it('asks anew which date is right when what is printed was changed, and only then', () => {
  const decided: LineDraft = {
    ...typedLine,
    question: { recorded: ['2027-01-31'], choices: ['separate lot'] },
    decision: 'separate lot',
    faults: [{ field: 'useBy', message: 'no' }],
  };
  expect(changedLine(decided, { quantity: '2' })).toMatchObject({ decision: 'separate lot' });
  expect(changedLine(decided, { useBy: '2029' })).toMatchObject({ decision: '', question: null, faults: [] });
});
