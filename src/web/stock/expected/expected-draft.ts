import type { ExpectedDeliveryView } from '../../../stock/expected-deliveries/expected-deliveries.views.js';

/** An expected delivery while it is written; days as YYYY-MM-DD, empty where there is nothing. */
export interface ExpectedDraft {
  supplierId: string;
  reference: string;
  orderedOn: string;
  expectedOn: string;
}

export const emptyExpected: ExpectedDraft = {
  supplierId: '',
  reference: '',
  orderedOn: '',
  expectedOn: '',
};

export function draftOf(delivery: ExpectedDeliveryView): ExpectedDraft {
  const { supplierId, reference, orderedOn, expectedOn } = delivery;
  return { supplierId, reference: reference ?? '', orderedOn: orderedOn ?? '', expectedOn };
}

/** As it is handed in: what is not known is null. */
export function contentOf({ supplierId, reference, orderedOn, expectedOn }: ExpectedDraft) {
  return {
    supplierId,
    reference: reference.trim() === '' ? null : reference.trim(),
    orderedOn: orderedOn === '' ? null : orderedOn,
    expectedOn,
  };
}

/** Only what differs from what was read, so that what others changed beside it stays. */
export function changeOf(draft: ExpectedDraft, delivery: ExpectedDeliveryView) {
  const former = contentOf(draftOf(delivery));
  const content = contentOf(draft);
  return Object.fromEntries(
    Object.entries(content).filter(([field, value]) => former[field as keyof typeof former] !== value),
  ) as Partial<typeof content>;
}
