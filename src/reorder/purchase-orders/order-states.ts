/** The life of a purchase order, as it stands in the database and the API. */
export const purchaseOrderStates = [
  'draft',
  'approved',
  'sent',
  'received in part',
  'closed',
  'called off',
] as const;
export type PurchaseOrderState = (typeof purchaseOrderStates)[number];

/** How it ended. Closed short: what is missing was not called off, the supplier owes it. */
export const orderEndings = ['received whole', 'rest called off', 'closed short', 'called off'] as const;
export type OrderEnding = (typeof orderEndings)[number];

/** Of the mail an order is sent by. Withdrawn: somebody sent or called off the order otherwise meanwhile. */
export const orderMailStates = ['waiting', 'sent', 'failed', 'withdrawn'] as const;
export type OrderMailState = (typeof orderMailStates)[number];

/** By what way an order is sent. */
export const orderWays = ['mail', 'by hand'] as const;
export type OrderWay = (typeof orderWays)[number];
