import { type ProductFields, productFields } from '../../catalogue/product-fields.js';
import type { ProductKind, StockForm } from '../../catalogue/vocabulary.js';
import { matchLot, type RecordedLot } from '../lot-match.js';
import { mostContainersInDelivery, mostPiecesInLine, plannedContainers } from '../planned-containers.js';
import { type LotReceiptReason, lotReasonsAtReceipt } from '../receipt-reasons.js';
import { foldedName } from './folded-name.js';
import type { OpeningStockColumn } from './opening-stock-columns.js';
import type { StockCellFault, StockRow } from './opening-stock-row.js';

export interface KnownProduct {
  id: string;
  makerId: string;
  name: string;
  shade: string | null;
  kind: ProductKind;
  stockForm: StockForm;
  volumeMicrolitres: number | null;
  openedLife: string | null;
  points: number | null;
  grouping: ProductFields['grouping'];
  archived: boolean;
}

/** What is on record, as far as a file of opening stock may touch it. */
export interface StockOnRecord {
  makers: readonly { id: string; name: string }[];
  products: readonly KnownProduct[];
  gtins: readonly { gtin: string; productId: string; contentCount: number }[];
  /** Lots of the products, with their codes. */
  lots: readonly (RecordedLot & { productId: string })[];
  places: readonly { id: string; name: string }[];
  /** Who works here, by name. */
  people: readonly { id: string; name: string }[];
  /** The studio's local day. */
  day: string;
}

export const stockEffects = [
  'new maker',
  'new product',
  'new GTIN',
  'new lot',
  'joins a lot',
  'corrects a lot',
] as const;
export type StockEffect = (typeof stockEffects)[number];

export interface ReadRow {
  number: number;
  row: StockRow;
  faults: readonly StockCellFault[];
}

/** A maker or product that is on record, or the first row that makes it. */
export type Meant = { id: string } | { madeByRow: number };

export interface NewProduct {
  maker: Meant;
  kind: ProductKind;
  name: string;
  stockForm: StockForm;
  fields: ProductFields;
}

export interface PlannedRow {
  number: number;
  row: StockRow;
  faults: StockCellFault[];
  warnings: string[];
  effects: StockEffect[];
  product: Meant | null;
  /** Given where this row makes one. */
  newMaker: string | null;
  newProduct: NewProduct | null;
  newGtin: { gtin: string; contentCount: number } | null;
  placeId: string | null;
  ownerId: string | null;
  piecesEach: number;
  pieces: number;
  containers: number;
  remainingMicrolitres: number | null;
  /** Why its lot is put aside until somebody decides. */
  setAside: LotReceiptReason[];
}

interface PlannedProduct extends KnownProduct {
  meant: Meant;
}

/**
 * Decides what every row of a file of opening stock would do, in their order: a row can use a maker, a product or a lot
 * that an earlier one makes. All faults of all rows are told; a row at fault makes nothing.
 */
export function planOpeningStock(rows: readonly ReadRow[], record: StockOnRecord): PlannedRow[] {
  const plan = new Plan(record);
  return rows.map((row) => plan.add(row));
}

class Plan {
  private readonly makers: Map<string, { meant: Meant; name: string }>;
  private readonly products = new Map<string, PlannedProduct>();
  /** By maker and name; those of one name differ in their shades. */
  private readonly named = new Map<string, PlannedProduct[]>();
  private readonly gtins: Map<string, { product: Meant; contentCount: number; row: number | null }>;
  private readonly lots: (RecordedLot & { product: Meant })[];
  /** Products that a row was to make and cannot: its own faults say why, later rows need not. */
  private readonly unmade = new Set<string>();
  private containers = 0;

  constructor(private readonly record: StockOnRecord) {
    this.makers = new Map(
      record.makers.map(({ id, name }) => [foldedName(name), { meant: { id }, name }] as const),
    );
    for (const product of record.products) this.remember({ ...product, meant: { id: product.id } });
    this.gtins = new Map(
      record.gtins.map(({ gtin, productId, contentCount }) => [
        gtin,
        { product: { id: productId }, contentCount, row: null },
      ]),
    );
    this.lots = record.lots.map(({ productId, ...lot }) => ({ ...lot, product: { id: productId } }));
  }

