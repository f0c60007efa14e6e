import { expect, it } from 'vitest';
import type { MixView } from '../../sessions/mixes.views.js';
import { type MixPress, shownMixes, totalOf } from './shown-mixes.js';

const umber = 'umber-bottle';
const thinner = 'thinner-bottle';
const occurredAt = '2026-11-25T09:00:00Z';
const mix: MixView = {
  id: 'cup',
  sessionId: 'session',
  label: 'Mix 1',
  occurredAt,
  microlitres: 120,
  parts: [
    {
      productId: 'umber',
      makerName: 'Halden',
      productName: 'Umber',
      shade: null,
      isThinner: false,
      lotId: 'lot',
      lotCode: 'HU-118',
      containerId: umber,
      drops: 3,
      microlitres: 120,
    },
  ],
};
const drop = (containerId: string, drops: number): MixPress => ({
  id: `${Math.random()}`,
  occurredAt,
  mixId: 'cup',
  containerId,
  drops,
});
const nameOf = (containerId: string) => containerId;

it('counts each press that is still under way, slips taken back', () => {
  const [shown] = shownMixes([mix], [drop(umber, 1), drop(umber, 1), drop(umber, -1)], nameOf);
  expect(shown?.parts).toEqual([{ containerId: umber, name: umber, drops: 4, microlitres: 160 }]);
});

it('tells no volume of a bottle whose drops the service has not measured yet', () => {
  const [shown] = shownMixes([mix], [drop(thinner, 2)], nameOf);
  expect(shown?.parts[1]).toEqual({ containerId: thinner, name: thinner, drops: 2, microlitres: null });
  expect(shown && totalOf(shown)).toEqual({ drops: 5, microlitres: null });
});

it('shows a cup that was begun at once, and only once when the service has told of it', () => {
  const begun: MixPress = { id: 'other-cup', occurredAt, begins: 'Mix 2' };
  expect(shownMixes([mix], [begun], nameOf).map(({ label }) => label)).toEqual(['Mix 1', 'Mix 2']);
  const told = { ...mix, id: 'other-cup', label: 'Mix 2', parts: [] };
  expect(shownMixes([mix, told], [begun], nameOf)).toHaveLength(2);
});

it('says no number of drops of what was given as a volume', () => {
  const volume: MixPress = { id: '1', occurredAt, mixId: 'cup', containerId: umber, microlitres: 30 };
  const [shown] = shownMixes([mix], [volume], nameOf);
  expect(shown?.parts[0]).toMatchObject({ drops: null, microlitres: 150 });
});
