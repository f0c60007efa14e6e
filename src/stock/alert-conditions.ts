import type { ContainerLifeFacts } from './opened-life.js';
import { isPast, judgeShelfLife, type ShelfLife } from './shelf-life.js';

export type AlertSeverity = 'notice' | 'warning' | 'urgent';

/** Pigments are kept in microlitres, everything else in pieces. */
export type StockUnit = 'microlitres' | 'pieces';

/** The sealed remainder of a lot, or one container. Opened containers are given one by one. */
export interface StockOnHand extends ContainerLifeFacts {
  subjectKind: 'lot' | 'container';
  subjectId: string;
  productId: string;
  /** Book quantity in the unit below. */
  quantity: number;
  unit: StockUnit;
  /** True while any hold on it or on any ancestor lot is open. */
  held: boolean;
  /** Kept for practice skin only. */
  practice: boolean;
  /** Emptied or gone; a bottle may still stand there when its book quantity, an estimate, is zero. */
  finished: boolean;
}

/** The level at which to reorder, of one product or of all products of a configuration pool together. */
export interface StockLevel {
  subjectKind: 'product' | 'configuration pool';
  subjectId: string;
  /** None when nothing of it is offered any more. */
  productIds: readonly string[];
  /** Low at or below this, in the unit below. */
  lowLevelQuantity: number;
  unit: StockUnit;
}

export interface AlertSettings {
  /** Sealed stock is near its use-by when this many local days or fewer are left. */
  useByNearDays: number;
  /** The same for what is open. */
  openedLifeEndingDays: number;
}

export interface LowStockCondition {
  kind: 'low stock';
  subjectKind: StockLevel['subjectKind'];
  subjectId: string;
  severity: AlertSeverity;
  facts: { usableQuantity: number; lowLevelQuantity: number; unit: StockUnit };
}

export interface DateCondition {
  kind: 'use-by near' | 'opened life ending' | 'expired on the shelf';
  subjectKind: StockOnHand['subjectKind'];
  subjectId: string;
  severity: AlertSeverity;
  facts: {
    productId: string;
    quantity: number;
    unit: StockUnit;
    status: ShelfLife['status'];
    lastDay: string | null;
    daysLeft: number | null;
    boundBy: ShelfLife['boundBy'];
    openedLifeFrom: ShelfLife['openedLifeFrom'];
    held: boolean;
  };
}

export type AlertCondition = LowStockCondition | DateCondition;

/**
 * Derives every condition open at an instant; what is not in the answer is not open. One thing has at most one
 * date condition: expired stock is only 'expired on the shelf'. What is open and ends soon is 'opened life ending'
 * even when its use-by is what ends it. Practice stock may be expired, and what is on hold need not be used up in
 * time, but held stock that has expired still has to leave the shelf.
 *
 * @param at ISO 8601 instant
 * @param timeZone IANA time zone of the studio
 * @returns low stock first, then dates, each in the order of what was given
 * @throws RangeError when a level and its stock are kept in different units
 */
export function alertConditions(
  stock: readonly StockOnHand[],
  levels: readonly StockLevel[],
  settings: AlertSettings,
  at: string,
  timeZone: string,
): AlertCondition[] {
  const usableByProduct = new Map<string, { quantity: number; unit: StockUnit }>();
  const dated: DateCondition[] = [];
  for (const item of stock) {
    if (item.finished || item.practice) continue;
    if (item.subjectKind === 'lot' && item.quantity <= 0) continue;
    const life = judgeShelfLife(item, at, timeZone);
    const condition = dateCondition(item, life, settings);
    if (condition !== null) dated.push(condition);
    if (!item.held && !isPast(life.status)) addUsable(usableByProduct, item);
  }
  const low: LowStockCondition[] = [];
  for (const level of levels) {
    // No product is meant any more: there is nothing to reorder.
    if (level.productIds.length === 0) continue;
    const usableQuantity = usableFor(level, usableByProduct);
    if (usableQuantity > level.lowLevelQuantity) continue;
    low.push({
      kind: 'low stock',
      subjectKind: level.subjectKind,
      subjectId: level.subjectId,
      severity: usableQuantity <= 0 ? 'urgent' : 'warning',
      facts: { usableQuantity, lowLevelQuantity: level.lowLevelQuantity, unit: level.unit },
    });
  }
  return [...low, ...dated];
}

function dateCondition(item: StockOnHand, life: ShelfLife, settings: AlertSettings): DateCondition | null {
  if (isPast(life.status))
    return describe(item, life, 'expired on the shelf', item.held ? 'notice' : 'urgent');
  if (life.daysLeft === null || item.held) return null;
  const opened = item.openedAt !== null;
  const near = life.daysLeft <= (opened ? settings.openedLifeEndingDays : settings.useByNearDays);
  if (!near) return null;
  return describe(item, life, opened ? 'opened life ending' : 'use-by near', opened ? 'notice' : 'warning');
}

function describe(
  item: StockOnHand,
  life: ShelfLife,
  kind: DateCondition['kind'],
  severity: AlertSeverity,
): DateCondition {
  const { subjectKind, subjectId, productId, quantity, unit, held } = item;
  const { status, lastDay, daysLeft, boundBy, openedLifeFrom } = life;
  const facts = { productId, quantity, unit, status, lastDay, daysLeft, boundBy, openedLifeFrom, held };
  return { kind, subjectKind, subjectId, severity, facts };
}

function addUsable(
  usableByProduct: Map<string, { quantity: number; unit: StockUnit }>,
  { productId, quantity, unit }: StockOnHand,
): void {
  const before = usableByProduct.get(productId);
  if (before !== undefined && before.unit !== unit) throw differentUnits(productId, before.unit, unit);
  usableByProduct.set(productId, { quantity: (before?.quantity ?? 0) + quantity, unit });
}

function usableFor(
  level: StockLevel,
  usableByProduct: ReadonlyMap<string, { quantity: number; unit: StockUnit }>,
): number {
  let sum = 0;
  for (const productId of new Set(level.productIds)) {
    const usable = usableByProduct.get(productId);
    if (usable === undefined) continue;
    if (usable.unit !== level.unit) throw differentUnits(productId, usable.unit, level.unit);
    sum += usable.quantity;
  }
  return sum;
}

function differentUnits(productId: string, one: StockUnit, other: StockUnit): RangeError {
  return new RangeError(
    `Product ${productId} is kept in ${one} and in ${other}. Stock and level of a product share one unit. ` +
      'Correct the level or the product.',
  );
}
