import { expect, it } from 'vitest';
import type { PlanningSettingsView } from '../../../reorder/settings/planning-settings.views.js';
import { contentOfPlanning, draftOfPlanning } from './planning-draft.js';

const settings: PlanningSettingsView = {
  serviceTargetPerMille: { value: 975, assumed: false },
  orderCostMinor: { value: 0, assumed: false },
  holdingPerYearPerMille: { value: 100, assumed: true },
  returnPerMille: { value: 1000, assumed: false },
  currency: 'EUR',
  assumptions: [],
  version: 2,
};

it('hands in what was read, and nothing where it is assumed', () => {
  const draft = draftOfPlanning(settings, 'de');
  expect(draft.holdingPerYearPerMille).toBe('');
  expect(contentOfPlanning(draft, 'EUR', 2)).toEqual({
    serviceTargetPerMille: 975,
    orderCostMinor: 0,
    holdingPerYearPerMille: null,
    returnPerMille: 1000,
    version: 2,
  });
});

it('takes a tenth of a per cent, and no amount that is none', () => {
  const draft = { ...draftOfPlanning(settings, 'de'), serviceTargetPerMille: '99.9' };
  expect(contentOfPlanning(draft, 'EUR', null)).toMatchObject({ serviceTargetPerMille: 999 });
  expect(contentOfPlanning({ ...draft, orderCostMinor: '1.234' }, 'EUR', null)).toBeUndefined();
});
