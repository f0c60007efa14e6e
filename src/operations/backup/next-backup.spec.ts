import { describe, expect, it } from 'vitest';
import { isOverdue, nextBackup } from './next-backup.js';

const recordBegan = '2026-11-20T08:00:00.000Z';
const lastGoodAt = '2026-11-25T08:15:00.000Z';
const now = '2026-11-25T20:00:00.000Z';

describe('the next scheduled backup', () => {
  it('is due one interval after the last good one', () => {
    expect(nextBackup({ lastGoodAt, recordBegan, everyHours: 24 }, now)).toBe('2026-11-26T08:15:00.000Z');
    expect(nextBackup({ lastGoodAt, recordBegan, everyHours: 0.5 }, now)).toBe('2026-11-25T08:45:00.000Z');
  });

  it('is due one interval after the record began when there is none yet', () => {
    expect(nextBackup({ lastGoodAt: null, recordBegan, everyHours: 24 }, now)).toBe(
      '2026-11-21T08:00:00.000Z',
    );
  });

  it('is never due when none are scheduled, or there is nothing to keep', () => {
    expect(nextBackup({ lastGoodAt, recordBegan, everyHours: 0 }, now)).toBe(null);
    expect(nextBackup({ lastGoodAt: null, recordBegan: null, everyHours: 24 }, now)).toBe(null);
  });

  it('is due at once when by its own account the record begins later than now, as after a clock that was ahead', () => {
    const begun = { lastGoodAt: null, recordBegan: '2027-11-25T08:00:00.000Z', everyHours: 24 };
    expect(nextBackup(begun, now)).toBe(now);
    expect(isOverdue(begun, now)).toBe(true);
  });

  it('is overdue from two intervals on', () => {
    const times = { lastGoodAt, recordBegan, everyHours: 24 };
    expect(isOverdue(times, '2026-11-27T08:14:59.999Z')).toBe(false);
    expect(isOverdue(times, '2026-11-27T08:15:00.000Z')).toBe(true);
    expect(isOverdue({ ...times, everyHours: 0 }, '2030-01-01T00:00:00.000Z')).toBe(false);
  });
});
