import { describe, expect, it } from 'vitest';
import { firstRecordedAt } from './recorded-later.js';

const early = '2026-11-01T10:00:00.000Z';
const late = '2026-11-09T08:00:00.000Z';

describe('when a session was recorded', () => {
  it('is when the first of its uses was, so that later ones are known as added', () => {
    const uses = [{ recordedAt: late }, { recordedAt: early }];
    expect(firstRecordedAt({ recordedFrom: 'tray', signedAt: late, uses })).toBe(early);
  });

  it('is when it was signed, for what was recorded afterwards, also without any use', () => {
    expect(firstRecordedAt({ recordedFrom: 'paper', signedAt: early, uses: [] })).toBe(early);
    expect(firstRecordedAt({ recordedFrom: 'late', signedAt: early, uses: [{ recordedAt: late }] })).toBe(
      early,
    );
  });

  it('is not known of what has no use yet', () => {
    expect(firstRecordedAt({ recordedFrom: 'tray', signedAt: null, uses: [] })).toBeNull();
  });
});
