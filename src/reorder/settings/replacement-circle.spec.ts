import { expect, it } from 'vitest';
import { isReplacedInACircle } from './replacement-circle.js';

const replaced = (...pairs: [string, string][]) => new Map(pairs);

it('lets a product take the place of one that took the place of another', () => {
  expect(isReplacedInACircle(replaced(['c', 'b'], ['b', 'a']), 'c')).toBe(false);
  expect(isReplacedInACircle(replaced(), 'a')).toBe(false);
});

it.each([
  ['of itself', replaced(['a', 'a'])],
  ['of one that takes its own', replaced(['a', 'b'], ['b', 'a'])],
  ['of it through others', replaced(['a', 'b'], ['b', 'c'], ['c', 'a'])],
])('finds one that takes the place %s', (_, pairs) => {
  expect(isReplacedInACircle(pairs, 'a')).toBe(true);
});

it('comes to an end when others go round in a circle', () => {
  expect(isReplacedInACircle(replaced(['a', 'b'], ['b', 'c'], ['c', 'b']), 'a')).toBe(false);
});
