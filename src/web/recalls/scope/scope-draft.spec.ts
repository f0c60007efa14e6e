import { describe, expect, it } from 'vitest';
import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';
import {
  codesOf,
  draftOf,
  draftOfReading,
  emptyItem,
  gtinsOf,
  saysSomething,
  scopeOf,
} from './scope-draft.js';

const scope: LotScope = {
  items: [
    {
      makerName: 'Halden',
      productName: 'Umber',
      shade: null,
      gtins: ['09506000134352'],
      productIds: [],
      lots: [
        { kind: 'code', code: 'AB 12-34', useBy: null },
        { kind: 'code range', from: '00112', through: '10412', useBy: null },
      ],
      openEnded: true,
    },
  ],
};

describe('a scope that is being settled', () => {
  it('is what was proposed as long as nobody changed it', () => {
    expect(scopeOf(draftOf(scope))).toEqual(scope);
  });

  it('knows which words each of its lots was read from', () => {
    const span = { start: 0, end: 1 };
    const [item] = draftOfReading({
      scope,
      parts: [
        { kind: 'product', span, value: 'Umber', targets: [{ item: 0, lot: null }] },
        { kind: 'code range', span, value: '00112 – 10412', targets: [{ item: 0, lot: 1 }] },
      ],
    });
    expect(item?.lots.map(({ part }) => part)).toEqual([null, 1]);
  });

  it('says nothing while it is empty', () => {
    expect(saysSomething(emptyItem())).toBe(false);
    expect(saysSomething({ ...emptyItem(), makerName: 'Halden' })).toBe(true);
  });
});

describe('what is typed', () => {
  it('keeps spaces and hyphens of codes, and takes each code once', () => {
    expect(codesOf('AB 12-34, 07110002;07110009\n\n AB 12-34 ')).toEqual([
      'AB 12-34',
      '07110002',
      '07110009',
    ]);
  });

  it('fills numbers up to fourteen digits, and leaves what is none to be refused', () => {
    expect(gtinsOf('9506000134352, 09506000134352 HU-118')).toEqual(['09506000134352', 'HU-118']);
  });
});
