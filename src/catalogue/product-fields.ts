import { readOpenedLife } from '../identity/opened-life-duration.js';
import { type CartridgeConfiguration, readCartridge } from './cartridge-notation.js';
import type { Membrane, PigmentRole, ProductKind, StockForm } from './vocabulary.js';

/** What a product is made of beside its name, whichever kind it is. */
export interface ProductFields {
  shade: string | null;
  pigmentRole: PigmentRole | null;
  /** Labelled volume of one container. */
  volumeMicrolitres: number | null;
  /** ISO 8601 duration of one unit; null when the label gives none. */
  openedLife: string | null;
  dropMicrolitres: number | null;
  colourIndexNumbers: string[];
  points: CartridgeConfiguration['points'] | null;
  grouping: CartridgeConfiguration['grouping'] | null;
  diameterHundredthsMillimetre: CartridgeConfiguration['diameterHundredthsMillimetre'];
  taper: CartridgeConfiguration['taper'];
  machineFit: string | null;
  membrane: Membrane | null;
}

/** What was given: a field left out or null is not known. */
export type GivenProductFields = { [Name in keyof ProductFields]?: ProductFields[Name] | null } & {
  /** Trade notation of a cartridge, such as `1207RL`. */
  notation?: string | null;
};

export interface ProductFieldFault {
  field: string;
  message: string;
}

export type ProductFieldsDecision =
  | { fields: ProductFields; stockForm: StockForm }
  | { faults: ProductFieldFault[] };

const ofPigments = [
  'shade',
  'pigmentRole',
  'volumeMicrolitres',
  'dropMicrolitres',
  'colourIndexNumbers',
] as const;
const ofCartridges = [
  'notation',
  'points',
  'grouping',
  'diameterHundredthsMillimetre',
  'taper',
  'machineFit',
  'membrane',
] as const;
const foreignTo: Record<ProductKind, readonly (keyof GivenProductFields)[]> = {
  pigment: ofCartridges,
  cartridge: [...ofPigments, 'openedLife'],
  consumable: [...ofPigments, ...ofCartridges],
};

const nothingKnown: ProductFields = {
  shade: null,
  pigmentRole: null,
  volumeMicrolitres: null,
  openedLife: null,
  dropMicrolitres: null,
  colourIndexNumbers: [],
  points: null,
  grouping: null,
  diameterHundredthsMillimetre: null,
  taper: null,
  machineFit: null,
  membrane: null,
};

/**
 * Decides what a product of a kind is made of. A field that does not belong to the kind is a fault, never dropped.
 * A cartridge is given by its notation, by its fields, or by both where they agree; what neither says stays unknown.
 * Pigments are kept as containers and cartridges as pieces; a consumable is a container when it has an opened life.
 */
export function productFields(kind: ProductKind, given: GivenProductFields): ProductFieldsDecision {
  const faults: ProductFieldFault[] = foreignTo[kind]
    .filter((field) => isGiven(given[field]))
    .map((field) => ({ field, message: `a ${kind} has no ${field}; leave it out` }));
  const life = given.openedLife == null ? null : readOpenedLife(given.openedLife);
  if (life !== null && 'error' in life) faults.push({ field: 'openedLife', message: life.error.message });
  if (kind === 'pigment' && !isGiven(given.volumeMicrolitres)) {
    faults.push({
      field: 'volumeMicrolitres',
      message: 'a pigment needs the labelled volume of its bottle; 10 mL is 10000',
    });
  }
  const cartridge = kind === 'cartridge' ? cartridgeFields(given) : { fields: {}, faults: [] };
  faults.push(...cartridge.faults);
  if (faults.length > 0) return { faults };

  const openedLife = given.openedLife ?? null;
  const fields: ProductFields = {
    ...nothingKnown,
    ...(kind === 'pigment' ? pigmentFields(given) : {}),
    ...cartridge.fields,
    openedLife,
  };
  const inContainers = kind === 'pigment' || (kind === 'consumable' && openedLife !== null);
  return { fields, stockForm: inContainers ? 'container' : 'pieces' };
}

/**
 * What a change gives, laid over what is known. A new notation replaces the whole configuration, so that what it does
 * not say is unknown again; null makes a field unknown.
 */
export function changedFields(known: ProductFields, given: GivenProductFields): GivenProductFields {
  const replaced: Partial<ProductFields> = isGiven(given.notation)
    ? { points: null, grouping: null, diameterHundredthsMillimetre: null, taper: null }
    : {};
  const said = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  return { ...known, ...replaced, ...said };
}

function pigmentFields(given: GivenProductFields): Partial<ProductFields> {
  return {
    shade: given.shade ?? null,
    pigmentRole: given.pigmentRole ?? 'colour',
    volumeMicrolitres: given.volumeMicrolitres ?? null,
    dropMicrolitres: given.dropMicrolitres ?? null,
    colourIndexNumbers: [...new Set(given.colourIndexNumbers ?? [])],
  };
}

function cartridgeFields(given: GivenProductFields): {
  fields: Partial<ProductFields>;
  faults: ProductFieldFault[];
} {
  const faults: ProductFieldFault[] = [];
  let read: Partial<CartridgeConfiguration> = {};
  if (isGiven(given.notation)) {
    const reading = readCartridge(given.notation ?? '');
    if ('error' in reading) {
      const message = reading.error.message.replace(/\.$/, '');
      return { fields: {}, faults: [{ field: 'notation', message }] };
    }
    read = reading;
  }
  const both = <Value extends string | number>(
    field: keyof CartridgeConfiguration,
    fromNotation: Value | null | undefined,
    explicit: Value | null | undefined,
  ): Value | null => {
    if (isGiven(fromNotation) && isGiven(explicit) && fromNotation !== explicit) {
      faults.push({
        field,
        message: `the notation ${given.notation} says ${fromNotation}, but ${field} says ${explicit}; compare with the box and give one of them`,
      });
    }
    return fromNotation ?? explicit ?? null;
  };
  const fields = {
    points: both('points', read.points, given.points),
    grouping: both('grouping', read.grouping, given.grouping),
    diameterHundredthsMillimetre: both(
      'diameterHundredthsMillimetre',
      read.diameterHundredthsMillimetre,
      given.diameterHundredthsMillimetre,
    ),
    taper: both('taper', read.taper, given.taper),
    machineFit: given.machineFit ?? null,
    membrane: given.membrane ?? 'unknown',
  };
  if (fields.points === null) {
    const message = 'a cartridge needs its notation, such as 1207RL, or at least its points';
    faults.push({ field: 'notation', message });
  }
  return { fields, faults };
}

function isGiven(value: unknown): boolean {
  return value !== undefined && value !== null && !(Array.isArray(value) && value.length === 0);
}
