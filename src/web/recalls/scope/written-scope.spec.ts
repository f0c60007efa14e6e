import { describe, expect, it } from 'vitest';
import type { LotTerm, ScopeItem } from '../../../stock/lot-matching/lot-scope.js';
import { english } from '../../texts/en/english.js';
import { nameOfItem, writtenLots, writtenScope, writtenTerm } from './written-scope.js';

const item: ScopeItem = {
  makerName: 'Halden',
  productName: 'Umber',
  shade: 'Warm 02',
  gtins: [],
  productIds: [],
  lots: [],
  openEnded: false,
};
const october = { from: '2026-10-01', through: '2026-10-31' };

describe('a scope in words', () => {
  it.each<[LotTerm, string]>([
    [{ kind: 'all lots' }, 'all lots'],
    [{ kind: 'code', code: 'AB 12-34', useBy: null }, 'AB 12-34'],
    [{ kind: 'code', code: 'A1', useBy: october }, 'A1, use-by 1 Oct 2026 – 31 Oct 2026'],
    [{ kind: 'code range', from: '07110002', through: '07110009', useBy: null }, '07110002 through 07110009'],
    [{ kind: 'use-by', useBy: { from: null, through: '2026-10-31' } }, 'use-by through 31 Oct 2026'],
    [{ kind: 'manufactured', manufactured: { from: '2026-10-01', through: null } }, 'made from 1 Oct 2026'],
    [{ kind: 'use-by', useBy: { from: '2026-10-01', through: '2026-10-01' } }, 'use-by 1 Oct 2026'],
  ])('says %j as “%s”', (term, words) => {
    expect(writtenTerm(term, english)).toBe(words);
  });

  it('says when no lots are named, and when others may be meant', () => {
    expect(writtenLots({ ...item, openEnded: true }, english)).toBe(
      'no lots named: each may be meant; and possibly others: the notice is open-ended',
    );
  });

  it('counts what would be too much to read', () => {
    const lots = Array.from(
      { length: 60 },
      (_, index): LotTerm => ({
        kind: 'code',
        code: `L${index}`,
        useBy: null,
      }),
    );
    expect(writtenLots({ ...item, lots }, english)).toMatch(/L39; and 20 more$/);
  });

  it('names a product by what is known of it', () => {
    expect(nameOfItem(item, english)).toBe('Halden Umber, shade Warm 02');
    expect(nameOfItem({ ...item, makerName: null, productName: null, shade: null }, english)).toBe(
      'Any product',
    );
    const onlyNumber = {
      ...item,
      makerName: null,
      productName: null,
      shade: null,
      gtins: ['09506000134352'],
    };
    expect(nameOfItem(onlyNumber, english)).toBe('GTIN 09506000134352');
    expect(nameOfItem(item, english, ['Halden Umber Warm 02'])).toBe('Halden Umber Warm 02');
  });

  it('has a line for each product', () => {
    const items = [
      { ...item, lots: [{ kind: 'all lots' as const }] },
      { ...item, shade: null },
    ];
    expect(writtenScope({ items }, english)).toBe(
      'Halden Umber, shade Warm 02: all lots\nHalden Umber: no lots named: each may be meant',
    );
  });
});
