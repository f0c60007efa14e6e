/** The words of the catalogue, as they stand in the database and the API. */
import type { NeedleGrouping, NeedleTaper } from './cartridge-notation.js';

export const productKinds = ['pigment', 'cartridge', 'consumable'] as const;
export type ProductKind = (typeof productKinds)[number];

/** A thinner is a pigment product without colour, dropped into the same cup. */
export const pigmentRoles = ['colour', 'thinner'] as const;
export type PigmentRole = (typeof pigmentRoles)[number];

/**
 * How the stock of a product is kept: one container each, opened and used over many sessions, or pieces counted from a
 * box, each used once.
 */
export const stockForms = ['container', 'pieces'] as const;
export type StockForm = (typeof stockForms)[number];

/** The back-flow barrier of a cartridge. */
export const membranes = ['yes', 'no', 'unknown'] as const;
export type Membrane = (typeof membranes)[number];

/** How needles are grouped; every word of the notation stands here. */
export const needleGroupings = [
  'round liner',
  'round shader',
  'magnum',
  'stacked magnum',
  'curved magnum',
  'flat',
  'slope',
  'hand blade',
] as const satisfies readonly NeedleGrouping[];

export const needleTapers = [
  'short',
  'medium',
  'long',
  'extra long',
] as const satisfies readonly NeedleTaper[];
