import { describe, expect, it } from 'vitest';
import type { LotTerm, ScopeItem } from '../../stock/lot-matching/lot-scope.js';
import { scopeWords } from './scope-words.js';

const item = (fields: Partial<ScopeItem>): ScopeItem => ({
  makerName: 'Halden Colour Works',
  productName: 'Umber',
  shade: 'Warm 02',
  gtins: [],
  productIds: [],
  lots: [],
  openEnded: false,
  ...fields,
});
const none = new Map<string, string>();
const words = (...lots: LotTerm[]) => scopeWords({ items: [item({ lots })] }, none)[0];
const product = 'Umber Warm 02 by Halden Colour Works';

describe('a scope in words', () => {
  it.each<[LotTerm, string]>([
    [{ kind: 'all lots' }, 'all lots'],
    [{ kind: 'code', code: 'AB 12-34', useBy: null }, 'lot AB 12-34'],
    [
      { kind: 'code', code: 'A1', useBy: { from: '2026-10-01', through: '2026-10-31' } },
      'lot A1 (use by from 2026-10-01 through 2026-10-31)',
    ],
    [
      { kind: 'code range', from: '07110002', through: '07110009', useBy: null },
      'lots 07110002 through 07110009',
    ],
    [
      { kind: 'use-by', useBy: { from: null, through: '2027-01-31' } },
      'lots with a use-by date up to 2027-01-31',
    ],
    [
      { kind: 'manufactured', manufactured: { from: '2026-01-05', through: null } },
      'lots manufactured from 2026-01-05',
    ],
  ])('names what is meant: %j', (term, expected) => {
    expect(words(term)).toBe(`${product}: ${expected}.`);
  });

  it('says when no lots are named, and when more may be meant', () => {
    expect(words()).toBe(`${product}: no lots are named, so each may be meant.`);
    expect(
      scopeWords(
        { items: [item({ openEnded: true, lots: [{ kind: 'code', code: 'A1', useBy: null }] })] },
        none,
      ),
    ).toEqual([`${product}: lot A1, and lots beyond those named.`]);
  });

  it('names a product by what is known of it', () => {
    const of = (fields: Partial<ScopeItem>) =>
      scopeWords({ items: [item({ ...fields, lots: [{ kind: 'all lots' }] })] }, none)[0];
    expect(of({ makerName: null, productName: null, shade: null, gtins: ['09506000134352'] })).toBe(
      'The product named by number (GTIN 09506000134352): all lots.',
    );
    expect(of({ productName: null, shade: null })).toBe('Any product by Halden Colour Works: all lots.');
    expect(of({ makerName: null, productName: null, shade: null })).toBe('Any product: all lots.');
  });

  it('names the products that were chosen, whatever the notice calls them', () => {
    const chosen = item({ productIds: ['p1', 'p2'], lots: [{ kind: 'all lots' }] });
    expect(scopeWords({ items: [chosen] }, new Map([['p1', 'Sienna by Halden']]))).toEqual([
      'Sienna by Halden and the product p2, chosen from the register: all lots.',
    ]);
  });

  it('counts what it does not write out', () => {
    const many = Array.from(
      { length: 75 },
      (_, index): LotTerm => ({ kind: 'code', code: `L${index}`, useBy: null }),
    );
    expect(words(...many)).toMatch(/; lot L59; and 15 more\.$/);
  });
});
