import { describe, expect, it } from 'vitest';
import { type BackupFacts, backupConditions } from './backup-conditions.js';

const facts: BackupFacts = {
  lastGoodAt: '2026-11-25T08:15:00.000Z',
  recordBegan: '2026-11-20T08:00:00.000Z',
  everyHours: 24,
  lastFailure: null,
  startedAt: '2026-11-20T08:00:00.000Z',
  isToldOverdue: false,
};
const nextMorning = '2026-11-26T09:00:00.000Z';
const full = 'no space is left on the disk';

const kindsOf = (changes: Partial<BackupFacts>, now = nextMorning) =>
  backupConditions({ ...facts, ...changes }, 'studio 1', now).map(({ kind }) => kind);

describe('the conditions of backups', () => {
  it('are none while backups are made', () => {
    expect(kindsOf({})).toEqual([]);
  });

  it('tell that the last one failed, why, and when the last good one was made', () => {
    const lastFailure = { at: '2026-11-26T08:15:00.000Z', cause: full };
    expect(backupConditions({ ...facts, lastFailure }, 'studio 1', nextMorning)).toEqual([
      {
        kind: 'backup failed',
        subjectKind: 'studio',
        subjectId: 'studio 1',
        severity: 'warning',
        facts: { cause: full, lastGoodAt: facts.lastGoodAt },
      },
    ]);
  });

  it('end with the next good one', () => {
    expect(kindsOf({ lastFailure: { at: '2026-11-25T08:00:00.000Z', cause: full } })).toEqual([]);
  });

  it('tell when two intervals went by without a good one, or none was ever made', () => {
    expect(kindsOf({}, '2026-11-27T08:15:00.000Z')).toEqual(['backup overdue']);
    expect(kindsOf({ lastGoodAt: null }, '2026-11-22T07:59:59.000Z')).toEqual([]);
    expect(kindsOf({ lastGoodAt: null }, '2026-11-22T08:00:00.000Z')).toEqual(['backup overdue']);
  });

  it('leave a service that was off the time to make up for it, unless it was told already', () => {
    const startedAt = '2026-12-24T08:00:00.000Z';
    expect(kindsOf({ startedAt }, '2026-12-24T08:59:59.000Z')).toEqual([]);
    expect(kindsOf({ startedAt }, '2026-12-24T09:00:00.000Z')).toEqual(['backup overdue']);
    expect(kindsOf({ startedAt, isToldOverdue: true }, startedAt)).toEqual(['backup overdue']);
    expect(kindsOf({ startedAt, isToldOverdue: true, lastGoodAt: startedAt }, startedAt)).toEqual([]);
  });

  it('are none where no backups are scheduled', () => {
    const lastFailure = { at: '2026-11-26T08:15:00.000Z', cause: full };
    expect(kindsOf({ everyHours: 0, lastFailure }, '2030-01-01T00:00:00.000Z')).toEqual([]);
  });
});
