import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backupName, isBackupName, isLeftoverName, removedName, unfinishedName } from './backup-name.js';
import { backupReasons } from './manifest.js';

const instants = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2999-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString());

describe('the name of a backup', () => {
  it('tells when and why it was made', () => {
    expect(backupName('2026-11-25T08:15:00.000Z', 'scheduled')).toBe('20261125T081500Z-scheduled');
  });

  it('is known again, as is that of an unfinished or a removed one, and sorts as time does', () => {
    fc.assert(
      fc.property(instants, instants, fc.constantFrom(...backupReasons), (one, other, reason) => {
        const name = backupName(one, reason);
        expect([isBackupName(name), isLeftoverName(name)]).toEqual([true, false]);
        for (const leftover of [unfinishedName(name), removedName(name)]) {
          expect([isBackupName(leftover), isLeftoverName(leftover)]).toEqual([false, true]);
        }
        if (one.slice(0, 19) < other.slice(0, 19)) expect(name < backupName(other, reason)).toBe(true);
      }),
    );
  });

  it.each([
    'holiday photos',
    'erasures.jsonl',
    '20261125T081500Z',
    '20261125T081500Z-scheduled-copy',
    '2026.unfinished',
  ])('is not seen in %s, which a backup did not make', (name) => {
    expect([isBackupName(name), isLeftoverName(name)]).toEqual([false, false]);
  });
});
