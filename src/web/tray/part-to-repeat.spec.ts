import { expect, it } from 'vitest';
import type { PigmentAtTouchUpView } from '../../sessions/touch-up.views.js';
import type { LaidThing } from './laid-things.js';
import { partToRepeat } from './part-to-repeat.js';

const part: PigmentAtTouchUpView = {
  productId: 'umber',
  makerName: 'Halden',
  productName: 'Umber',
  shade: null,
  lotId: 'lot-1',
  lotCode: 'HU-101',
  containerId: 'bottle-1',
  drops: 4,
  microlitres: 160,
  usableAtStart: 'yes',
  usableAtEnd: 'yes',
  lastDay: '2026-12-31',
  openedLifeFrom: 'label',
  whyNot: [],
  otherContainerIds: [],
};
const thing = (containerId: string, lotId: string, refused = false): LaidThing => ({
  containerId,
  lotId,
  productId: 'umber',
  label: 'Umber',
  labelCode: 'B123',
  lotCode: lotId,
  stockForm: 'container',
  isPigment: true,
  knownBy: 'typed',
  refusedNow: refused ? [{ code: 'expired', message: '' }] : [],
  pieces: 0,
  lineIds: ['line'],
});
const today = '2026-11-25';

it('takes the bottle of then before another of its lot, and that before another lot', () => {
  const [itself, ofLot, otherLot] = [
    thing('bottle-1', 'lot-1'),
    thing('bottle-2', 'lot-1'),
    thing('bottle-3', 'lot-2'),
  ];
  expect(partToRepeat(part, [otherLot, ofLot, itself], today)).toMatchObject({ from: itself, isOther: null });
  expect(partToRepeat(part, [otherLot, ofLot], today)).toMatchObject({ from: ofLot, isOther: 'bottle' });
  expect(partToRepeat(part, [otherLot], today)).toMatchObject({ from: otherLot, isOther: 'lot' });
  expect(partToRepeat(part, [], today)).toMatchObject({ from: null, isOther: null, noLonger: null });
});

it('never takes what may not be used any more', () => {
  expect(partToRepeat(part, [thing('bottle-1', 'lot-1', true)], today).from).toBeNull();
});

it('judges dates on today, also long after the window of the touch-up', () => {
  expect(partToRepeat(part, [], '2026-12-31').noLonger).toBeNull();
  expect(partToRepeat(part, [], '2027-01-01').noLonger).toBe('expired');
  const whyNot = [{ obstacle: 'open too long' as const, message: '' }];
  expect(partToRepeat({ ...part, whyNot }, [], '2027-01-01').noLonger).toBe('open too long');
  // It ends within the window, and may still be used today.
  expect(partToRepeat({ ...part, whyNot }, [], today).noLonger).toBeNull();
});

it.each(['held', 'finished', 'practice only'] as const)(
  'marks what is %s, whatever its dates',
  (obstacle) => {
    expect(partToRepeat({ ...part, whyNot: [{ obstacle, message: '' }] }, [], today).noLonger).toBe(obstacle);
  },
);
