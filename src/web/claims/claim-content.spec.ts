import { describe, expect, it } from 'vitest';
import { contentOfClaim } from './claim-content.js';

const draft = { pieces: '3', amount: '12,50', note: ' Two leaked. ' };

describe('what is written of a claim', () => {
  it('is handed in as pieces, minor units and a note', () =>
    expect(contentOfClaim(draft, 'EUR')).toEqual({
      content: { pieces: 3, amountMinor: 1_250, note: 'Two leaked.' },
    }));

  it('says nothing of an amount or a note that is left empty', () =>
    expect(contentOfClaim({ ...draft, amount: '', note: '  ' }, 'EUR')).toEqual({
      content: { pieces: 3, amountMinor: null, note: null },
    }));

  it('names what cannot be read', () =>
    expect(contentOfClaim({ ...draft, pieces: 'some', amount: '1.005' }, 'EUR')).toEqual({
      unreadable: ['pieces', 'amount'],
    }));
});
