import { describe, expect, it } from 'vitest';
import { type CandidateFacts, containerCandidate } from './container-candidate.js';

const bottle: CandidateFacts = {
  containerId: 'bottle',
  form: 'bottle',
  state: 'opened',
  useBy: '2027-05-31',
  openedAt: '2026-03-01T09:00:00.000Z',
  openedLife: null,
  usableThrough: null,
  receivedAt: '2026-02-28T23:30:00.000Z',
  pieces: 1,
  holds: [],
};

describe('a container as a candidate', () => {
  it("was received on the studio's day, not on that of UTC", () => {
    expect(containerCandidate(bottle, null, 'Europe/Berlin').receivedOn).toBe('2026-03-01');
    expect(containerCandidate(bottle, null, 'America/New_York').receivedOn).toBe('2026-02-28');
  });

  it('lives as the container does: a box has no opened life', () => {
    expect(containerCandidate(bottle, 'P6M', 'UTC')).toMatchObject({
      useByLastDay: '2027-05-31',
      openedAt: bottle.openedAt,
      assumedOpenedLife: 'P6M',
    });
    expect(containerCandidate({ ...bottle, form: 'box' }, 'P6M', 'UTC').openedAt).toBeNull();
  });

  it('is finished when it has ended or nothing is left to take', () => {
    const finished = (change: Partial<CandidateFacts>) =>
      containerCandidate({ ...bottle, ...change }, null, 'UTC').finished;
    expect(finished({})).toBe(false);
    expect(finished({ state: 'finished' })).toBe(true);
    expect(finished({ state: 'discarded' })).toBe(true);
    expect(finished({ pieces: 0 })).toBe(true);
  });

  it('says when it is held or kept for practice', () => {
    expect(containerCandidate({ ...bottle, holds: [{}] }, null, 'UTC').held).toBe(true);
    expect(containerCandidate({ ...bottle, state: 'practice only' }, null, 'UTC').practice).toBe(true);
    expect(containerCandidate(bottle, null, 'UTC')).toMatchObject({ held: false, practice: false });
  });
});
