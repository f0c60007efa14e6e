import { expect, it } from 'vitest';
import type { ExpectedDeliveryView } from '../../../stock/expected-deliveries/expected-deliveries.views.js';
import { changeOf, contentOf, draftOf, emptyExpected } from './expected-draft.js';

const delivery: ExpectedDeliveryView = {
  ...{ id: 'd1', supplierId: 's1', supplierName: 'Corvin Supply', reference: 'A 17', orderedOn: null },
  ...{ expectedOn: '2026-05-04', late: false, endedAt: null, endedAs: null, deliveryId: null },
  ...{ version: 3, createdAt: '2026-04-20T08:00:00.000Z' },
};

it('hands in nothing that was not edited', () => {
  expect(changeOf(draftOf(delivery), delivery)).toEqual({});
});

it('hands in what was edited, and what was emptied as not known', () => {
  const draft = { ...draftOf(delivery), reference: ' ', orderedOn: '2026-04-20' };
  expect(changeOf(draft, delivery)).toEqual({ reference: null, orderedOn: '2026-04-20' });
});

it('leaves alone what somebody else changed since it was read', () => {
  const saved = { ...delivery, version: 4, reference: 'A 18', expectedOn: '2026-05-11' };
  // As the form has it: what was edited, and the rest as it is saved by now.
  const draft = { ...draftOf(saved), orderedOn: '2026-04-20' };
  expect(changeOf(draft, saved)).toEqual({ orderedOn: '2026-04-20' });
});

it('hands in what was left empty as not known', () => {
  const draft = { ...emptyExpected, supplierId: 's1', expectedOn: '2026-05-04' };
  expect(contentOf(draft)).toEqual({
    ...{ supplierId: 's1', reference: null, orderedOn: null, expectedOn: '2026-05-04' },
  });
});