  add({ number, row, faults }: ReadRow): PlannedRow {
    const planned: PlannedRow = {
      number,
      row,
      faults: [...faults],
      warnings: [],
      effects: [],
      product: null,
      newMaker: null,
      newProduct: null,
      newGtin: null,
      placeId: null,
      ownerId: null,
      piecesEach: row.piecesEach ?? 1,
      pieces: 0,
      containers: 0,
      remainingMicrolitres: null,
      setAside: [],
    };
    // A row whose cells stand under no columns says nothing that could be judged.
    if (faults.some(({ column }) => column === null)) return planned;
    const product = this.productOf(planned);
    this.placeAndOwner(planned);
    if (product !== null) {
      planned.product = product.meant;
      this.trade(planned, product);
      this.count(planned, product);
      this.lot(planned, product);
    }
    if (planned.faults.length > 0) planned.effects = [];
    return planned;
  }

  private remember(product: PlannedProduct): void {
    this.products.set(keyOf(product.meant), product);
    const key = nameKey({ id: product.makerId }, product.name);
    this.named.set(key, [...(this.named.get(key) ?? []), product]);
  }

  private productOf(planned: PlannedRow): PlannedProduct | null {
    const { row, number } = planned;
    const traded = row.gtin === null ? undefined : this.gtins.get(row.gtin);
    if (traded !== undefined && (row.maker === null || row.product === null)) {
      const known = this.products.get(keyOf(traded.product));
      return known === undefined ? null : this.knownProduct(planned, known);
    }
    if (row.maker === null || row.product === null) {
      if (row.gtin !== null) {
        tell(planned, 'gtin', `${row.gtin} is not registered, and maker or product is empty; write both`);
      }
      return null;
    }
    const maker = this.makers.get(foldedName(row.maker));
    const named = this.named.get(nameKey(maker?.meant, row.product)) ?? [];
    const called = named.filter(({ shade }) => foldedName(shade) === foldedName(row.shade));
    const known = called.find(({ archived }) => !archived);
    if (known) return this.knownProduct(planned, known);
    if (called.length > 0) {
      tell(planned, 'product', 'is archived in the catalogue; restore it there first');
      return null;
    }
    const { said } = row;
    const unmade = [row.maker, row.product, row.shade].map(foldedName).join('\n');
    if (said.kind === null) {
      if (this.unmade.has(unmade)) return null;
      const others = named.map(({ shade }) => shade ?? 'without shade');
      const instead =
        others.length === 0 ? '' : ` of this name there are: ${others.slice(0, 10).join(', ')};`;
      tell(
        planned,
        'product',
        `is not in the catalogue;${instead} correct it, or write its kind, so that it is added: pigment, cartridge or consumable`,
      );
      return null;
    }
    const decided = productFields(said.kind, {
      shade: row.shade,
      pigmentRole: said.pigmentRole,
      volumeMicrolitres: said.volumeMicrolitres,
      openedLife: said.openedLife,
      notation: said.notation,
    });
    if ('faults' in decided) {
      this.unmade.add(unmade);
      for (const { field, message } of decided.faults) {
        const column = columnOfProduct[field] ?? null;
        tell(
          planned,
          column,
          column === 'bottle ml' ? 'is empty; a pigment that is added needs it' : message.replace(/\.$/, ''),
        );
      }
      return null;
    }
    const makerMeant = maker?.meant ?? { madeByRow: number };
    if (maker === undefined) {
      this.makers.set(foldedName(row.maker), { meant: makerMeant, name: row.maker });
      planned.newMaker = row.maker;
      planned.effects.push('new maker');
    }
    const { fields, stockForm } = decided;
    planned.newProduct = { maker: makerMeant, kind: said.kind, name: row.product, stockForm, fields };
    planned.effects.push('new product');
    const made: PlannedProduct = {
      id: keyOf({ madeByRow: number }),
      makerId: keyOf(makerMeant),
      name: row.product,
      shade: fields.shade,
      kind: said.kind,
      stockForm,
      volumeMicrolitres: fields.volumeMicrolitres,
      openedLife: fields.openedLife,
      points: fields.points,
      grouping: fields.grouping,
      archived: false,
      meant: { madeByRow: number },
    };
    this.remember(made);
    return made;
  }

