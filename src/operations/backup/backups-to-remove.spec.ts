import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backupsToRemove } from './backups-to-remove.js';

const backups = fc.uniqueArray(
  fc.record({ name: fc.string({ minLength: 1, maxLength: 3 }), whole: fc.boolean() }),
  { selector: ({ name }) => name, maxLength: 12 },
);

describe('the rotation of backups', () => {
  it('removes the oldest beyond the number that is kept', () => {
    const four = ['d', 'a', 'c', 'b'].map((name) => ({ name, whole: true }));
    expect(backupsToRemove(four, 2)).toEqual(['a', 'b']);
    expect(backupsToRemove(four, 4)).toEqual([]);
    expect(backupsToRemove([], 1)).toEqual([]);
  });

  it('does not count a damaged one as kept, and removes it when it is older than those that are', () => {
    const made = ['a', 'b', 'c', 'd', 'e'].map((name) => ({ name, whole: name !== 'b' && name !== 'd' }));
    expect(backupsToRemove(made, 2)).toEqual(['a', 'b']);
    expect(backupsToRemove(made, 3)).toEqual([]);
  });

  it('always leaves the newest whole one, and as many whole ones as are kept where there are so many', () => {
    fc.assert(
      fc.property(backups, fc.integer({ min: 1, max: 5 }), (made, keep) => {
        const removed = new Set(backupsToRemove(made, keep));
        const whole = made.filter((backup) => backup.whole).map(({ name }) => name);
        const left = whole.filter((name) => !removed.has(name));
        expect(left).toHaveLength(Math.min(keep, whole.length));
        expect(left.sort()).toEqual(whole.sort().slice(-keep));
      }),
    );
  });
});
