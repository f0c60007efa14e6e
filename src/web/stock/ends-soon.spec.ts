import { expect, it } from 'vitest';
import { endsSoon } from './ends-soon.js';

const near = { useByNearDays: 30, openedLifeEndingDays: 7 };

it.each([
  ['sealed, on the last of the days', { lastDay: '2026-12-26', openedAt: null }, true],
  ['sealed, a day earlier', { lastDay: '2026-12-27', openedAt: null }, false],
  ['opened, within its own days', { lastDay: '2026-12-03', openedAt: '2026-06-03T10:00:00Z' }, true],
  ['opened, outside them', { lastDay: '2026-12-04', openedAt: '2026-06-03T10:00:00Z' }, false],
  ['on its last day', { lastDay: '2026-11-26', openedAt: null }, true],
  ['past', { lastDay: '2026-11-25', openedAt: null }, false],
  ['without a date', { lastDay: null, openedAt: null }, false],
])('%s: %j is %j', (_, thing, soon) => {
  expect(endsSoon(thing, '2026-11-26', near)).toBe(soon);
});
