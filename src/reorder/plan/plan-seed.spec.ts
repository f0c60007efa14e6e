import { expect, it } from 'vitest';
import { seedOfDay } from './plan-seed.js';

it('is the same all day, another on the next, and never nothing', () => {
  expect(seedOfDay('2026-03-28')).toBe(seedOfDay('2026-03-28'));
  expect(seedOfDay('2026-03-29')).toBe(seedOfDay('2026-03-28') + 1);
  expect(seedOfDay('1999-01-01')).toBe(1);
});
