/** The words of stock, as they stand in the database and the API. */

export const placeKinds = [
  'shelf',
  'treatment room',
  'travelling case',
  'practice shelf',
  'set aside',
] as const;
export type PlaceKind = (typeof placeKinds)[number];

/** A bottle is one container; a box holds counted pieces of one lot. */
export const containerForms = ['bottle', 'box'] as const;
export type ContainerForm = (typeof containerForms)[number];

/** Held and expired are derived, never stored here. */
export const containerStates = ['sealed', 'opened', 'finished', 'discarded', 'practice only'] as const;
export type ContainerState = (typeof containerStates)[number];
/** While it is here. */
export type PresentState = Exclude<ContainerState, 'finished' | 'discarded'>;

export const codeStates = ['printed', 'none printed', 'unreadable'] as const;
export type CodeState = (typeof codeStates)[number];

export const useByPrecisions = ['day', 'month', 'year', 'none printed'] as const;
export type UseByPrecision = (typeof useByPrecisions)[number];

export const lotOrigins = ['delivery', 'blend', 'opening stock', 'late record', 'transfer'] as const;
export type LotOrigin = (typeof lotOrigins)[number];

export const lotCodeKinds = ['lot', 'batch', 'other'] as const;
export type LotCodeKind = (typeof lotCodeKinds)[number];

/** The terms of the mass balance. A reversal negates the movement it names, under that movement's kind. */
export const movementKinds = [
  'received',
  'produced',
  'transferred in',
  'adjusted',
  'used',
  'blended',
  'wasted',
  'returned',
  'transferred out',
] as const;
export type MovementKind = (typeof movementKinds)[number];

export const holdKinds = ['quarantine', 'recall', 'compliance'] as const;
export type HoldKind = (typeof holdKinds)[number];

/** Why a hold was placed; the first six are placed at receipt and wait for a decision. */
export const holdReasons = [
  'no lot printed',
  'lot unreadable',
  'no use-by printed',
  'already past',
  'broken seal',
  'damaged package',
  'doubt',
  'recall notice',
  'label statement missing',
  'other',
] as const;
export type HoldReason = (typeof holdReasons)[number];
