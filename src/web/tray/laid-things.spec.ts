import { expect, it } from 'vitest';
import type { TrayLineView } from '../../sessions/tray.views.js';
import { laidThings } from './laid-things.js';

const line = (id: string, containerId: string, others: Partial<TrayLineView> = {}): TrayLineView => ({
  id,
  containerId,
  productId: 'product',
  lotId: 'lot',
  label: 'Fine liner',
  labelCode: 'B123',
  lotCode: 'CL-9',
  stockForm: 'pieces',
  isPigment: false,
  pieces: 1,
  knownBy: 'typed',
  admittedAt: '2026-11-25T09:00:00Z',
  state: 'on tray',
  settledAs: null,
  refusedNow: [],
  ...others,
});

it('counts the pieces of one box together, the latest line last', () => {
  const things = laidThings([line('1', 'box'), line('2', 'bottle', { pieces: 0 }), line('3', 'box')]);
  expect(things.map(({ containerId, pieces, lineIds }) => [containerId, pieces, lineIds])).toEqual([
    ['box', 2, ['1', '3']],
    ['bottle', 0, ['2']],
  ]);
});

it('leaves out what was taken off or thrown away', () => {
  expect(
    laidThings([line('1', 'box', { state: 'taken off' }), line('2', 'box', { state: 'settled' })]),
  ).toEqual([]);
});
