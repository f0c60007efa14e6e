import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeClientReference } from './client-reference.js';

describe('the reference of a client', () => {
  it('is written in two groups of characters that are not mistaken for each other', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 6, maxLength: 12 }), (bytes) => {
        expect(makeClientReference(bytes)).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{2}$/);
      }),
    );
  });

  it('differs when any of its six characters does', () => {
    expect(makeClientReference(new Uint8Array([19, 7, 23, 2, 20, 4]))).toBe('K7Q2-M4');
    expect(makeClientReference(new Uint8Array([19, 7, 23, 2, 20, 5]))).toBe('K7Q2-M5');
  });

  it('refuses to be made from too little chance', () => {
    expect(() => makeClientReference(new Uint8Array(5))).toThrow(RangeError);
  });
});