  /** What the row says of a product that is known must agree with it: else one of the two is about another one. */
  private knownProduct(planned: PlannedRow, product: PlannedProduct): PlannedProduct {
    const { said } = planned.row;
    const where = 'id' in product.meant ? 'the catalogue' : `row ${product.meant.madeByRow}`;
    const differs = (column: OpeningStockColumn, given: unknown, known: unknown, shown: string) => {
      if (given === null || given === known) return;
      tell(
        planned,
        column,
        `is not what ${where} says: ${shown}; correct one of them, or leave the cell empty`,
      );
    };
    differs('kind', said.kind, product.kind, product.kind);
    differs(
      'bottle ml',
      said.volumeMicrolitres,
      product.volumeMicrolitres,
      product.volumeMicrolitres === null ? 'none' : `${product.volumeMicrolitres / 1_000} ml`,
    );
    differs('opened life', said.openedLife, product.openedLife, product.openedLife ?? 'none');
    if (product.kind === 'cartridge' && said.notation !== null) {
      const notated = productFields('cartridge', { notation: said.notation });
      if ('faults' in notated) tell(planned, 'notation', notated.faults[0]?.message ?? 'cannot be read');
      else {
        const { points, grouping } = notated.fields;
        const known = `${product.points} ${product.grouping ?? ''}`.trim();
        differs('notation', `${points} ${grouping ?? ''}`.trim(), known, known);
      }
    }
    return product;
  }

  private placeAndOwner(planned: PlannedRow): void {
    const { places, people } = this.record;
    const { place, owner } = planned.row;
    const [only, ...others] = places;
    if (place === null) {
      if (only !== undefined && others.length === 0) planned.placeId = only.id;
      else tell(planned, 'place', `is empty; places here are: ${listed(places)}`);
    } else {
      const found = places.filter(({ name }) => foldedName(name) === foldedName(place));
      if (found.length === 1 && found[0]) planned.placeId = found[0].id;
      else if (found.length === 0) {
        tell(planned, 'place', `"${place.slice(0, 40)}" is not known; places here are: ${listed(places)}`);
      } else
        tell(
          planned,
          'place',
          `"${place.slice(0, 40)}" is the name of several places; rename one of them first`,
        );
    }
    if (owner === null) return;
    const named = people.filter(({ name }) => foldedName(name) === foldedName(owner));
    if (named.length === 1 && named[0]) planned.ownerId = named[0].id;
    else {
      const seen = named.length === 0 ? 'is nobody who works here' : 'is the name of several people';
      tell(
        planned,
        'owner',
        `"${owner.slice(0, 40)}" ${seen}; write a name as it stands under People, or leave it empty`,
      );
    }
  }

  private trade(planned: PlannedRow, product: PlannedProduct): void {
    const { row, number } = planned;
    if (row.gtin === null) return;
    const traded = this.gtins.get(row.gtin);
    if (traded === undefined) {
      planned.newGtin = { gtin: row.gtin, contentCount: planned.piecesEach };
      planned.effects.push('new GTIN');
      this.gtins.set(row.gtin, { product: product.meant, contentCount: planned.piecesEach, row: number });
      return;
    }
    const where = traded.row === null ? 'in the catalogue' : `by row ${traded.row}`;
    if (!same(traded.product, product.meant)) {
      tell(planned, 'gtin', `${row.gtin} stands for another product ${where}; compare with the package`);
    } else if (row.piecesEach !== null && row.piecesEach !== traded.contentCount) {
      tell(
        planned,
        'pieces per box',
        `is ${row.piecesEach}, but the GTIN ${row.gtin} stands for ${traded.contentCount} ${where}; correct one of them`,
      );
    } else planned.piecesEach = traded.contentCount;
  }

