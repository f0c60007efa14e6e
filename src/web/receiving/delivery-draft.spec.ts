import { expect, it } from 'vitest';
import { KeptDelivery, keptDelivery } from './delivery-draft.js';
import { newLine } from './line-draft.js';

it('brings back a line that was taken out', () => {
  const delivery = new KeptDelivery();
  delivery.putInFront({ ...newLine('a'), lotCode: 'A' });
  delivery.putInFront(newLine('b'));
  delivery.takeOut('a');
  expect(delivery.read().lines.map(({ key }) => key)).toEqual(['b']);
  delivery.bringBack('a');
  expect(delivery.read().lines.map(({ key, lotCode }) => [key, lotCode])).toEqual([
    ['a', 'A'],
    ['b', ''],
  ]);
  expect(delivery.read().takenOut).toEqual([]);
});

it('keeps a delivery for whoever puts it together, and for nobody after them', () => {
  const mine = keptDelivery('me', 'studio');
  mine.putInFront(newLine('a'));
  expect(keptDelivery('me', 'studio')).toBe(mine);
  keptDelivery('me', 'other studio');
  expect(keptDelivery('me', 'studio')).toBe(mine);
  expect(keptDelivery('somebody else', 'studio').read().lines).toEqual([]);
  expect(keptDelivery('me', 'studio').read().lines).toEqual([]);
});

it('goes on under the same id as long as the same content is handed in', () => {
  const delivery = new KeptDelivery();
  const first = delivery.events.of({ lines: 1 });
  expect(delivery.events.of({ lines: 1 })).toEqual(first);
  delivery.startAnew();
  expect(delivery.events.of({ lines: 1 }).id).not.toBe(first.id);
});
