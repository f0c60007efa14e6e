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
