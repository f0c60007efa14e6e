import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HeldContainer, heldOnHand } from './held-on-hand.js';

const recalled = {
  kind: 'recall',
  reason: 'recall notice',
  on: 'lot',
  since: '2026-06-02T08:00:00.000Z',
} as const;
const doubted = {
  kind: 'quarantine',
  reason: 'broken seal',
  on: 'container',
  since: '2026-05-01T08:00:00.000Z',
} as const;

function bottle(facts: Partial<HeldContainer> = {}): HeldContainer {
  return {
    containerId: 'bottle 1',
    lotId: 'lot 1',
    labelCode: 'AAAA',
    pieces: 1,
    state: 'sealed',
    place: 'Shelf',
    isSetAside: false,
    holds: [recalled],
    ...facts,
  };
}

describe('held stock on hand', () => {
  it('is a warning while something recalled stands among what is used, and says where and since when', () => {
    const two = bottle({ containerId: 'bottle 2', place: 'Room', state: 'opened' });
    expect(heldOnHand([bottle(), two])).toEqual([
      {
        kind: 'held stock on hand',
        subjectKind: 'lot',
        subjectId: 'lot 1',
        severity: 'warning',
        facts: {
          pieces: 2,
          places: ['Room', 'Shelf'],
          holdKinds: ['recall'],
          holdReasons: ['recall notice'],
          heldSince: '2026-06-02T08:00:00.000Z',
          whatToDo: 'set it apart',
        },
      },
    ]);
  });

  it('is a notice once all of it is set aside, and says what then is to be done', () => {
    const aside = { place: 'Box of recalls', isSetAside: true };
    expect(heldOnHand([bottle(aside)])).toMatchObject([
      { severity: 'notice', facts: { whatToDo: 'return or destroy it as the recall says' } },
    ]);
    expect(heldOnHand([bottle({ ...aside, holds: [doubted] })])).toMatchObject([
      { severity: 'notice', facts: { whatToDo: 'decide on it' } },
    ]);
    expect(heldOnHand([bottle(aside), bottle()])).toMatchObject([{ severity: 'warning' }]);
  });

  it('names the containers when only some of the lot are held', () => {
    const free = bottle({ containerId: 'bottle 2', labelCode: 'BBBB', holds: [] });
    expect(heldOnHand([bottle({ holds: [doubted] }), free])).toMatchObject([
      { severity: 'warning', facts: { pieces: 1, labelCodes: ['AAAA'] } },
    ]);
  });

  it('is told of the earliest hold, and of all kinds', () => {
    expect(heldOnHand([bottle({ holds: [recalled, doubted] })])).toMatchObject([
      { facts: { heldSince: doubted.since, holdKinds: ['quarantine', 'recall'] } },
    ]);
  });

  it('counts what is kept for practice, for a recall asks for that too', () => {
    expect(heldOnHand([bottle({ state: 'practice only' })])).toHaveLength(1);
  });

  it.each([
    ['nothing is left', { pieces: 0 }],
    ['it is used up', { state: 'finished' }],
    ['it was thrown away', { state: 'discarded' }],
    ['no hold stands', { holds: [] }],
  ] as const)('does not stand when %s', (_, facts) => {
    expect(heldOnHand([bottle(facts)])).toEqual([]);
  });

  const anyContainer = fc.record({
    containerId: fc.uuid(),
    lotId: fc.constantFrom('lot 1', 'lot 2', 'lot 3'),
    labelCode: fc.constantFrom('AAAA', 'BBBB', 'CCCC'),
    pieces: fc.nat(5),
    state: fc.constantFrom<HeldContainer['state'][]>(
      'sealed',
      'opened',
      'finished',
      'discarded',
      'practice only',
    ),
    place: fc.constantFrom('Shelf', 'Room', 'Aside'),
    isSetAside: fc.boolean(),
    holds: fc.subarray([recalled, doubted]),
  });

  it('stands for just the lots of which something held is here, with all their pieces, in any order', () => {
    fc.assert(
      fc.property(fc.array(anyContainer), (containers) => {
        const found = heldOnHand(containers);
        const held = containers.filter(
          ({ pieces, state, holds }) =>
            pieces > 0 && state !== 'finished' && state !== 'discarded' && holds.length > 0,
        );
        expect(new Set(found.map(({ subjectId }) => subjectId))).toEqual(
          new Set(held.map(({ lotId }) => lotId)),
        );
        expect(found.reduce((sum, { facts }) => sum + facts.pieces, 0)).toBe(
          held.reduce((sum, { pieces }) => sum + pieces, 0),
        );
        const ordered = (list: typeof found) =>
          [...list].sort((one, other) => (one.subjectId < other.subjectId ? -1 : 1));
        expect(ordered(heldOnHand([...containers].reverse()))).toEqual(ordered(found));
      }),
    );
  });
});
