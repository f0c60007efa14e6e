import { describe, expect, it } from 'vitest';
import { readAddressee } from './addressee.js';

describe('whom a request names', () => {
  it('is the one that goes with its audience', () => {
    expect(readAddressee({ audience: 'client', clientId: 'c' })).toEqual({
      addressee: { clientId: 'c', artistId: null, company: null },
    });
    expect(readAddressee({ audience: 'authority', company: 'Health office' })).toEqual({
      addressee: { clientId: null, artistId: null, company: 'Health office' },
    });
  });

  it('is not guessed', () => {
    expect(readAddressee({ audience: 'client', company: 'Health office' })).toEqual({
      faults: [
        { field: 'company', message: 'is not taken with the audience client; leave it out' },
        { field: 'clientId', message: 'is missing; it says which client is meant' },
      ],
    });
    expect(readAddressee({ audience: 'artist', artistId: 'a', clientId: 'c' })).toEqual({
      faults: [{ field: 'clientId', message: 'is not taken with the audience artist; leave it out' }],
    });
  });
});
