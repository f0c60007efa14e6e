import { expect, it } from 'vitest';
import { shownThing } from './shown-thing.js';
import type { TrayThing } from './tray-thing.js';

const box: TrayThing = {
  containerId: 'box-1',
  lotId: 'lot-1',
  productId: 'liner',
  label: 'Corvin 1207RL',
  labelCode: 'A00000000000',
  lotCode: 'C7',
  stockForm: 'pieces',
  isPigment: false,
  state: 'sealed',
  receivedAt: '2026-01-05T08:00:00.000Z',
  ownerId: 'mira',
  pieces: 10,
  reservedPieces: 3,
  holds: [{ kind: 'recall', reason: 'maker notice', on: 'lot' }],
  useByLastDay: '2027-12-31',
  openedAt: null,
  openedLife: null,
  assumedOpenedLife: null,
  usableThrough: null,
};

it('shows of a thing what it is, its last day and the pieces that no tray holds', () => {
  expect(shownThing(box, '2026-03-10T09:00:00Z', 'Europe/Vienna')).toEqual({
    containerId: 'box-1',
    lotId: 'lot-1',
    productId: 'liner',
    label: 'Corvin 1207RL',
    labelCode: 'A00000000000',
    lotCode: 'C7',
    state: 'sealed',
    lastDay: '2027-12-31',
    openedLifeFrom: 'none',
    availablePieces: 7,
  });
});

it('shows the end of the opened life where that comes first', () => {
  const bottle: TrayThing = {
    ...box,
    stockForm: 'container',
    state: 'opened',
    openedAt: '2026-03-01T09:00:00Z',
    openedLife: 'P1M',
  };
  const shown = shownThing(bottle, '2026-03-10T09:00:00Z', 'Europe/Vienna');
  expect(shown).toMatchObject({ lastDay: '2026-04-01', openedLifeFrom: 'label', availablePieces: 10 });
});
