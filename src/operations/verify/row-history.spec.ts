import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RowChange, rowFault } from './row-history.js';

const change = (sequence: number, given: Partial<RowChange>): RowChange => ({
  studioId: 'a',
  sequence,
  before: null,
  after: null,
  number: null,
  ...given,
});

const made = change(1, { after: 'one' });
const changed = change(2, { before: 'one', after: 'two' });
const removed = change(3, { before: 'two' });
const standing = (digest: string, number: number | null = null) => ({ digest, number });

describe('what the audit log says of a row', () => {
  it('holds when the row stands as the last entry left it, or is gone as it says', () => {
    expect(rowFault([made], standing('one'))).toBeUndefined();
    expect(rowFault([made, changed], standing('two'))).toBeUndefined();
    expect(rowFault([made, changed, removed], undefined)).toBeUndefined();
    expect(rowFault([made, changed, removed, change(4, { after: 'new' })], standing('new'))).toBeUndefined();
    expect(rowFault([], undefined)).toBeUndefined();
  });

  it('shows a row that no entry made', () => {
    expect(rowFault([], standing('one'))).toEqual({ kind: 'in no entry' });
    expect(rowFault([changed], standing('two'))).toEqual({ kind: 'not made by an entry', at: changed });
  });

  it('shows a row that is otherwise, and which earlier entry left it so', () => {
    expect(rowFault([made, changed], standing('three'))).toEqual({
      kind: 'changed',
      last: changed,
      standsAs: null,
    });
    expect(rowFault([made, changed], standing('one'))).toEqual({
      kind: 'changed',
      last: changed,
      standsAs: made,
    });
  });

  it('shows a row that was changed past the service and then changed by it', () => {
    const later = change(2, { before: 'forged', after: 'two' });
    expect(rowFault([made, later], standing('two'))).toEqual({
      kind: 'changed in between',
      last: made,
      at: later,
    });
  });

  it('shows a row that is gone, and one that is back', () => {
    expect(rowFault([made, changed], undefined)).toEqual({ kind: 'gone', last: changed });
    expect(rowFault([made, changed, removed], standing('two'))).toEqual({ kind: 'back', last: removed });
  });

  it('shows another number than the entry tells, and asks for none where the entry tells none', () => {
    const numbered = change(1, { after: 'one', number: 7 });
    expect(rowFault([numbered], standing('one', 7))).toBeUndefined();
    expect(rowFault([numbered], standing('one', 8))).toEqual({ kind: 'renumbered', at: numbered, number: 8 });
    expect(rowFault([made], standing('one', 8))).toBeUndefined();
  });

  it('takes entries written before they told what they found', () => {
    expect(rowFault([made, change(2, { after: 'two' })], standing('two'))).toBeUndefined();
  });

  it('finds the order of the changes when the studios of a chain took turns, whoever began', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('a', 'b', 'c'), { minLength: 1, maxLength: 12 }),
        fc.nat(),
        (studios, seed) => {
          const history = studios.map((studioId, index) =>
            change(index + 1, {
              studioId,
              before: index === 0 ? null : `state ${index - 1}`,
              after: `state ${index}`,
            }),
          );
          // As it is read: one chain after the other, in any order of chains.
          const chains = ['a', 'b', 'c'].map((studio) =>
            history.filter(({ studioId }) => studioId === studio),
          );
          const read = [...chains.slice(seed % 3), ...chains.slice(0, seed % 3)].flat();
          expect(rowFault(read, standing(`state ${history.length - 1}`))).toBeUndefined();
          const older = rowFault(read, standing('state 0'));
          if (history.length > 1) expect(older?.kind).toBe('changed');
        },
      ),
    );
  });
});
