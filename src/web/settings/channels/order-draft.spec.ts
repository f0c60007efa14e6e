import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choiceOf, draftOf, idsOf, movedUp } from './order-draft.js';

const handingOn = fc.record({
  afterMinutes: fc.option(fc.integer({ min: 5, max: 1_440 })),
  personIds: fc.uniqueArray(fc.uuid(), { maxLength: 8 }),
  order: fc.constant<string[]>([]),
  droppedPersonIds: fc.constant<string[]>([]),
  isDefault: fc.boolean(),
  version: fc.option(fc.nat()),
});

describe('the order of people, while it is edited', () => {
  it('is handed in as it was read when nothing was edited', () => {
    fc.assert(
      fc.property(handingOn, (read) => {
        const { afterMinutes, personIds, version } = read;
        expect(choiceOf(draftOf(read), version)).toEqual({
          ...{ afterMinutes, personIds },
          ...(version !== null && { version }),
        });
      }),
    );
  });

  it('moves somebody before the one who came just before, and the first not at all', () => {
    expect(movedUp('a b c', 'c')).toBe('a c b');
    expect(movedUp('a b c', 'b')).toBe('b a c');
    expect(movedUp('a b c', 'a')).toBe('a b c');
    expect(movedUp('a b c', 'unknown')).toBe('a b c');
  });

  it('loses nobody by moving', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.uuid(), { minLength: 1 }), fc.nat(), (ids, which) => {
        const moved = movedUp(ids.join(' '), ids[which % ids.length] ?? '');
        expect(idsOf(moved).sort()).toEqual([...ids].sort());
      }),
    );
  });
});
