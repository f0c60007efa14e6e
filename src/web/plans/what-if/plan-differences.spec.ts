import { expect, it } from 'vitest';
import { planDifferences } from './plan-differences.js';

const line = (key: string, packs: number, costMinor: number, orderOn = '2026-11-26') => ({
  item: {
    kind: 'product' as const,
    ...{ key, unit: 'pieces' as const, label: key, productIds: [key] },
    ...{ productName: key, shade: null, makerName: null },
  },
  decision: packs > 0 ? ('order now' as const) : ('enough' as const),
  ...{ packs, costMinor, orderOn, offerId: 'offer' },
});

it('shows what would be decided otherwise, the greatest difference in cost first', () => {
  const before = [line('gel', 1, 500), line('umber', 2, 3000), line('cups', 0, 0)];
  const after = [line('gel', 2, 1000), line('umber', 4, 6000), line('cups', 0, 0)];
  expect(planDifferences(before, after).map(({ after: { item } }) => item.key)).toEqual(['umber', 'gel']);
});

it('shows another day alone, and what the plan does not have', () => {
  const differences = planDifferences(
    [line('gel', 1, 500)],
    [line('gel', 1, 500, '2026-12-01'), line('new', 0, 0)],
  );
  expect(differences.map(({ before, after }) => [before?.item.key, after.item.key])).toEqual([
    ['gel', 'gel'],
    [undefined, 'new'],
  ]);
});

it('leaves out of what was asked about one item all the others', () => {
  expect(planDifferences([line('gel', 1, 500), line('umber', 2, 3000)], [line('gel', 1, 500)])).toEqual([]);
});
