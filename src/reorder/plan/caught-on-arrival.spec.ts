import { describe, expect, it } from 'vitest';
import type { LotTerm, ScopeItem } from '../../stock/lot-matching/lot-scope.js';
import { caughtOnArrival } from './caught-on-arrival.js';

const umber = {
  productId: 'umber',
  makerName: 'Fjordline',
  productName: 'Umber',
  shade: null,
  gtins: [],
};
const item = (lots: LotTerm[], facts: Partial<ScopeItem> = {}): ScopeItem => ({
  makerName: null,
  productName: null,
  shade: null,
  gtins: [],
  productIds: ['umber'],
  lots,
  openEnded: false,
  ...facts,
});
const code: LotTerm = { kind: 'code', code: '0711', useBy: null };
const caught = (...items: ScopeItem[]) => caughtOnArrival([{ items }], umber);

describe('what standing holds will catch of what comes of a product', () => {
  it('is every lot where no lots are named, all are, or not only these', () => {
    for (const all of [item([]), item([{ kind: 'all lots' }]), item([code], { openEnded: true })]) {
      expect(caught(item([code]), all)).toEqual({ lots: 'every' });
    }
  });

  it('is some lots, as they are named', () => {
    const range: LotTerm = { kind: 'code range', from: '0720', through: '0731', useBy: null };
    const dates: LotTerm = { kind: 'use-by', useBy: { from: null, through: '2027-01-31' } };
    expect(caught(item([code, range]), item([dates, code]))).toEqual({
      lots: 'some',
      named: ['0711', '0720–0731', '…–2027-01-31'],
    });
  });

  it('is nothing of another product, and nothing without a standing hold', () => {
    expect(caught(item([], { productIds: ['thinner'] }))).toEqual({ lots: 'none' });
    expect(caughtOnArrival([], umber)).toEqual({ lots: 'none' });
  });
});
