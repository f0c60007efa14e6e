import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { userHandleOf } from './user-handle.js';

describe('the user handle of an account', () => {
  it('is the 16 bytes of its id', () => {
    expect([...userHandleOf('00010203-0405-0607-0809-0a0b0c0d0eff')]).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 255,
    ]);
  });

  it('tells any two accounts apart', () => {
    fc.assert(
      fc.property(fc.uuid(), fc.uuid(), (one, other) => {
        fc.pre(one !== other);
        expect(userHandleOf(one)).not.toEqual(userHandleOf(other));
      }),
    );
  });
});
