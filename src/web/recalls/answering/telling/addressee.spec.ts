import { describe, expect, it } from 'vitest';
import { addresseeOf, mayTell } from './addressee.js';

const nobody = { clientId: null, artistId: null, company: null };

describe('whom a message is for', () => {
  it('is named by what goes with the audience', () => {
    expect(addresseeOf({ ...nobody, audience: 'client', clientId: 'c' })).toEqual({
      audience: 'client',
      clientId: 'c',
    });
    expect(addresseeOf({ ...nobody, audience: 'artist', artistId: 'a' })).toEqual({
      audience: 'artist',
      artistId: 'a',
    });
    expect(addresseeOf({ ...nobody, audience: 'authority', company: 'Office' })).toEqual({
      audience: 'authority',
      company: 'Office',
    });
    expect(addresseeOf({ ...nobody, audience: 'client', company: 'no client' })).toBeUndefined();
  });

  it('is told by whoever answers recalls, a client only by whoever may know who they are', () => {
    expect(mayTell(['answer recalls'], 'supplier')).toBe(true);
    expect(mayTell(['answer recalls'], 'client')).toBe(false);
    expect(mayTell(['answer recalls', 'tell clients of recalls'], 'client')).toBe(true);
    expect(mayTell(['read recalls'], 'artist')).toBe(false);
  });
});
