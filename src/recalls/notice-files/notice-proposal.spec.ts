import { describe, expect, it } from 'vitest';
import type { ScopeItem } from '../../stock/lot-matching/lot-scope.js';
import type { NoticeReading } from '../notice-reading/notice-reading.js';
import { needsReading, proposalOf } from './notice-proposal.js';
import type { NoticeRecord, RecordProduct } from './notice-record.js';

const product: RecordProduct = {
  makerName: 'Halden',
  productName: 'Brow pigment',
  shade: null,
  gtins: ['09501101530003'],
  lots: null,
  openEnded: false,
};
const record = (...products: RecordProduct[]): NoticeRecord => ({
  number: 1,
  reference: 'X-1',
  issuer: 'Halden',
  issuedOn: null,
  classification: null,
  risk: null,
  remedy: null,
  text: 'the text',
  products,
  remarks: [{ code: 'damaged characters', message: 'Some.' }],
});
const item: ScopeItem = {
  makerName: null,
  productName: null,
  shade: 'Umber',
  gtins: ['09501101020917'],
  productIds: ['p'],
  lots: [{ kind: 'code', code: 'HU-118', useBy: null }],
  openEnded: true,
};
const reading = (...items: ScopeItem[]): NoticeReading => ({
  scope: { items },
  parts: [],
  remarks: [{ code: 'nothing read', span: null, facts: {}, message: 'Nothing.' }],
  reference: 'of the text',
  issuedOn: '2026-07-03',
  classification: 'Class I',
  risk: 'It hurts.',
  remedy: 'Stop.',
});

describe('a proposal', () => {
  it('needs no reading where fields of their own name the lots, and takes them as they are', () => {
    const named = record({ ...product, lots: [{ kind: 'all lots' }] });
    expect(needsReading(named)).toBe(false);
    expect(proposalOf(named, null)).toMatchObject({
      scope: { items: [{ makerName: 'Halden', lots: [{ kind: 'all lots' }], productIds: [] }] },
      parts: [],
      reference: 'X-1',
      issuedOn: null,
    });
  });

  it('takes lots as the text was read, names from the fields, and what only the text says from there', () => {
    expect(needsReading(record(product))).toBe(true);
    const proposal = proposalOf(record(product), reading(item));
    expect(proposal.scope.items).toEqual([
      {
        ...item,
        makerName: 'Halden',
        productName: 'Brow pigment',
        gtins: ['09501101530003', '09501101020917'],
      },
    ]);
    expect(proposal).toMatchObject({
      reference: 'X-1',
      issuedOn: '2026-07-03',
      classification: 'Class I',
      risk: 'It hurts.',
      remedy: 'Stop.',
    });
    expect(proposal.remarks.map(({ code }) => code)).toEqual(['damaged characters', 'nothing read']);
  });

  it('leaves several products of a text their own names and GTINs, and fills in what they lack', () => {
    const items = [{ ...item, makerName: 'Nordlicht', productName: 'Needle' }, item];
    const names = proposalOf(record(product), reading(...items)).scope.items.map(
      ({ makerName, productName, gtins }) => [makerName, productName, gtins],
    );
    expect(names).toEqual([
      ['Nordlicht', 'Needle', ['09501101020917']],
      ['Halden', 'Brow pigment', ['09501101020917']],
    ]);
  });

  it('has no name that says that nobody knows it', () => {
    const nameless = { ...product, makerName: null };
    const [only] = proposalOf(record(nameless), reading({ ...item, makerName: 'Unknown' })).scope.items;
    expect(only?.makerName).toBeNull();
  });

  it('fits into what a recall takes; the text has all', () => {
    const long = { ...record({ ...product, productName: 'x'.repeat(400) }), risk: 'y'.repeat(6_000) };
    const { scope, risk } = proposalOf(long, reading(item));
    expect([scope.items[0]?.productName?.length, risk?.length]).toEqual([300, 5_000]);
  });
});
