import { expect, it } from 'vitest';
import { daysOfWarning } from './days-of-warning.js';

const studio = { useByNearDays: 30, openedLifeEndingDays: 14 };
const days = {
  ...studio,
  ofProducts: new Map([
    ['slow', { useByNearDays: 120, openedLifeEndingDays: null }],
    ['never', { useByNearDays: 0, openedLifeEndingDays: 0 }],
  ]),
};

it.each([
  ['slow', false, 120],
  ['slow', true, 14],
  ['never', false, 0],
  ['never', true, 0],
  ['other', false, 30],
  ['other', true, 14],
])("takes a product's own days before the studio's: %s, open %s", (productId, isOpen, expected) => {
  expect(daysOfWarning(days, productId, isOpen)).toBe(expected);
});

it("takes the studio's where no product has its own", () => {
  expect(daysOfWarning(studio, 'slow', false)).toBe(30);
});
