import { describe, expect, it } from 'vitest';
import { labelAt, wholeLabel } from './label-words.js';
import { tokensOf } from './tokens.js';

function label(text: string): [string, string] | null {
  const tokens = tokensOf(text);
  const hit = labelAt(tokens, 0);
  return hit === null ? null : [hit.role, tokens[hit.next]?.text ?? ''];
}

describe('a label', () => {
  it.each<[string, string, string]>([
    ['Lot #A1', 'lot', 'A1'],
    ["Lot #'s: A1", 'lot', 'A1'],
    ['Lot(s): A1', 'lot', 'A1'],
    ['Lot/Batch No.: A1', 'lot', 'A1'],
    ['Ch.-B.: A1', 'lot', 'A1'],
    ['Chargen-Nr. A1', 'lot', 'A1'],
    ['N° de lot : A1', 'lot', 'A1'],
    ['Número de lote: A1', 'lot', 'A1'],
    ['code_info: A1', 'lot', 'A1'],
    ['Charge A1', 'lot', 'A1'],
    ['Units: A1', 'lot', 'A1'],
    ['exp. date 10/15', 'use-by', '10'],
    ['Use-by 10', 'use-by', '10'],
    ['Best if used by 10', 'use-by', '10'],
    ['MHD: 10', 'use-by', '10'],
    ["Date d'expiration: 10", 'use-by', '10'],
    ['UPC #: 1', 'gtin', '1'],
    ['NDC 1-2', 'other number', '1-2'],
    ['product code 12', 'other number', '12'],
    ['Recall # F-1', 'reference', 'F-1'],
    ['all lots of', 'all lots', 'of'],
    ['not limited to lots', 'open-ended', 'lots'],
    ['Hersteller: N', 'maker', 'N'],
    ['Farbton: N', 'shade', 'N'],
  ])('%s', (text, role, next) => {
    const found = label(text);
    expect(found?.[0]).toBe(role);
    expect(found?.[1].startsWith(next)).toBe(true);
  });

  it.each([
    'product is recalled',
    'charge of the case',
    'los productos',
    'code of conduct',
    'reason enough',
    'units were sold',
  ])('is not an everyday word: %s', (text) => {
    expect(label(text)).toBeNull();
  });

  it('says whether it is written in a language that puts the day first', () => {
    expect(labelAt(tokensOf('MHD: 1'), 0)?.dayFirst).toBe(true);
    expect(labelAt(tokensOf('Exp: 1'), 0)?.dayFirst).toBe(false);
  });

  it('may be the whole of a cell', () => {
    const tokens = tokensOf('Lot No. Expiry');
    expect(wholeLabel(tokens, 0, 3)?.role).toBe('lot');
    expect(wholeLabel(tokens, 0, 4)).toBeNull();
  });
});
