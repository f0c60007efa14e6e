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
    expect(backupsToRemove(four, 2, 'd')).toEqual(['a', 'b']);
    expect(backupsToRemove(four, 4, 'd')).toEqual([]);
    expect(backupsToRemove([], 1, 'd')).toEqual([]);
  });

  it('does not count a damaged one as kept, and removes it when it is older than those that are', () => {
    const made = ['a', 'b', 'c', 'd', 'e'].map((name) => ({ name, whole: name !== 'b' && name !== 'd' }));
    expect(backupsToRemove(made, 2, 'e')).toEqual(['a', 'b']);
    expect(backupsToRemove(made, 3, 'e')).toEqual([]);
  });

  it('leaves the one just made, and does not count what a clock that was ahead made', () => {
    const made = ['a', 'b', 'c', 'x', 'y'].map((name) => ({ name, whole: true }));
    expect(backupsToRemove(made, 1, 'c')).toEqual(['a', 'b']);
    expect(backupsToRemove(made, 2, 'c')).toEqual(['a']);
  });

  it('always leaves the newest whole ones up to the one just made, as many as are kept, and all that are later', () => {
    fc.assert(
      fc.property(backups, fc.integer({ min: 1, max: 5 }), fc.nat(), (made, keep, index) => {
        const latest = made[index % made.length]?.name ?? '';
        const removed = new Set(backupsToRemove(made, keep, latest));
        const whole = made.filter((backup) => backup.whole).map(({ name }) => name);
        const left = whole.filter((name) => !removed.has(name));
        const known = whole.filter((name) => name <= latest).sort();
        const later = whole.filter((name) => name > latest);
        expect(left.sort()).toEqual([...known.slice(-keep), ...later].sort());
        expect(made.every(({ name }) => name <= latest || !removed.has(name))).toBe(true);
      }),
    );
  });
});
