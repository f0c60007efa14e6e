import { expect, it } from 'vitest';
import { figure } from './figure.js';

it('keeps four digits after the point and no minus zero', () => {
  expect(figure(1.234_56)).toBe(1.2346);
  expect(Object.is(figure(-0.000_001), 0)).toBe(true);
});

it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('never keeps %s', (value) => {
  expect(() => figure(value)).toThrow(RangeError);
});