  private count(planned: PlannedRow, product: PlannedProduct): void {
    const { row, piecesEach } = planned;
    if (row.openedOn !== null && product.stockForm !== 'container') {
      tell(planned, 'opened on', 'is told of bottles only; each of these pieces is used once');
    }
    const volume = product.kind === 'pigment' ? product.volumeMicrolitres : null;
    if (row.remaining !== null) {
      if (volume === null) tell(planned, 'remaining', 'is told of pigments only; leave it out');
      else {
        const left =
          'percent' in row.remaining
            ? Math.round((volume * row.remaining.percent) / 100)
            : row.remaining.microlitres;
        if (left > volume) {
          tell(
            planned,
            'remaining',
            `${left / 1_000} ml are more than the bottle holds, ${volume / 1_000} ml`,
          );
        } else planned.remainingMicrolitres = left;
      }
    }
    if (row.quantity === null) return;
    planned.pieces = row.quantity * piecesEach;
    if (planned.pieces > mostPiecesInLine) {
      tell(
        planned,
        'quantity',
        `makes ${planned.pieces} pieces; at most ${mostPiecesInLine} are taken in one row`,
      );
      return;
    }
    const made = plannedContainers(product.stockForm, planned.pieces, piecesEach, []);
    planned.containers = 'containers' in made ? made.containers.length : 0;
    const before = this.containers;
    this.containers += planned.containers;
    if (this.containers > mostContainersInDelivery && before <= mostContainersInDelivery) {
      tell(
        planned,
        'quantity',
        `with the rows above makes ${this.containers} bottles and boxes; at most ${mostContainersInDelivery} are taken in at a time`,
      );
    }
  }

  private lot(planned: PlannedRow, product: PlannedProduct): void {
    const { printed, sameCodeDecision } = planned.row;
    if (printed === null) return;
    const ofProduct = this.lots.filter((lot) => same(lot.product, product.meant));
    const match = matchLot(printed, ofProduct, sameCodeDecision ?? undefined);
    if (match.kind === 'question') {
      const recorded = match.recorded
        .map(({ lotId, useBy }) => `${useBy ?? nothing}${lotId.startsWith('row ') ? ` (${lotId})` : ''}`)
        .join(', ');
      tell(
        planned,
        'use by',
        `of the lot ${printed.code} is ${printed.useBy ?? nothing} here, but ${recorded} is known; compare with the package, then correct it or write in "same code" one of: ${match.choices.join(', ')}`,
      );
      return;
    }
    if (match.kind === 'new lot') {
      planned.effects.push('new lot');
      planned.setAside = lotReasonsAtReceipt(printed, this.record.day);
      const lotId = `row ${planned.number}`;
      this.lots.push({ lotId, code: printed.code, useBy: printed.useBy, product: product.meant });
      return;
    }
    planned.effects.push(match.kind === 'joins' ? 'joins a lot' : 'corrects a lot');
    const joined = this.lots.find(({ lotId }) => lotId === match.lotId);
    if (match.kind === 'corrects' && joined) joined.useBy = printed.useBy;
  }
}

const nothing = 'none printed';

const columnOfProduct: Record<string, OpeningStockColumn> = {
  shade: 'shade',
  pigmentRole: 'role',
  volumeMicrolitres: 'bottle ml',
  openedLife: 'opened life',
  notation: 'notation',
};

function tell(planned: PlannedRow, column: OpeningStockColumn | null, message: string): void {
  // The first fault of a cell says enough.
  if (planned.faults.some((fault) => fault.column === column)) return;
  planned.faults.push({ column, message });
}

function keyOf(meant: Meant): string {
  return 'id' in meant ? meant.id : `row ${meant.madeByRow}`;
}

/** Of a maker that is not known there is nothing. */
function nameKey(maker: Meant | undefined, name: string | null): string {
  return `${maker === undefined ? '' : keyOf(maker)}\n${foldedName(name)}`;
}

function same(one: Meant, other: Meant): boolean {
  return keyOf(one) === keyOf(other);
}

function listed(places: readonly { name: string }[]): string {
  const shown = places.slice(0, 20).map(({ name }) => name);
  return `${shown.join(', ')}${places.length > shown.length ? ', …' : ''}`;
}
