import { expect, it } from 'vitest';
import { effectiveSettings } from '../settings/effective-settings.js';
import { totalAssumptions } from './total-assumptions.js';

it('lists what the studio did not set, then counts what was supposed of items', () => {
  const settings = effectiveSettings({
    serviceTargetPerMille: 900,
    orderCostMinor: null,
    holdingPerYearPerMille: null,
    returnPerMille: null,
  });
  const late = (days: number) => ({ code: 'lead time assumed', figures: { supplier: 'Quill', days } });
  const none = { code: 'no history', figures: {} };
  const all = totalAssumptions(
    settings,
    [{ code: 'content of a delivery unknown', figures: { supplier: 'Quill', on: '2026-03-02' } }],
    [[late(14), none], [late(14), late(15), { code: 'looked ahead', figures: {} }], [late(14)]],
    'EUR',
  );
  expect(all.map(({ code, items, figures }) => [code, items, figures])).toEqual([
    ['order cost assumed', null, { costMinor: 500 }],
    ['holding cost assumed', null, { perMille: 100 }],
    ['content of a delivery unknown', null, { supplier: 'Quill', on: '2026-03-02' }],
    ['lead time assumed', 3, {}],
    ['no history', 1, {}],
  ]);
  expect(all.slice(-2).map(({ message }) => message)).toEqual([
    'For example: Quill says no lead time and no order was seen: 14 days are taken.',
    'It was never used, as far as is known.',
  ]);
});
