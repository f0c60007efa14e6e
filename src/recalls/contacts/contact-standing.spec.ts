import { describe, expect, it } from 'vitest';
import { contactOutcomes } from '../vocabulary.js';
import { type Attempt, contactStanding, isSettled, isTold } from './contact-standing.js';

const at = (minute: number, outcome: Attempt['outcome']): Attempt => {
  const instant = `2026-03-02T09:${String(minute).padStart(2, '0')}:00.000Z`;
  return { outcome, occurredAt: instant, recordedAt: instant };
};

describe('how it stands with somebody to be told', () => {
  it('nobody tried', () => {
    expect(contactStanding([], null)).toEqual({
      standing: 'not tried',
      toldEarlier: false,
      attempts: 0,
      lastAt: null,
    });
  });

  it('goes by the latest attempt, in whatever order they were recorded', () => {
    const late = { ...at(5, 'no answer'), recordedAt: '2026-03-02T12:00:00.000Z' };
    expect(contactStanding([at(10, 'message left'), late], null)).toMatchObject({
      standing: 'message left',
      attempts: 2,
      lastAt: '2026-03-02T09:10:00.000Z',
    });
  });

  it('stays reached, whatever was tried later', () => {
    for (const outcome of contactOutcomes) {
      expect(contactStanding([at(1, 'reached'), at(2, outcome)], null).standing).toBe('reached');
    }
  });

  it('is open again when somebody tries again after a refusal', () => {
    expect(contactStanding([at(1, 'refused'), at(2, 'no answer')], null).standing).toBe('no answer');
  });

  it('does not count what was told before a further lot of theirs came to the recall', () => {
    const since = '2026-03-02T09:30:00.000Z';
    expect(contactStanding([at(10, 'reached')], since)).toMatchObject({
      standing: 'not tried',
      toldEarlier: true,
      attempts: 1,
    });
    expect(contactStanding([at(10, 'reached'), at(40, 'reached')], since)).toMatchObject({
      standing: 'reached',
      toldEarlier: false,
    });
  });

  it('ends with being reached, a refusal, or being unreachable; the first two are told', () => {
    expect(contactOutcomes.filter(isSettled)).toEqual(['reached', 'refused', 'unreachable']);
    expect(contactOutcomes.filter(isTold)).toEqual(['reached', 'refused']);
    expect(isSettled('not tried')).toBe(false);
  });
});
