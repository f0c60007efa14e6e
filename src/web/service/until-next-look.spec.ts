import { expect, it } from 'vitest';
import { untilNextLook } from './until-next-look.js';

it('looks each second at first, and each ten once half a minute went by', () => {
  expect([0, 29, 30, 1_000].map(untilNextLook)).toEqual([1_000, 1_000, 10_000, 10_000]);
});
