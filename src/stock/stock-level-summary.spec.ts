import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SummarisedContainer, summariseStock } from './stock-level-summary.js';

const at = '2026-06-15T10:00:00.000Z';
const bottle: SummarisedContainer = {
  containerId: 'bottle',
  lotId: 'lot',
  productId: 'umber',
  form: 'bottle',
  state: 'sealed',
  openedAt: null,
  pieces: 1,
  microlitres: 15_000,
  useBy: '2027-06-30',
  openedLife: 'P6M',
  usableThrough: null,
  holds: [],
};
const settings = { assumedOpenedLife: null, useByNearDays: 30, openedLifeEndingDays: 14 };
const summary = (...containers: SummarisedContainer[]) =>
  summariseStock(containers, settings, at, 'Europe/Vienna');

describe('summariseStock', () => {
  it('counts what is in date, opened or sealed, as usable', () => {
    const open: SummarisedContainer = { ...bottle, state: 'opened', openedAt: '2026-06-01T08:00:00.000Z' };
    expect(summary(bottle, { ...open, microlitres: 4_000 })).toEqual({
      usablePieces: 2,
      endingSoonPieces: 0,
      onHandPieces: 2,
      onHandMicrolitres: 19_000,
      heldPieces: 0,
      expiredPieces: 0,
      practicePieces: 0,
      openedContainers: 1,
    });
  });

  it('counts as expired what is past its use-by or open too long', () => {
    const old = { ...bottle, useBy: '2026-06-14' };
    const openTooLong: SummarisedContainer = {
      ...bottle,
      state: 'opened',
      openedAt: '2025-11-01T08:00:00.000Z',
    };
    expect(summary(old, openTooLong)).toMatchObject({
      usablePieces: 0,
      expiredPieces: 2,
      openedContainers: 0,
    });
  });

  it('counts among the usable what has to be used soon, opened by days of its own', () => {
    const near = { ...bottle, useBy: '2026-07-15' };
    expect(summary(near, { ...bottle, useBy: '2026-07-16' })).toMatchObject({
      usablePieces: 2,
      endingSoonPieces: 1,
    });
    const opened: SummarisedContainer = { ...bottle, state: 'opened', openedAt: '2025-12-29T08:00:00.000Z' };
    expect(summary(opened).endingSoonPieces).toBe(1);
    expect(summary({ ...opened, openedAt: '2025-12-30T08:00:00.000Z' }).endingSoonPieces).toBe(0);
    for (const other of [
      { ...near, useBy: '2026-06-14' },
      { ...near, holds: [{ on: 'lot' as const }] },
    ]) {
      expect(summary(other).endingSoonPieces).toBe(0);
    }
  });

  it('is usable through the end of its last day', () => {
    expect(summary({ ...bottle, useBy: '2026-06-15' }).usablePieces).toBe(1);
  });

  it('counts held before expired, once', () => {
    expect(summary({ ...bottle, useBy: '2026-01-31', holds: [{ on: 'lot' }] })).toMatchObject({
      heldPieces: 1,
      expiredPieces: 0,
    });
  });

  it('leaves out what is finished or discarded', () => {
    expect(summary({ ...bottle, state: 'discarded' }, { ...bottle, state: 'finished' }).onHandPieces).toBe(0);
  });

  it('counts each piece on hand exactly once', () => {
    const container = fc.record({
      state: fc.constantFrom('sealed' as const, 'opened' as const, 'practice only' as const),
      pieces: fc.integer({ min: 0, max: 50 }),
      useBy: fc.constantFrom(null, '2026-01-31', '2027-01-31'),
      holds: fc.constantFrom([], [{ on: 'lot' as const }]),
    });
    fc.assert(
      fc.property(fc.array(container), (given) => {
        const all = given.map(
          (each): SummarisedContainer => ({
            ...bottle,
            ...each,
            openedAt: each.state === 'opened' ? '2026-01-01T08:00:00.000Z' : null,
          }),
        );
        const { usablePieces, heldPieces, expiredPieces, practicePieces, onHandPieces } = summary(...all);
        expect(usablePieces + heldPieces + expiredPieces + practicePieces).toBe(onHandPieces);
      }),
    );
  });
});
