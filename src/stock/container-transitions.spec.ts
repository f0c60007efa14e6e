import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ContainerAction,
  type ContainerFacts,
  openingWarnings,
  stateAfterReversal,
  transition,
  undoOpening,
} from './container-transitions.js';

const sealed: ContainerFacts = {
  form: 'bottle',
  state: 'sealed',
  openedAt: null,
  lifeStatus: 'usable',
  holdKinds: [],
};
const opened: ContainerFacts = { ...sealed, state: 'opened', openedAt: '2026-03-01T09:00:00.000Z' };
const box: ContainerFacts = { ...sealed, form: 'box' };
const expired = { lifeStatus: 'expired' } as const;

describe('transition', () => {
  it('opens a sealed bottle, also one that is held or expired: opening is a fact', () => {
    for (const container of [
      sealed,
      { ...sealed, ...expired },
      { ...sealed, holdKinds: ['recall' as const] },
    ]) {
      expect(transition(container, 'open')).toEqual({ allowed: true, state: 'opened' });
    }
  });

  it('does not open what is opened, a box, or what is kept for practice', () => {
    for (const container of [opened, box, { ...opened, state: 'practice only' as const }]) {
      expect(transition(container, 'open').allowed).toBe(false);
    }
  });

  it('corrects the opened date also of what is finished, and of nothing that was never opened', () => {
    expect(transition({ ...opened, state: 'finished' }, 'correct opened date')).toEqual({
      allowed: true,
      state: 'finished',
    });
    expect(transition(sealed, 'correct opened date').allowed).toBe(false);
  });

  it('finishes an opened bottle, and neither a sealed one nor a box', () => {
    expect(transition(opened, 'finish')).toEqual({ allowed: true, state: 'finished' });
    expect(transition(sealed, 'finish').allowed).toBe(false);
    expect(transition(box, 'finish').allowed).toBe(false);
  });

  it('wastes single pieces of a box only', () => {
    expect(transition(box, 'waste pieces')).toEqual({ allowed: true, state: 'sealed' });
    expect(transition(opened, 'waste pieces').allowed).toBe(false);
  });

  it('keeps for practice what is expired or open too long', () => {
    expect(transition({ ...sealed, ...expired }, 'keep for practice')).toEqual({
      allowed: true,
      state: 'practice only',
    });
    expect(transition({ ...opened, lifeStatus: 'open too long' }, 'keep for practice').allowed).toBe(true);
  });

  it('never keeps for practice what is recalled, or still good', () => {
    expect(transition({ ...sealed, ...expired, holdKinds: ['recall'] }, 'keep for practice').allowed).toBe(
      false,
    );
    expect(transition(sealed, 'keep for practice').allowed).toBe(false);
    expect(transition({ ...sealed, lifeStatus: 'no date known' }, 'keep for practice').allowed).toBe(false);
  });

  it('lets nothing but a reversal bring back what has ended', () => {
    const actions: ContainerAction[] = [
      'open',
      'finish',
      'discard',
      'waste pieces',
      'count',
      'return',
      'move',
      'keep for practice',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...actions),
        fc.constantFrom('finished' as const, 'discarded' as const),
        fc.constantFrom(sealed, opened, box),
        (action, state, container) => {
          expect(transition({ ...container, state }, action).allowed).toBe(false);
        },
      ),
    );
  });
});

describe('openingWarnings', () => {
  it('says nothing of a usable bottle', () => {
    expect(openingWarnings(opened)).toEqual([]);
  });

  it('warns of a recall before any other hold, and of a passed date besides', () => {
    const warnings = openingWarnings({ ...opened, ...expired, holdKinds: ['quarantine', 'recall'] });
    expect(warnings).toHaveLength(2);
    expect(warnings[0]).toContain('recalled');
    expect(warnings[1]).toContain('use-by');
  });
});

describe('undoOpening', () => {
  const opening = {
    form: 'bottle',
    state: 'opened',
    isBlend: false,
    wasUsed: false,
    microlitres: 10_000,
    arrivedMicrolitres: 10_000,
    trays: 0,
  } as const;

  it('seals a bottle of which nothing was taken', () => {
    expect(undoOpening(opening)).toEqual({ allowed: true, state: 'sealed' });
  });

  it.each([
    ['that was used', { wasUsed: true }, /was taken/],
    ['with less than it arrived with', { microlitres: 9_999 }, /was taken/],
    ['that lies on a tray', { trays: 1 }, /off the tray/],
    ['that the studio poured itself', { isBlend: true }, /blend/],
    ['that is sealed', { state: 'sealed' }, /not recorded as opened, but as sealed/],
    ['kept for practice', { state: 'practice only' }, /practice only/],
    ['that is gone', { state: 'discarded' }, /reverse the movement/],
  ] as const)('refuses one %s, with what to do', (_, facts, message) => {
    expect(undoOpening({ ...opening, ...facts })).toEqual({
      allowed: false,
      message: expect.stringMatching(message),
    });
  });
});

describe('stateAfterReversal', () => {
  it.each(['sealed', 'opened', 'practice only'] as const)('brings back what ended as %s as that', (was) => {
    expect(stateAfterReversal({ state: 'discarded', endedFrom: was }, 'wasted', 1)).toBe(was);
    expect(stateAfterReversal({ state: 'finished', endedFrom: was }, 'adjusted', 1)).toBe(was);
  });

  it('leaves a bottle ended while the book still holds no piece of it', () => {
    expect(stateAfterReversal({ state: 'finished', endedFrom: 'opened' }, 'adjusted', 0)).toBe('finished');
  });

  it('ends a container whose receipt never was', () => {
    expect(stateAfterReversal({ state: 'sealed', endedFrom: null }, 'received', 0)).toBe('discarded');
  });

  it('leaves a box as it is when some of its pieces come back', () => {
    expect(stateAfterReversal({ state: 'sealed', endedFrom: null }, 'wasted', 12)).toBe('sealed');
  });
});
