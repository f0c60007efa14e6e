import { expect, it } from 'vitest';
import { restAfterLook } from './pace.js';

it('looks ten times a second where reading is quick', () => {
  for (const took of [0, 20, 60]) expect(took + restAfterLook(took)).toBe(100);
});

it('rests half as long as reading took where that is slow', () => {
  expect(restAfterLook(100)).toBe(50);
  expect(restAfterLook(900)).toBe(450);
});
