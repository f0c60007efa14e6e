import { describe, expect, it } from 'vitest';
import { type FollowedFacts, whyNotFollowed } from './followed-session.js';

const visit = { sessionId: 'touch-up', clientId: 'client' };
const first: FollowedFacts = { sessionId: 'first', clientId: 'client', state: 'completed' };

describe('the session that a visit follows', () => {
  it.each(['planned', 'in setup', 'completed'] as const)(
    'may be one of the same client that is %s',
    (state) => {
      expect(whyNotFollowed(visit, { ...first, state })).toBeNull();
    },
  );

  it.each(['cancelled', 'not attended'] as const)('is not one that was %s', (state) => {
    expect(whyNotFollowed(visit, { ...first, state })).toContain(`was ${state}`);
  });

  it('is not another client’s', () => {
    expect(whyNotFollowed(visit, { ...first, clientId: 'another' })).toContain('another client');
  });

  it('is not the visit itself', () => {
    expect(whyNotFollowed(visit, { ...first, sessionId: 'touch-up' })).toContain('cannot follow itself');
  });
});
