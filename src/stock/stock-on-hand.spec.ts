import { describe, expect, it } from 'vitest';
import { type ContainerOnHand, stockOnHand } from './stock-on-hand.js';

const bottle = (given: Partial<ContainerOnHand> = {}): ContainerOnHand => ({
  containerId: 'bottle 1',
  lotId: 'lot 1',
  productId: 'umber',
  form: 'bottle',
  state: 'sealed',
  openedAt: null,
  pieces: 1,
  useBy: '2027-06-30',
  openedLife: null,
  usableThrough: null,
  holds: [],
  ...given,
});
const opened = { state: 'opened', openedAt: '2026-05-01T08:00:00.000Z' } as const;
const subjects = (containers: ContainerOnHand[]) =>
  stockOnHand(containers, 'P6M').map(({ subjectKind, subjectId, pieces }) => [
    subjectKind,
    subjectId,
    pieces,
  ]);

describe('stockOnHand', () => {
  it('adds up the sealed remainder of a lot and keeps opened bottles apart', () => {
    const containers = [
      bottle(),
      bottle({ containerId: 'bottle 2' }),
      bottle({ containerId: 'bottle 3', ...opened }),
      bottle({ containerId: 'bottle 4', lotId: 'lot 2' }),
    ];
    expect(subjects(containers)).toEqual([
      ['lot', 'lot 1', 2],
      ['lot', 'lot 2', 1],
      ['container', 'bottle 3', 1],
    ]);
  });

  it('keeps a sealed bottle apart that is held by itself, so that the rest of its lot still counts', () => {
    const containers = [bottle({ holds: [{ on: 'container' }] }), bottle({ containerId: 'bottle 2' })];
    expect(stockOnHand(containers, null)).toMatchObject([
      { subjectKind: 'lot', pieces: 1, held: false },
      { subjectKind: 'container', subjectId: 'bottle 1', held: true },
    ]);
  });

  it('takes a whole lot as held when the lot or a parent lot is held', () => {
    for (const on of ['lot', 'parent lot'] as const) {
      expect(stockOnHand([bottle({ holds: [{ on }] })], null)).toMatchObject([
        { subjectKind: 'lot', held: true },
      ]);
    }
  });

  it('leaves out what is finished, discarded or empty', () => {
    const gone = [
      bottle({ state: 'finished' }),
      bottle({ state: 'discarded' }),
      bottle({ form: 'box', pieces: 0 }),
    ];
    expect(stockOnHand(gone, null)).toEqual([]);
  });

  it('marks practice stock', () => {
    expect(stockOnHand([bottle({ state: 'practice only' })], null)).toMatchObject([{ practice: true }]);
  });

  it('counts the assumed opened life for bottles, and none for a box, whose pieces are sealed one by one', () => {
    expect(stockOnHand([bottle(opened)], 'P6M')).toMatchObject([{ assumedOpenedLife: 'P6M' }]);
    expect(stockOnHand([bottle({ form: 'box', pieces: 20, ...opened })], 'P6M')).toMatchObject([
      { openedAt: null, assumedOpenedLife: null },
    ]);
  });
});
