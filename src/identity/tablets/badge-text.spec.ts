import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { badgeSecretBytes, badgeText, readBadge } from './badge-text.js';

const secret = fc.uint8Array({ minLength: badgeSecretBytes, maxLength: 40 });

describe('the text of a badge', () => {
  it('holds 160 bits of the secret', () => {
    expect(badgeText(Uint8Array.from({ length: 32 }, (_, index) => index * 8))).toBe(
      'LB0008101820283038404850586068707880889098',
    );
  });

  it('is read from whatever a scanner makes of it, and from nothing else', () => {
    fc.assert(
      fc.property(secret, fc.constantFrom('', '\r', '\r\n', ' ', '\t'), (bytes, end) => {
        const text = badgeText(bytes);
        expect(readBadge(text + end)).toBe(text);
        expect(readBadge(end + text.toLowerCase())).toBe(text);
        expect(readBadge(text.slice(0, -1))).toBeUndefined();
        expect(readBadge(`${text}0`)).toBeUndefined();
        expect(readBadge(text.slice(2))).toBeUndefined();
      }),
    );
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(readBadge(text)).toBeUndefined();
      }),
    );
  });

  it('is another for every secret', () => {
    fc.assert(
      fc.property(secret, secret, (one, other) => {
        fc.pre(one.subarray(0, badgeSecretBytes).join() !== other.subarray(0, badgeSecretBytes).join());
        expect(badgeText(one)).not.toBe(badgeText(other));
      }),
    );
  });

  it('is made of no shorter secret', () => {
    expect(() => badgeText(new Uint8Array(19))).toThrow('needs 20 bytes, but was given 19');
  });
});
