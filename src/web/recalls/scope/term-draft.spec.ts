import { expect, it } from 'vitest';
import type { LotTerm } from '../../../stock/lot-matching/lot-scope.js';
import { emptyTerm, termsOf, typedOf } from './term-draft.js';

const october = { from: '2026-10-01', through: '2026-10-31' };

it.each<[LotTerm]>([
  [{ kind: 'all lots' }],
  [{ kind: 'code', code: 'AB 12-34', useBy: null }],
  [{ kind: 'code', code: 'A1', useBy: october }],
  [{ kind: 'code range', from: '07110002', through: '07110009', useBy: null }],
  [{ kind: 'code range', from: '00112', through: '10412', useBy: { from: null, through: '2026-10-31' } }],
  [{ kind: 'use-by', useBy: october }],
  [{ kind: 'manufactured', manufactured: { from: '2026-01-05', through: null } }],
])('leaves %j as it is when nothing is changed', (term) => {
  expect(termsOf(typedOf(term))).toEqual([term]);
});

it('adds several codes at once, each with the dates beside them', () => {
  expect(termsOf({ ...emptyTerm, codes: 'A1\nB2', lastDay: '2026-10-31' })).toEqual([
    { kind: 'code', code: 'A1', useBy: { from: null, through: '2026-10-31' } },
    { kind: 'code', code: 'B2', useBy: { from: null, through: '2026-10-31' } },
  ]);
});

it.each(['code', 'code range', 'use-by', 'manufactured'] as const)(
  'is nothing while %s are missing',
  (kind) => {
    expect(termsOf({ ...emptyTerm, kind, from: '1' })).toEqual([]);
  },
);
