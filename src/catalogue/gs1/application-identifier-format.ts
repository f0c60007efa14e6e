/**
 * How one GS1 application identifier is written down: the vocabulary of the tables beside this file.
 * The model is that of the GS1 Barcode Syntax Dictionary (Apache-2.0, GS1 AISBL) [P]; the names are ours.
 */

/** N digits, X character set 82, Y character set 39, Z character set 64 (base64url). */
export type CharacterSetName = 'N' | 'X' | 'Y' | 'Z';

/** What the characters of a component must say, beyond their number and set; see content-checks.ts. */
export type ContentCheckName =
  | 'bank-account'
  | 'check-character-pair'
  | 'check-digit'
  | 'company-prefix'
  | 'company-prefix-from-second'
  | 'country-letters'
  | 'country-number'
  | 'country-number-or-999'
  | 'coupon-code'
  | 'coupon-offer'
  | 'currency-number'
  | 'date'
  | 'date-or-month'
  | 'date-with-century'
  | 'has-non-digit'
  | 'hour'
  | 'hour-and-minute'
  | 'hyphen'
  | 'importer-index'
  | 'latitude'
  | 'longitude'
  | 'media-type'
  | 'minute'
  | 'no-leading-zero'
  | 'not-all-zeros'
  | 'package-type'
  | 'percent-encoding'
  | 'piece-of-total'
  | 'position-in-sequence'
  | 'second'
  | 'sex'
  | 'winding'
  | 'yes-or-no'
  | 'zero';

/** A run of characters inside the value. Lengths count characters. */
export type Component = {
  readonly characters: CharacterSetName;
  readonly minimumLength: number;
  readonly maximumLength: number;
  readonly optional: boolean;
  readonly checks: readonly ContentCheckName[];
};

/** One row of a table: one identifier, or a range of identifiers that share everything. */
export type ApplicationIdentifierRow = {
  readonly first: string;
  /** The last identifier of a range; absent for a row of one. */
  readonly last?: string;
  /** The data title of the dictionary; ours for the two coupon identifiers, which have none. */
  readonly title: string;
  readonly components: readonly Component[];
  /** Its length is announced by its first two digits, so no separator follows it. */
  readonly predefinedLength?: true;
  /** May stand in the query of a GS1 Digital Link URI. */
  readonly digitalLinkAttribute?: true;
  /**
   * Present when it may be the primary key of a Digital Link URI: the sequences of qualifiers that may follow
   * it in the path. Each qualifier may be left out; their order may not change.
   */
  readonly digitalLinkQualifiers?: readonly (readonly string[])[];
  /** At least one of these must be present; "01+21" asks for both, "31nn" for any identifier like it. */
  readonly requires?: readonly string[];
  /** None of these may be present; an identifier never excludes itself. */
  readonly excludes?: readonly string[];
};

/** A component of exactly `length` characters. */
export function exactly(
  length: number,
  characters: CharacterSetName,
  ...checks: readonly ContentCheckName[]
): Component {
  return { characters, minimumLength: length, maximumLength: length, optional: false, checks };
}

/** A component of one to `length` characters. */
export function upTo(
  length: number,
  characters: CharacterSetName,
  ...checks: readonly ContentCheckName[]
): Component {
  return { characters, minimumLength: 1, maximumLength: length, optional: false, checks };
}

/** The same component, which may be missing at the end of the value. */
export function optional(component: Component): Component {
  return { ...component, optional: true };
}
