export const certainties = ['certain', 'possible'] as const;
export type Certainty = (typeof certainties)[number];

export const exposureReasons = [
  'lot undecided',
  'lot picked from a list',
  'another open lot that day',
] as const;
/** Why it is only possible that a recalled lot touched the client. */
export type ExposureReason = (typeof exposureReasons)[number];

/** What is known of a use that a recall may concern. */
export interface ExposureFacts {
  /** Whether any lot concerned is surely affected, certain by itself or decided so. */
  affected: boolean;
  /** Whether the lot of the use was picked from a list, and so may have been another one. */
  picked: boolean;
  /** Whether it was recorded as a lot that is not recalled, while a recalled one of the product was at hand that day. */
  byOpenLot: boolean;
}

/**
 * Why a use is a possible exposure only.
 *
 * @returns empty: it is certain
 */
export function whyPossible({ affected, picked, byOpenLot }: ExposureFacts): ExposureReason[] {
  const reasons: ExposureReason[] = [];
  if (!affected) reasons.push('lot undecided');
  // A use that was surely recorded as one lot is no exposure to another.
  if (byOpenLot) reasons.push('another open lot that day');
  else if (picked) reasons.push('lot picked from a list');
  return reasons;
}

export function certaintyOf(reasons: readonly ExposureReason[]): Certainty {
  return reasons.length === 0 ? 'certain' : 'possible';
}

/** What several exposures are together: as certain as the most certain, with the reasons of those that are as certain. */
export function worst(exposures: readonly (readonly ExposureReason[])[]): {
  certainty: Certainty;
  reasons: ExposureReason[];
} {
  if (exposures.some((reasons) => reasons.length === 0)) return { certainty: 'certain', reasons: [] };
  const given = new Set(exposures.flat());
  return { certainty: 'possible', reasons: exposureReasons.filter((reason) => given.has(reason)) };
}
