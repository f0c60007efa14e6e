import argon2 from 'argon2';
import { describe, expect, it } from 'vitest';
import { argon2Parameters, Passwords } from '../../src/identity/sign-in/passwords.service.js';

/**
 * RFC 9106, section 5.3, the test vector of Argon2id with secret and associated data; [S]: as six independent
 * implementations quote it in their own tests.
 */
const rfc9106 = {
  password: Buffer.alloc(32, 0x01),
  salt: Buffer.alloc(16, 0x02),
  secret: Buffer.alloc(8, 0x03),
  associatedData: Buffer.alloc(12, 0x04),
  tag: '0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659',
};

describe('Argon2id', () => {
  const hashed = ({ password, salt, secret, associatedData }: typeof rfc9106) =>
    argon2.hash(password, {
      type: argon2.argon2id,
      version: 0x13,
      memoryCost: 32,
      timeCost: 3,
      parallelism: 4,
      hashLength: 32,
      salt,
      secret,
      associatedData,
      raw: true,
    });

  it('gives the tag of RFC 9106', async () => {
    expect((await hashed(rfc9106)).toString('hex')).toBe(rfc9106.tag);
  });

  it('gives another tag for any other input, the secret among them', async () => {
    for (const field of ['password', 'salt', 'secret', 'associatedData'] as const) {
      const changed = Buffer.from(rfc9106[field]);
      changed[0] = 0xff;
      expect((await hashed({ ...rfc9106, [field]: changed })).toString('hex')).not.toBe(rfc9106.tag);
    }
  });

  // From the tests of the reference implementation, src/test.c of phc-winner-argon2: the first as others quote it [S], the
  // second [M].
  it.each([
    ['password', '$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc'],
    [
      'differentpassword',
      '$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$C4TWUs9rDEvq7w3+J4umqA32aWKB1+DSiRuBfYxFj94',
    ],
  ])('is recognized in a hash that another program made of "%s"', async (password, hash) => {
    const passwords = new Passwords();
    expect(await passwords.matches(hash, password)).toBe(true);
    expect(await passwords.matches(hash, `${password}.`)).toBe(false);
  });

  it('is used with no less than OWASP asks for', () => {
    // OWASP Password Storage Cheat Sheet [S]: at least 19 MiB, two passes, one lane.
    expect(argon2Parameters.type).toBe(argon2.argon2id);
    expect(argon2Parameters.memoryCost).toBeGreaterThanOrEqual(19 * 1024);
    expect(argon2Parameters.timeCost).toBeGreaterThanOrEqual(2);
    expect(argon2Parameters.parallelism).toBeGreaterThanOrEqual(1);
  });
});
