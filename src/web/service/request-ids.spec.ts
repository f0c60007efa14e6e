import { expect, it } from 'vitest';
import { RequestIds } from './request-ids.js';

it('gives a write that is sent again the id it had', () => {
  const ids = new RequestIds();
  expect(ids.for({ name: 'Ada' })).toBe(ids.for({ name: 'Ada' }));
});

it('gives a write with other content an id of its own', () => {
  const ids = new RequestIds();
  expect(ids.for({ name: 'Ada' })).not.toBe(ids.for({ name: 'Ida' }));
});

it('gives the same content a new id once it was carried out', () => {
  const ids = new RequestIds();
  const first = ids.for({ name: 'Ada' });
  ids.renew();
  expect(ids.for({ name: 'Ada' })).not.toBe(first);
});
