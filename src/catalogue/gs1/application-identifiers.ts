/**
 * Every GS1 application identifier, ranges expanded, and what two digits tell about the length of one.
 * Facts (not text) of the GS1 Barcode Syntax Dictionary, Apache-2.0, GS1 AISBL [P].
 */
import type { ApplicationIdentifierRow, Component } from './application-identifier-format.js';
import { identifiersOfAmounts } from './identifiers-of-amounts.js';
import { identifiersOfAttributes } from './identifiers-of-attributes.js';
import { identifiersOfItems } from './identifiers-of-items.js';
import { identifiersOfLogistics } from './identifiers-of-logistics.js';
import { identifiersOfMeasures } from './identifiers-of-measures.js';
import { identifiersOfServices } from './identifiers-of-services.js';

/** One application identifier. `requires` is a list of alternatives, each a list of patterns wanted together. */
export type ApplicationIdentifier = {
  readonly identifier: string;
  readonly title: string;
  readonly components: readonly Component[];
  readonly predefinedLength: boolean;
  readonly digitalLinkAttribute: boolean;
  /** The sequences of qualifiers it takes as a primary key; undefined when it is no primary key. */
  readonly digitalLinkQualifiers: readonly (readonly string[])[] | undefined;
  readonly requires: readonly (readonly string[])[];
  readonly excludes: readonly string[];
};

/** All application identifiers in the order of the dictionary. */
export const applicationIdentifiers: readonly ApplicationIdentifier[] = [
  ...identifiersOfItems,
  ...identifiersOfMeasures,
  ...identifiersOfAmounts,
  ...identifiersOfLogistics,
  ...identifiersOfAttributes,
  ...identifiersOfServices,
].flatMap(expand);

const byIdentifier = new Map(applicationIdentifiers.map((entry) => [entry.identifier, entry]));

const lengthByFirstTwoDigits = new Map(
  applicationIdentifiers.map((entry) => [entry.identifier.slice(0, 2), entry.identifier.length]),
);

/** The identifier with these digits, or undefined when GS1 has assigned none. */
export function findApplicationIdentifier(identifier: string): ApplicationIdentifier | undefined {
  return byIdentifier.get(identifier);
}

/**
 * How many digits an identifier has whose first two digits are these: all identifiers that share them are
 * equally long, which is what makes an element string readable without brackets.
 */
export function identifierLength(firstTwoDigits: string): number | undefined {
  return lengthByFirstTwoDigits.get(firstTwoDigits);
}

/** The least and the greatest number of characters a value may have. */
export function valueLengths(entry: ApplicationIdentifier): { minimum: number; maximum: number } {
  let minimum = 0;
  let maximum = 0;
  for (const component of entry.components) {
    minimum += component.optional ? 0 : component.minimumLength;
    maximum += component.maximumLength;
  }
  return { minimum, maximum };
}

/** Whether an identifier fits a pattern such as "01", "310n" or "31nn", where n is any digit. */
export function matchesPattern(identifier: string, pattern: string): boolean {
  if (identifier.length !== pattern.length) return false;
  const prefix = pattern.replace(/n+$/, '');
  return identifier.startsWith(prefix);
}

function expand(row: ApplicationIdentifierRow): ApplicationIdentifier[] {
  const entries: ApplicationIdentifier[] = [];
  for (let number = Number(row.first); number <= Number(row.last ?? row.first); number++) {
    entries.push({
      identifier: String(number).padStart(row.first.length, '0'),
      title: row.title,
      components: row.components,
      predefinedLength: row.predefinedLength ?? false,
      digitalLinkAttribute: row.digitalLinkAttribute ?? false,
      digitalLinkQualifiers: row.digitalLinkQualifiers,
      requires: (row.requires ?? []).map((alternative) => alternative.split('+')),
      excludes: row.excludes ?? [],
    });
  }
  return entries;
}
