import { expect, it } from 'vitest';
import type { ScopeItem } from '../../../stock/lot-matching/lot-scope.js';
import { joinedScope } from './joined-scope.js';

const item = (productName: string): ScopeItem => ({
  makerName: null,
  productName,
  shade: null,
  gtins: [],
  productIds: [],
  lots: [],
  openEnded: false,
});

it('loses nothing that was recalled before, and says nothing twice', () => {
  const before = { items: [item('Umber'), item('Ochre')] };
  expect(joinedScope({ items: [item('Sienna'), item('Ochre')] }, before)).toEqual({
    items: [item('Sienna'), item('Ochre'), item('Umber')],
  });
  expect(joinedScope(null, before)).toEqual(before);
});
