import type { GivenProductFields } from '../../catalogue/product-fields.js';
import type { ProductView } from '../../catalogue/products.views.js';
import type { Membrane, PigmentRole, ProductKind } from '../../catalogue/vocabulary.js';
import { type OpenedLifeUnit, readOpenedLife } from '../../identity/opened-life-duration.js';

/** A product as it is being filled in; numbers are kept as they were typed. */
export interface ProductDraft {
  kind: ProductKind;
  makerId: string;
  name: string;
  shade: string;
  pigmentRole: PigmentRole;
  /** Millilitres on the label of one bottle. */
  millilitres: string;
  /** Microlitres of one drop; empty: not known. */
  dropMicrolitres: string;
  /** Empty: the label gives none. */
  openedLifeAmount: string;
  openedLifeUnit: OpenedLifeUnit;
  /** Separated by commas or spaces. */
  colourIndexNumbers: string;
  notation: string;
  /** Only where no notation is known. */
  points: string;
  machineFit: string;
  membrane: Membrane;
}

export function newProductDraft(kind: ProductKind): ProductDraft {
  return {
    kind,
    makerId: '',
    name: '',
    shade: '',
    pigmentRole: 'colour',
    millilitres: '',
    dropMicrolitres: '',
    openedLifeAmount: '',
    openedLifeUnit: 'months',
    colourIndexNumbers: '',
    notation: '',
    points: '',
    machineFit: '',
    membrane: 'unknown',
  };
}

export function draftOfProduct(product: ProductView): ProductDraft {
  const life = product.openedLife === null ? null : readOpenedLife(product.openedLife);
  return {
    ...newProductDraft(product.kind),
    makerId: product.makerId,
    name: product.name,
    shade: product.shade ?? '',
    pigmentRole: product.pigmentRole ?? 'colour',
    millilitres: product.volumeMicrolitres === null ? '' : String(product.volumeMicrolitres / 1000),
    dropMicrolitres: product.dropMicrolitres === null ? '' : String(product.dropMicrolitres),
    ...(life !== null &&
      !('error' in life) && { openedLifeAmount: String(life.amount), openedLifeUnit: life.unit }),
    colourIndexNumbers: product.colourIndexNumbers.join(', '),
    notation: product.notation ?? '',
    points: product.points === null ? '' : String(product.points),
    machineFit: product.machineFit ?? '',
    membrane: product.membrane ?? 'unknown',
  };
}

/** What a product is made of, as the service takes it. */
export type FieldsOfProduct = Omit<GivenProductFields, 'colourIndexNumbers'> & {
  colourIndexNumbers?: string[];
};

/** A field that was typed and holds no number; the fields have the names of the service's. */
export type UnreadableNumber = 'volumeMicrolitres' | 'dropMicrolitres' | 'openedLife' | 'points';

/**
 * What the draft says of a product of its kind, in the service's words. What was left empty is null: not known. What
 * belongs to another kind is left out, so that changing the kind loses nothing that was typed.
 */
export function fieldsOfDraft(
  draft: ProductDraft,
): { fields: FieldsOfProduct } | { unreadable: UnreadableNumber[] } {
  const unreadable: UnreadableNumber[] = [];
  const number = (field: UnreadableNumber, text: string): number | null => {
    const read = readNumber(text);
    if (read === undefined) unreadable.push(field);
    return read ?? null;
  };
  const fields = fieldsOfKind(draft, number);
  return unreadable.length > 0 ? { unreadable } : { fields };
}

function fieldsOfKind(
  draft: ProductDraft,
  number: (field: UnreadableNumber, text: string) => number | null,
): FieldsOfProduct {
  switch (draft.kind) {
    case 'pigment': {
      const millilitres = number('volumeMicrolitres', draft.millilitres);
      return {
        shade: text(draft.shade),
        pigmentRole: draft.pigmentRole,
        volumeMicrolitres: millilitres === null ? null : Math.round(millilitres * 1000),
        dropMicrolitres: number('dropMicrolitres', draft.dropMicrolitres),
        openedLife: openedLife(draft, number),
        colourIndexNumbers: draft.colourIndexNumbers.split(/[\s,;]+/).filter((part) => part !== ''),
      };
    }
    case 'cartridge':
      return {
        ...(text(draft.notation) === null
          ? { points: number('points', draft.points) }
          : { notation: draft.notation.trim() }),
        machineFit: text(draft.machineFit),
        membrane: draft.membrane,
      };
    case 'consumable':
      return { openedLife: openedLife(draft, number) };
  }
}

function openedLife(
  { openedLifeAmount, openedLifeUnit }: ProductDraft,
  number: (field: UnreadableNumber, text: string) => number | null,
): string | null {
  const amount = number('openedLife', openedLifeAmount);
  if (amount === null) return null;
  return { months: `P${amount}M`, days: `P${amount}D`, hours: `PT${amount}H` }[openedLifeUnit];
}

function text(typed: string): string | null {
  return typed.trim() === '' ? null : typed.trim();
}

/** @returns null for nothing, undefined for what is no number; the comma is a decimal sign too */
function readNumber(typed: string): number | null | undefined {
  const shown = typed.trim();
  if (shown === '') return null;
  return /^\d+([.,]\d+)?$/.test(shown) ? Number(shown.replace(',', '.')) : undefined;
}
