import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  admitToBlend,
  type BlendParentFacts,
  blendUseBy,
  latestBlendUseBy,
  outlasts,
} from './blend-admission.js';

const at = '2026-06-15T10:00:00.000Z';
const parent: BlendParentFacts = {
  containerId: 'umber',
  label: 'Umber, lot A1',
  isPigment: true,
  state: 'opened',
  openedAt: '2026-06-01T08:00:00.000Z',
  useByLastDay: '2027-06-30',
  openedLife: 'P6M',
  assumedOpenedLife: null,
  usableThrough: null,
  holdKinds: [],
};
const admit = (...parents: BlendParentFacts[]) => admitToBlend(parents, at, 'Europe/Vienna');

describe('admitToBlend', () => {
  it('lets a blend last as long as the first of its parents', () => {
    const sand = { ...parent, containerId: 'sand', openedAt: '2026-03-10T08:00:00.000Z' };
    const thinner = { ...parent, containerId: 'thinner', useByLastDay: '2026-10-31' };
    expect(admit(parent, sand, thinner)).toEqual({ admitted: true, latestUseBy: '2026-09-10' });
  });

  it('knows no last day when no parent has one', () => {
    const undated = { ...parent, useByLastDay: null, openedLife: null };
    expect(admit(undated)).toEqual({ admitted: true, latestUseBy: null });
  });

  it('refuses each parent that could not lie on a tray, or was never opened', () => {
    const refused: BlendParentFacts[] = [
      { ...parent, holdKinds: ['recall'] },
      { ...parent, holdKinds: ['quarantine'] },
      { ...parent, useByLastDay: '2026-06-14' },
      { ...parent, openedAt: '2025-06-01T08:00:00.000Z' },
      { ...parent, state: 'practice only' },
      { ...parent, state: 'finished' },
      { ...parent, state: 'sealed', openedAt: null },
      { ...parent, isPigment: false },
    ];
    for (const each of refused) {
      expect(admit(parent, each)).toMatchObject({ admitted: false, refusals: [{ containerId: 'umber' }] });
    }
  });

  it('names every parent it refuses, not the first alone', () => {
    const held = { ...parent, containerId: 'held', holdKinds: ['recall' as const] };
    const sealed = { ...parent, containerId: 'sealed', state: 'sealed' as const, openedAt: null };
    const answer = admit(held, parent, sealed);
    if (answer.admitted) throw new Error('admitted');
    expect(answer.refusals.map(({ containerId }) => containerId)).toEqual(['held', 'sealed']);
  });

  it('is never admitted with a parent held by anything, whatever the others are', () => {
    const hold = fc.constantFrom('quarantine' as const, 'recall' as const, 'compliance' as const);
    fc.assert(
      fc.property(
        fc.nat(5),
        fc.nat(5),
        fc.array(hold, { minLength: 1, maxLength: 3 }),
        (before, after, holds) => {
          const others = (count: number) => Array.from({ length: count }, () => parent);
          const parents = [...others(before), { ...parent, holdKinds: holds }, ...others(after)];
          expect(admit(...parents).admitted).toBe(false);
        },
      ),
    );
  });
});

describe('blendUseBy', () => {
  it('takes the latest day the parents allow when nothing was chosen', () => {
    expect(blendUseBy(null, '2026-09-10', '2026-06-15')).toEqual({ useBy: '2026-09-10' });
  });

  it('takes an earlier day that a person chose, and the very last day', () => {
    expect(blendUseBy('2026-08-01', '2026-09-10', '2026-06-15')).toEqual({ useBy: '2026-08-01' });
    expect(blendUseBy('2026-09-10', '2026-09-10', '2026-06-15')).toEqual({ useBy: '2026-09-10' });
  });

  it('refuses a day later than the parents allow, and one already past', () => {
    expect(blendUseBy('2026-09-11', '2026-09-10', '2026-06-15')).toHaveProperty('message');
    expect(blendUseBy('2026-06-14', '2026-09-10', '2026-06-15')).toHaveProperty('message');
  });
});

describe('the latest use-by of a blend', () => {
  const life = {
    useByLastDay: '2027-06-30',
    openedAt: null,
    openedLife: null,
    assumedOpenedLife: null,
    usableThrough: null,
  };

  it('is the last day of the first of what is poured together to end', () => {
    const opened = { ...life, openedAt: '2026-11-01T09:00:00Z', openedLife: 'P6M' };
    expect(latestBlendUseBy([life, opened], 'UTC')).toBe('2027-05-01');
    expect(latestBlendUseBy([life, { ...life, useByLastDay: null }], 'UTC')).toBe('2027-06-30');
    expect(latestBlendUseBy([{ ...life, useByLastDay: null }], 'UTC')).toBeNull();
  });

  it('is outlasted by a later date and by none', () => {
    expect(outlasts('2027-07-01', '2027-06-30')).toBe(true);
    expect(outlasts(null, '2027-06-30')).toBe(true);
    expect(outlasts('2027-06-30', '2027-06-30')).toBe(false);
    expect(outlasts('2027-06-30', null)).toBe(false);
  });
});
