import { expect, it } from 'vitest';
import { daysOf, draftOf } from './warning-draft.js';

it('hands in at the version that was read, what is left empty as the studio says', () => {
  expect(
    daysOf({ ...draftOf({ useByNearDays: 30, openedLifeEndingDays: 4 }), useByNearDays: '' }, 3),
  ).toEqual({ useByNearDays: null, openedLifeEndingDays: 4, version: 3 });
});

it('hands in no version where nothing was set', () => {
  expect(daysOf({ ...draftOf(undefined), useByNearDays: '0' }, undefined)).toEqual({
    useByNearDays: 0,
    openedLifeEndingDays: null,
  });
});
