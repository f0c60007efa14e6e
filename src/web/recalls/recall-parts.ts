/** The pages of one recall, in the order in which it is answered. Each is below the recall, `overview` is the recall itself. */
export const recallParts = [
  'overview',
  'containers',
  'exposures',
  'telling',
  'balance',
  'closing',
  'studios',
] as const;
export type RecallPart = (typeof recallParts)[number];
