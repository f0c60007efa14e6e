import { describe, expect, it } from 'vitest';
import { scopeOf } from './scope-of-request.js';

const item = { gtins: [], productIds: [], lots: [], openEnded: false };
const ofTerm = (term: object) =>
  scopeOf({ items: [{ ...item, productName: 'Warm umber', lots: [term as never] }] });

describe('a scope that somebody writes', () => {
  it('says null for what is left out, and names each GTIN and product once', () => {
    const gtins = ['09501101530003', '09501101530003'];
    const { scope, faults } = scopeOf({
      items: [{ ...item, makerName: 'Hollow Oak', gtins, productIds: ['p', 'p'] }],
    });
    expect(faults).toEqual([]);
    expect(scope.items).toEqual([
      {
        makerName: 'Hollow Oak',
        productName: null,
        shade: null,
        gtins: ['09501101530003'],
        productIds: ['p'],
        lots: [],
        openEnded: false,
      },
    ]);
  });

  it.each([
    [
      { kind: 'code', code: 'HU-118' },
      { kind: 'code', code: 'HU-118', useBy: null },
    ],
    [
      { kind: 'code', code: 'HU-118', useBy: { from: '2026-10-01', through: '2026-10-31' } },
      { kind: 'code', code: 'HU-118', useBy: { from: '2026-10-01', through: '2026-10-31' } },
    ],
    [
      { kind: 'code range', from: '07110002', through: '07110009' },
      { kind: 'code range', from: '07110002', through: '07110009', useBy: null },
    ],
    [
      { kind: 'use-by', useBy: { through: '2026-10-31' } },
      { kind: 'use-by', useBy: { from: null, through: '2026-10-31' } },
    ],
    [
      { kind: 'manufactured', manufactured: { from: '2026-01-05' } },
      { kind: 'manufactured', manufactured: { from: '2026-01-05', through: null } },
    ],
    [{ kind: 'all lots' }, { kind: 'all lots' }],
  ])('takes %j', (written, read) => {
    const { scope, faults } = ofTerm(written);
    expect(faults).toEqual([]);
    expect(scope.items[0]?.lots).toEqual([read]);
  });

  it.each([
    [{ kind: 'code' }, 'items.0.lots.0.code'],
    [{ kind: 'code range', from: '1' }, 'items.0.lots.0.through'],
    [{ kind: 'code range', through: '1' }, 'items.0.lots.0.from'],
    [{ kind: 'use-by' }, 'items.0.lots.0.useBy'],
    [{ kind: 'use-by', useBy: {} }, 'items.0.lots.0.useBy'],
    [{ kind: 'manufactured', useBy: { from: '2026-01-01' } }, 'items.0.lots.0.manufactured'],
    [
      { kind: 'code', code: 'A', useBy: { from: '2026-02-02', through: '2026-02-01' } },
      'items.0.lots.0.useBy',
    ],
  ])('tells what %j lacks', (written, field) => {
    expect(ofTerm(written).faults.map((fault) => fault.field)).toEqual([field]);
  });

  it('is refused when it would hold everything: neither a product nor a lot is named', () => {
    expect(scopeOf({ items: [item] }).faults).toHaveLength(1);
    expect(scopeOf({ items: [{ ...item, lots: [{ kind: 'all lots' }] }] }).faults).toHaveLength(1);
    expect(scopeOf({ items: [{ ...item, lots: [{ kind: 'code', code: 'HU-118' }] }] }).faults).toEqual([]);
  });
});
