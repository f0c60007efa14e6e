import type { ClaimReason } from './vocabulary.js';

/** What is written to the supplier of one claim. */
export interface ClaimForSupplier {
  studioName: string;
  studioContact: string | null;
  supplierName: string;
  customerNumber: string | null;
  /** The studio's order; null: of none. */
  orderNumber: number | null;
  /** The number on the delivery note. */
  deliveryReference: string | null;
  /** The day of arrival, as it is written; null: nothing came. */
  deliveredOn: string | null;
  product: string | null;
  orderCode: string | null;
  lotCode: string | null;
  /** The last day of the lot. */
  useBy: string | null;
  reason: ClaimReason;
  pieces: number;
  /** What is asked for, as it is written; null: it is left to the supplier. */
  amount: string | null;
  note: string | null;
}

const words: Readonly<Record<ClaimReason, string>> = {
  'broken seal': 'came with a broken seal',
  'damaged package': 'came in a damaged package',
  'short date': 'came with too short a remaining life',
  'too few': 'did not come',
  'not ordered': 'came although they were not ordered so',
  other: 'are claimed',
};

/** A claim as a letter in plain text, without anything that is not known. */
export function claimText(claim: ClaimForSupplier): string {
  const fact = (name: string, value: string | number | null) => (value === null ? [] : [`${name}: ${value}`]);
  const pieces = claim.pieces === 1 ? '1 piece' : `${claim.pieces} pieces`;
  return [
    `To ${claim.supplierName}`,
    `${pieces} ${words[claim.reason]}.`,
    [
      ...fact('Product', claim.product),
      ...fact('Your order code', claim.orderCode),
      ...fact('Lot', claim.lotCode),
      ...fact('Use by', claim.useBy),
      ...fact('Our order', claim.orderNumber),
      ...fact('Your delivery note', claim.deliveryReference),
      ...fact('Received on', claim.deliveredOn),
      ...fact('Our customer number with you', claim.customerNumber),
    ].join('\n'),
    claim.amount === null
      ? 'Please tell us how you make this good: by a replacement or a credit.'
      : `We ask for a credit of ${claim.amount}, or a replacement.`,
    claim.note ?? '',
    [claim.studioName, ...(claim.studioContact === null ? [] : [claim.studioContact])].join('\n'),
  ]
    .filter((paragraph) => paragraph !== '')
    .join('\n\n')
    .concat('\n');
}
