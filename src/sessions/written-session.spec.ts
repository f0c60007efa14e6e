import { describe, expect, it } from 'vitest';
import { writtenSession, writtenUse } from './written-session.js';

describe('the answer to a write', () => {
  it('tells of a session nothing sealed, whatever the row holds', () => {
    const row = {
      id: 'session-1',
      state: 'planned' as const,
      version: 3,
      clientId: 'client-1',
      followsSessionId: 'session-0',
      bodyPlaceDetailSealed: 'sealed',
      complicationsSealed: 'sealed',
      healedResultSealed: 'sealed',
      artistId: 'mira',
    };
    expect(writtenSession(row, 'K7M2', 'named')).toEqual({
      id: 'session-1',
      state: 'planned',
      version: 3,
      clientId: 'client-1',
      clientReference: 'K7M2',
      followsSessionId: 'session-0',
      followsBecause: 'named',
    });
    expect(writtenSession(row, 'K7M2').followsBecause).toBeNull();
  });

  it('tells of a use which refusals it was recorded against, and not why', () => {
    const use = {
      id: 'use-1',
      lotId: 'lot-1',
      containerId: 'bottle-1',
      mixId: null,
      pieces: 0,
      microlitres: 80,
      againstRefusal: null,
      reasonSealed: 'sealed',
    };
    expect(writtenUse(use)).toEqual({
      id: 'use-1',
      lotId: 'lot-1',
      containerId: 'bottle-1',
      mixId: null,
      pieces: 0,
      microlitres: 80,
      againstRefusal: [],
    });
    expect(writtenUse({ ...use, againstRefusal: ['expired'] }).againstRefusal).toEqual(['expired']);
  });
});
