/** The words of claims, as they stand in the database and the API. */

export const claimReasons = [
  'broken seal',
  'damaged package',
  'short date',
  'too few',
  'not ordered',
  'other',
] as const;
export type ClaimReason = (typeof claimReasons)[number];

export const claimStates = ['open', 'sent', 'settled', 'dropped'] as const;
export type ClaimState = (typeof claimStates)[number];
