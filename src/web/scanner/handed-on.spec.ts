import { expect, it } from 'vitest';
import { badgeText } from '../../identity/tablets/badge-text.js';
import { isHandedOn } from './handed-on.js';

it('hands on interleaved 2 of 5 only when it is a whole GTIN, and every symbol that checks itself', () => {
  expect(isHandedOn(']I1', '19506000134359')).toBe(true);
  for (const part of ['19506000134358', '506000134359', '1234', ''])
    expect(isHandedOn(']I0', part)).toBe(false);
  for (const identifier of [']d2', ']C1', ']E0', ']A0']) expect(isHandedOn(identifier, 'AB')).toBe(true);
});

it('never hands on a badge, which hangs before a camera that always looks', () => {
  expect(isHandedOn(']d1', badgeText(new Uint8Array(20).fill(171)))).toBe(false);
  expect(isHandedOn(']d1', 'LB-2041')).toBe(true);
});
